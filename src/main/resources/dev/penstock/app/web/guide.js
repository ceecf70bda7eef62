// Three first steps, shown until somebody closes them; a button at the foot of the page shows them again.
import { byId, make } from "./common.js";

const KEPT = "penstock-first-steps";
const STEPS = [
  ["Change something", "Drag a slider, or write a value in any unit, for example \"1300 psi\". The engine is balanced at once; each figure shows what it was before, and the charts draw it too. Undo takes it back.", "#inputs"],
  ["Ask where a number comes from", "A number with a dotted line below it opens its model, with equation, range and source, and the values that went in. A limit that is missed is red in the table and in the diagram.", "#headline"],
  ["Keep it", "Save writes the file, Report downloads one page or PDF that needs nothing else, and the address of this page is a link to what you see. The other pages work on the same engine.", "[aria-label='Concept file']"],
];

const done = () => {
  try {
    return localStorage.getItem(KEPT) === "closed";
  } catch (refused) {
    return true;
  }
};

function close() {
  byId("guide").replaceChildren();
  point("");
  try {
    localStorage.setItem(KEPT, "closed");
  } catch (refused) {
    // The browser keeps nothing; the steps come again next time.
  }
}

function point(where) {
  document.querySelectorAll(".pointed").forEach((old) => old.classList.remove("pointed"));
  if (where) {
    document.querySelector(where)?.classList.add("pointed");
  }
}

function show(i, focus) {
  const [title, text, where] = STEPS[i];
  const button = (name, act) => {
    const own = make("button", { type: "button" }, name);
    own.addEventListener("click", act);
    return own;
  };
  const shut = button("Close", () => { close(); byId("steps").focus(); });
  const next = i + 1 < STEPS.length ? [button("Next", () => show(i + 1, true))] : [];
  const back = i > 0 ? [button("Back", () => show(i - 1, true))] : [];
  byId("guide").replaceChildren(make("div", { class: "note", role: "region", "aria-label": "First steps" },
    make("h2", {}, "First steps, " + (i + 1) + " of " + STEPS.length + ": " + title), make("p", {}, text),
    make("div", { class: "controls" }, ...back, ...next, shut)));
  point(where);
  if (focus) {
    (next[0] || shut).focus();
  }
}

byId("steps").addEventListener("click", () => { show(0, true); byId("guide").scrollIntoView({ block: "nearest" }); });
if (!done()) {
  show(0, false);
}
