// Concepts side by side.
import { address, addressed, byId, calm, complain, get, make, post, say, takeAway } from "./common.js";
import { settings, studies } from "./study.js";
import { whenUnits } from "./units.js";
import { opener } from "./why.js";

const carried = new URLSearchParams(location.search).get("file");
let concepts = [];
let changes = addressed();
let asked = {};
/** The one concept that the changes belong to; without one they belong to all. */
let only = carried || "";

const changesOf = (name) => (!only || only === name ? asked : {});

const chosen = () => [...document.querySelectorAll("#files input:checked")].map((box) => box.value);

/** A column for each figure that any of them has, its unit in the head where all share it. */
function columns(solved) {
  const keys = [...new Map(solved.flatMap((c) => c.measures.map((m) => [m.key, m]))).values()];
  const all = [
    { name: "cycle", cells: solved.map((c) => ({ text: c.cycle })) },
    { name: "propellants", cells: solved.map((c) => ({ text: c.propellants })) },
    ...keys.map((key) => ({ name: key.name, cells: solved.map((c) => c.measures.find((m) => m.key === key.key) || { text: "–" }) })),
  ];
  return all.map((column) => {
    const texts = column.cells.map((c) => c.text);
    const units = new Set(texts.filter((t) => t !== "–").map((t) => (t.match(/^[-+\d.,e]+ ([^,]+)(,.*)?$/) || [])[1]));
    const unit = units.size === 1 ? [...units][0] : undefined;
    return {
      ...column,
      text: !column.cells.some((c) => c.value !== undefined),
      unit: unit || "",
      shown: unit ? texts.map((t) => t.replace(" " + unit, "")) : texts,
      differs: new Set(texts).size > 1,
    };
  });
}

function draw() {
  const solved = concepts.filter((c) => !c.failure);
  const failed = concepts.filter((c) => c.failure);
  const shown = columns(solved).filter((column) => column.differs || !byId("only").checked);
  const mark = (column, cell) => [column.text ? "" : "n", column.differs ? "differs" : "",
    column.differs && cell.best ? "best" : ""].join(" ").trim() || undefined;
  const rows = solved.map((c, i) => make("tr", {},
    make("th", { scope: "row" }, make("a", { href: "/?file=" + encodeURIComponent(c.file) }, c.name)),
    ...shown.map((column) => {
      const cell = column.cells[i];
      return make("td", { class: mark(column, cell) },
        cell.path ? opener(column.shown[i], cell.path, () => ({ file: c.file, text: "", changes: changesOf(c.file) })) : column.shown[i]);
    })));
  const head = shown.map((column) => make("th", { scope: "col", class: column.text ? undefined : "n" }, column.name + (column.unit ? " (" + column.unit + ")" : "")));
  const caption = "Concepts side by side: what differs is shaded; the best of a column is bold where one direction is better";
  const own = make("table", {}, make("caption", {}, caption), make("thead", {}, make("tr", {}, make("th", { scope: "col" }, "concept"), ...head)), make("tbody", {}, ...rows));
  const binding = solved.map((c) => make("li", {}, make("b", {}, c.name + " "),
    ...(c.binding ? [c.limit + ": ", opener(c.binding.text, c.binding.path, () => ({ file: c.file, text: "", changes: changesOf(c.file) }))] : ["no limit"]),
    c.met === false ? make("strong", { class: "missed" }, " (missed)") : ""));
  byId("out").replaceChildren(
    ...(failed.length ? [make("div", { class: "note" }, make("h2", {}, "Without a solution"),
      make("ul", {}, ...failed.map((c) => make("li", {}, make("b", {}, c.name + " "), c.failure))))] : []),
    ...(solved.length ? [
      make("div", { class: "grid wide" }, make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "Figures side by side" }, own), takeAway(own, "Side by side")),
      make("h2", {}, "What binds them"), make("ol", {}, ...binding)] : []));
}

async function run() {
  calm();
  say("Balancing …");
  byId("go").disabled = true;
  try {
    asked = changes;
    concepts = (await post("/api/together", { files: chosen(), changes, only })).concepts;
    draw();
    say(concepts.length + " concepts balanced.");
  } catch (error) {
    complain(error);
  } finally {
    byId("go").disabled = false;
  }
}

function restore(study) {
  for (const box of document.querySelectorAll("#files input")) {
    box.checked = study.cases.includes(box.value);
  }
  changes = study.changes;
  only = "";
  settings(changes);
}

byId("choice").addEventListener("submit", (e) => { e.preventDefault(); run(); });
whenUnits(() => concepts.length && run());
byId("only").addEventListener("change", (e) => { e.stopPropagation(); draw(); });

try {
  const all = await get("/api/files");
  byId("files").replaceChildren(...all.concepts.map((name, i) =>
    make("label", { class: "check" }, make("input", { type: "checkbox", value: name, checked: carried ? name === carried || i < 2 : i < 3 }), " " + name.replace(/\.toml$/, ""))));
  settings(changes, only.replace(/\.toml$/, ""));
  if (carried) {
    address(carried, changes);
  }
  studies("compare", byId("choice"), () => ({ cases: chosen(), changes, vary: [], samples: 0, fly: false }), restore, run);
} catch (error) {
  complain(error);
}
