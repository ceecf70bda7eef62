// Concepts side by side.
import { addressed, byId, calm, complain, get, make, post, say } from "./common.js";
import { settings, studies } from "./study.js";
import { opener } from "./why.js";

const carried = new URLSearchParams(location.search).get("file");
let concepts = [];
let changes = addressed();
let asked = {};
/** The one concept that the changes belong to; without one they belong to all. */
let only = carried || "";

const changesOf = (name) => (!only || only === name ? asked : {});

const chosen = () => [...document.querySelectorAll("#files input:checked")].map((box) => box.value);

function draw() {
  const solved = concepts.filter((c) => !c.failure);
  const failed = concepts.filter((c) => c.failure);
  const lines = [];
  const add = (name, better, cells) => lines.push({ name, better, cells });
  add("cycle", 0, solved.map((c) => ({ text: c.cycle })));
  add("propellants", 0, solved.map((c) => ({ text: c.propellants })));
  const keys = [...new Map(solved.flatMap((c) => c.measures.map((m) => [m.key, m]))).values()];
  for (const key of keys) {
    add(key.name, key.better, solved.map((c) => c.measures.find((m) => m.key === key.key) || { text: "–" }));
  }
  const rows = lines.map((line) => {
    const differs = new Set(line.cells.map((c) => c.text)).size > 1;
    const best = Math.max(...line.cells.filter((c) => c.value !== undefined).map((c) => line.better * c.value));
    const cells = line.cells.map((c, i) => make("td", {
      class: ["n", differs ? "differs" : "", differs && line.better && line.better * c.value === best ? "best" : ""].join(" ").trim() || undefined,
    }, c.path ? opener(c.text, c.path, () => ({ file: solved[i].file, text: "", changes: changesOf(solved[i].file) })) : c.text));
    return differs || !byId("only").checked ? make("tr", {}, make("th", { scope: "row" }, line.name), ...cells) : null;
  }).filter(Boolean);
  const head = solved.map((c) => make("th", { scope: "col", class: "n" }, make("a", { href: "/?file=" + encodeURIComponent(c.file) }, c.name)));
  const binding = solved.map((c) => make("li", {}, make("b", {}, c.name + " "),
    ...(c.binding ? [c.limit + ": ", opener(c.binding.text, c.binding.path, () => ({ file: c.file, text: "", changes: changesOf(c.file) }))] : ["no limit"]),
    c.met === false ? make("strong", { class: "missed" }, " (missed)") : ""));
  byId("out").replaceChildren(
    ...(failed.length ? [make("div", { class: "note" }, make("h2", {}, "Without a solution"),
      make("ul", {}, ...failed.map((c) => make("li", {}, make("b", {}, c.name + " "), c.failure))))] : []),
    ...(solved.length ? [
      make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "Figures side by side" },
        make("table", {}, make("caption", {}, "What differs is shaded; the best of a line is bold where one direction is better"),
          make("thead", {}, make("tr", {}, make("th", { scope: "col" }, "quantity"), ...head)), make("tbody", {}, ...rows))),
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
byId("only").addEventListener("change", (e) => { e.stopPropagation(); draw(); });

try {
  const all = await get("/api/files");
  byId("files").replaceChildren(...all.concepts.map((name, i) =>
    make("label", { class: "check" }, make("input", { type: "checkbox", value: name, checked: carried ? name === carried || i < 2 : i < 3 }), " " + name.replace(/\.toml$/, ""))));
  settings(changes);
  studies("compare", byId("choice"), () => ({ cases: chosen(), changes, vary: [], samples: 0, fly: false }), restore, run);
} catch (error) {
  complain(error);
}
