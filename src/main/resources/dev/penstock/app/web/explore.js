// A sweep of one or two inputs: started, watched, stopped, shown.
import { address, addressed, byId, calm, choose, complain, drawing, get, make, post, Refused, say, watch, words } from "./common.js";
import { settings, studies } from "./study.js";
import { whenUnits } from "./units.js";

let text = "";
let inputs = [];
let running = "";
let changes = addressed();

const parts = (written) => written.match(/^\s*([-+]?[\d.]+(?:[eE][-+]?\d+)?)\s*(.*?)\s*$/);

async function load() {
  calm();
  try {
    const file = await get("/api/file?name=" + encodeURIComponent(byId("file").value));
    text = file.text;
    address(file.file, changes);
    settings(changes);
    const answer = await post("/api/inputs", { file: file.file, text, changes });
    inputs = answer.inputs.filter((i) => parts(i.written));
    for (const n of [1, 2]) {
      const options = inputs.map((i) => make("option", { value: i.key, title: i.key }, words(i.key)));
      byId("path" + n).replaceChildren(...(n === 2 ? [make("option", { value: "" }, "none")] : []), ...options);
    }
    if (inputs.some((i) => i.key === "engine.chamber_pressure")) {
      byId("path1").value = "engine.chamber_pressure";
    }
    suggest(1);
    suggest(2);
    bands();
  } catch (error) {
    complain(error);
  }
}

/** From three quarters to five quarters of the value in the file. */
function suggest(n) {
  const input = inputs.find((i) => i.key === byId("path" + n).value);
  const [from, to, unit] = ["from", "to", "unit"].map((name) => byId(name + n));
  for (const box of [from, to, unit, byId("count" + n)]) {
    box.disabled = !input;
  }
  const [, value, name] = input ? parts(input.written) : ["", "", ""];
  from.value = input ? Number((0.75 * value).toPrecision(2)) : "";
  to.value = input ? Number((1.25 * value).toPrecision(2)) : "";
  unit.value = name;
}

/** A band belongs to a curve; a map has none. */
function bands() {
  const map = byId("path2").value !== "";
  byId("band").disabled = map;
  byId("samples").disabled = map || !byId("band").checked;
}

function axis(n) {
  const v = (name) => byId(name + n).value.trim();
  return v("path") && v("path") + "=" + v("from") + ".." + v("to") + v("unit") + ":" + v("count");
}

const samples = () => (byId("samples").disabled ? 0 : Number(byId("samples").value));

async function sweep() {
  calm();
  byId("out").replaceChildren();
  byId("go").disabled = true;
  try {
    const vary = [axis(1), axis(2)].filter(Boolean);
    running = (await post("/api/sweep", { file: byId("file").value, text, changes, vary, samples: samples(), of: byId("of").value })).id;
    byId("stop").disabled = false;
    const job = await watch("/api/sweep/" + running, (j) => j.done + (vary.length > 1 ? " balanced, at most " : " of ") + j.of, (j) => (j.cancelled ? "Stopping …" : "Sweeping …"));
    if (job.failure) {
      return say("The sweep has no result.");
    }
    await show(job.cancelled);
  } catch (error) {
    complain(error);
  } finally {
    byId("go").disabled = false;
    byId("stop").disabled = true;
  }
}

async function show(cancelled) {
  const result = await get("/api/sweep/" + running + "/charts?of=" + encodeURIComponent(byId("of").value));
  const link = (ending) => make("a", { href: "/api/sweep/" + running + "/table." + ending, download: "sweep." + ending }, ending.toUpperCase());
  byId("out").replaceChildren(
    make("p", { class: "verdict " + (result.complete ? "good" : "bad") },
      result.name + ": " + result.points + " combinations tried, " + result.without + " without a solution" +
      (result.complete ? ". " : "; stopped before the end, what was done is kept. "), link("csv"), " ", link("json")),
    ...(result.flat ? [make("p", {}, "The figure that is chosen, " + byId("of").selectedOptions[0].textContent + ", is the same wherever there is a solution.")] : []),
    ...(result.reasons.length ? [make("ul", {}, ...result.reasons.map((r) => make("li", {}, r)))] : []),
    make("div", { class: "figures" }, ...result.figures.map((f, i) => drawing(f, "sweep-" + (i + 1)))));
  say(cancelled ? "Stopped; what is done is shown." : "Swept.");
}

const NUMBER = "([-+]?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)";
const RANGE = new RegExp("^([\\w.-]+)=" + NUMBER + "\\s*(?:[^.:\\d][^:]*?)?\\s*\\.\\.\\s*" + NUMBER + "\\s*([^:]*?)\\s*:\\s*(\\d+)$");

const capture = () => ({ cases: [byId("file").value], changes, vary: [axis(1), axis(2)].filter(Boolean), samples: samples(), fly: false });

async function restore(study) {
  const axes = study.vary.map((v) => v.match(RANGE));
  if (axes.length > 2 || axes.includes(null)) {
    throw new Refused(422, { problems: ["this study varies more than two inputs, or words; penstock study does it"] });
  }
  changes = study.changes;
  settings(changes);
  byId("file").value = study.cases[0];
  await load();
  for (const n of [1, 2]) {
    const [, path, from, to, unit, count] = axes[n - 1] || [];
    byId("path" + n).value = path || "";
    suggest(n);
    if (path) {
      Object.entries({ from, to, unit, count }).forEach(([name, value]) => { byId(name + n).value = value; });
    }
  }
  byId("band").checked = study.samples > 0;
  byId("samples").value = study.samples || byId("samples").value;
  bands();
}

byId("plan").addEventListener("submit", (e) => { e.preventDefault(); sweep(); });
byId("stop").addEventListener("click", () => post("/api/sweep/" + running + "/stop", {}).catch(complain));
byId("file").addEventListener("change", () => { changes = {}; settings(changes); load(); });
byId("path1").addEventListener("change", () => suggest(1));
byId("path2").addEventListener("change", () => { suggest(2); bands(); });
byId("band").addEventListener("change", bands);
const shownAgain = () => running && byId("out").children.length && show(false).catch(complain);
byId("of").addEventListener("change", (e) => { e.stopPropagation(); shownAgain(); });
whenUnits(shownAgain);

try {
  const [files, { measures }] = await Promise.all([get("/api/files"), get("/api/measures")]);
  byId("of").replaceChildren(...measures.map((m) => make("option", { value: m.key }, m.name)));
  choose(byId("file"), files.concepts);
  await load();
  studies("sweep", byId("plan"), capture, restore, sweep);
} catch (error) {
  complain(error);
}
