// Studies of many points: set up, begun, watched, stopped, shown; each point that was found opens on its page.
import { address, addressed, asFileName, byId, calm, choose, complain, get, make, post, say, sections, watch } from "./common.js";
import { report } from "./panel.js";
import { settings, studies } from "./study.js";

/** What each kind asks of figures, and how much work it may be; the usual numbers come from the server. */
const KINDS = {
  optimise: { goals: ["maximise", "minimise", "figures"], effort: ["starts", "evaluations", "seed"] },
  frontier: { goals: ["maximise", "minimise", "figures"], effort: ["population", "generations", "seed"] },
  sensitivity: { goals: ["figures"], effort: ["samples", "seed"] },
  sample: { goals: ["figure"], effort: ["points", "design", "seed"] },
};
const GOALS = { maximise: "as large as it can be", minimise: "as small as it can be", figures: "told of", figure: "kept" };
const EFFORT = { starts: "starts", evaluations: "points of each start", population: "points of a generation", generations: "generations",
  samples: "points of the design", points: "points", design: "how they lie", seed: "seed" };
const DESIGNS = { "sobol": "Sobol sequence", "latin-hypercube": "Latin hypercube", "grid": "grid" };
const FIRST = { optimise: [["maximise", "isp_vacuum_s"]], frontier: [["maximise", "isp_vacuum_s"], ["minimise", "mass_kg"]], sensitivity: [["figures", "isp_vacuum_s"]], sample: [] };

let known = { inputs: [], figures: [], usual: {} };
let changes = addressed();
let running = "";
let title = "study";
let number = 0;

const kind = () => byId("kind").value;
const parts = (written) => written.match(/^\s*([-+]?[\d.]+(?:[eE][-+]?\d+)?)\s*([^\d\s].*?)?\s*$/);

function row(list, ...fields) {
  const out = make("button", { type: "button", class: "back", "aria-label": "Remove this line" }, "remove");
  const line = make("div", { class: "controls" }, ...fields, out);
  out.addEventListener("click", () => { line.remove(); byId("plan").dispatchEvent(new Event("change")); });
  byId(list).append(line);
  return line;
}

const text = (what, attributes) => {
  const own = make("input", { id: what.replace(/\W/g, "-") + "-" + ++number, type: "text", spellcheck: "false", ...attributes });
  return [make("label", { for: own.id }, what), own];
};

/** What the path in a field is called, beside it. */
function called(box, list) {
  const note = make("small", { class: "called" });
  const tell = () => { note.textContent = known[list].find((one) => one.path === box.value.trim())?.title || ""; };
  box.addEventListener("change", tell);
  tell();
  return note;
}

function varied(path = "", range = "") {
  const [named, box] = text("Input", { list: "paths", class: "path", size: "34", value: path });
  const [over, ends] = text("Range or list", { class: "range", size: "22", value: range, placeholder: "6..12 MPa, or a,b,c" });
  box.addEventListener("change", () => { ends.value = suggested(box.value.trim()); });
  row("vary", named, box, called(box, "inputs"), over, ends);
}

/** From three quarters to five quarters of what the file says. */
function suggested(path) {
  const [, value, unit] = parts(known.inputs.find((i) => i.path === path)?.written || "") || [];
  return value ? [0.75, 1.25].map((share) => Number((share * value).toPrecision(4))).join("..") + (unit ? " " + unit : "") : "";
}

function goal(what, path = "") {
  const choice = make("select", { class: "what", "aria-label": "what is asked of it" }, ...KINDS[kind()].goals.map((g) => make("option", { value: g, selected: g === what }, GOALS[g])));
  const [named, box] = text("Figure", { list: "figures", class: "path", size: "34", value: path });
  row("goals", named, box, called(box, "figures"), choice);
}

function kept(constraint = "") {
  const [named, box] = text("Constraint", { class: "path", size: "40", value: constraint, placeholder: "engine.mass_kg<=400, or within_limits" });
  row("kept", named, box);
}

function effort(said = {}) {
  byId("effort").replaceChildren(make("div", { class: "controls" }, ...KINDS[kind()].effort.flatMap((key) => {
    const value = said[key] ?? { ...known.usual, points: 400, seed: 1 }[key] ?? "";
    const own = key === "design"
      ? make("select", { id: "effort-design" }, ...Object.entries(DESIGNS).map(([d, name]) => make("option", { value: d, selected: d === value }, name)))
      : make("input", { id: "effort-" + key, type: "number", min: "0", size: "7", value, placeholder: "usual" });
    return [make("label", { for: own.id }, EFFORT[key]), own];
  })));
}

/** What the kind asks for, with lines to begin with. */
function ask() {
  byId("goals").replaceChildren();
  FIRST[kind()].forEach(([what, ending], i) => goal(what, (known.figures.find((f) => f.path.endsWith("." + ending)) || known.figures[i])?.path || ""));
  byId("constraints").hidden = kind() === "sensitivity";
  effort();
}

async function load() {
  calm();
  const file = byId("file").value;
  address(file, changes);
  settings(changes);
  known = await post("/api/search-choices", { cases: [file], changes });
  byId("paths").replaceChildren(...known.inputs.map((i) => make("option", { value: i.path }, i.title)));
  byId("figures").replaceChildren(...known.figures.map((f) => make("option", { value: f.path }, f.title)));
}

/** Another case: lines that fit it. */
async function begin() {
  try {
    await load();
    byId("vary").replaceChildren();
    byId("kept").replaceChildren();
    known.inputs.filter((i) => /(^|\.)(engine\.chamber_pressure|propellants\.mixture_ratio)$/.test(i.path) && parts(i.written))
      .forEach((i) => varied(i.path, suggested(i.path)));
    kept("within_limits");
    ask();
    say("Ready: " + known.inputs.length + " inputs can vary.");
  } catch (error) {
    complain(error);
  }
}

const lines = (list) => [...byId(list).querySelectorAll(":scope > div")];
const said = (list, name) => lines(list).map((line) => line.querySelector("." + name).value.trim());

/** Everything that the page is set to, as a study file has it. */
function capture() {
  const study = { study: kind(), cases: [byId("file").value], changes, samples: 0, fly: false };
  const ranges = said("vary", "range");
  study.vary = said("vary", "path").map((path, i) => path && path + "=" + ranges[i].replace(/\s+/g, "")).filter(Boolean);
  const paths = said("goals", "path");
  said("goals", "what").forEach((what, i) => { if (paths[i]) { (study[what] ??= []).push(paths[i]); } });
  const constraints = said("kept", "path").filter(Boolean);
  if (constraints.length && kind() !== "sensitivity") {
    study.subject_to = constraints;
  }
  for (const key of KINDS[kind()].effort) {
    const value = byId("effort-" + key).value;
    if (value && key === "samples") {
      study.samples = Number(value);
    } else if (value) {
      study[key] = [value];
    }
  }
  return study;
}

async function restore(study) {
  const further = study.further || study;
  changes = study.changes;
  byId("file").value = study.cases[0];
  byId("kind").value = study.study;
  await load();
  ask();
  for (const list of ["vary", "goals", "kept"]) {
    byId(list).replaceChildren();
  }
  study.vary.forEach((v) => varied(v.slice(0, v.indexOf("=")), v.slice(v.indexOf("=") + 1)));
  KINDS[kind()].goals.forEach((what) => (further[what] || []).forEach((path) => goal(what, path)));
  (further.subject_to || []).forEach(kept);
  effort({ ...Object.fromEntries(Object.entries(further).map(([key, list]) => [key, [list].flat()[0]])), samples: study.samples || undefined });
}

async function run() {
  calm();
  byId("out").replaceChildren();
  byId("go").disabled = true;
  byId("report").disabled = true;
  try {
    running = (await post("/api/search", { ...capture(), name: byId("study-name")?.value || "study" })).id;
    byId("stop").disabled = false;
    const job = await watch("/api/search/" + running, (j) => j.doing, (j) => (j.cancelled ? "Stopping …" : "At work …"));
    if (job.failure) {
      return say("The study has no result.");
    }
    show(await get("/api/search/" + running + "/result"), running);
    byId("report").disabled = false;
    say(job.cancelled ? "Stopped; what is done is shown." : "Done.");
  } catch (error) {
    complain(error);
  } finally {
    byId("go").disabled = false;
    byId("stop").disabled = true;
  }
}

function show(found, id) {
  title = asFileName(found.title);
  const link = (name, path) => make("a", { href: "/api/search/" + id + "/" + path, download: title + path.slice(path.lastIndexOf(".")) }, name);
  byId("out").replaceChildren(
    make("p", { class: "verdict " + (found.complete ? "good" : "doubt") }, found.title + (found.complete ? ". " : "; stopped on the way, what was done is kept. "),
      link("JSON", "answer.json"), ...(kind() === "sample" ? [" ", link("CSV of all points", "rows.csv")] : [])),
    ...(found.opened.length === 1 && kind() === "optimise" ? [make("p", {}, make("a", { id: "best-open", href: found.opened[0] }, "Open the best point on its page"))] : []),
    // On the page a point opens from its line and its mark; commands that show it again are for reports.
    ...sections(found.sections.filter((s) => s.id !== "points"), title));
  if (kind() === "frontier") {
    open(found.opened);
  }
}

/** Every point of a frontier leads to its page: from its line in the table, and from its mark in the chart. */
function open(places) {
  const table = [...byId("out").querySelectorAll("table")].find((t) => t.tBodies[0].rows.length === places.length);
  places.forEach((href, i) => {
    const cell = table?.tBodies[0].rows[i].cells[0];
    cell?.replaceChildren(make("a", { href }, cell.textContent));
  });
  for (const svg of byId("out").querySelectorAll("svg[data-read]")) {
    const data = JSON.parse(svg.dataset.read);
    const at = (axis, value) => axis.from + (value - axis.low) / (axis.high - axis.low) * (axis.to - axis.from);
    for (const panel of data.panels) {
      for (const curve of panel.curves.filter((c) => c.points.length === places.length && c.name !== "hypervolume")) {
        curve.points.forEach(([x, y], i) => svg.append(mark(places[i], i + 1, at(data.x, x), at(panel, y))));
      }
    }
  }
}

function mark(href, number, x, y) {
  const NS = "http://www.w3.org/2000/svg";
  const [link, circle, name] = ["a", "circle", "title"].map((tag) => document.createElementNS(NS, tag));
  link.setAttribute("href", href);
  for (const [key, value] of Object.entries({ cx: x, cy: y, r: 8, fill: "transparent", stroke: "none" })) {
    circle.setAttribute(key, value);
  }
  name.textContent = "Open point " + number;
  circle.append(name);
  link.append(circle);
  return link;
}

byId("plan").addEventListener("submit", (e) => { e.preventDefault(); run(); });
byId("stop").addEventListener("click", () => post("/api/search/" + running + "/stop", {}).catch(complain));
byId("report").addEventListener("click", () => report("/api/search/" + running + "/report", {}, title));
byId("vary-add").addEventListener("click", () => varied());
byId("goals-add").addEventListener("click", () => goal(KINDS[kind()].goals[0]));
byId("kept-add").addEventListener("click", () => kept());
byId("kind").addEventListener("change", ask);
byId("file").addEventListener("change", () => { changes = {}; begin(); });

try {
  const all = await get("/api/files");
  choose(byId("file"), [...all.concepts, ...all.vehicles]);
  await begin();
  studies(Object.keys(KINDS), byId("plan"), capture, restore, run);
} catch (error) {
  complain(error);
}
