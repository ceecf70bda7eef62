// The page of one vehicle: sized at every change, flown on request. What is under change lives here.
import { addressed, asFileName, byId, calm, choose, complain, drawing, get, listed, make, openEngine, place as placeIn, post, say, table, watch } from "./common.js";
import { calmConflict, notSaved } from "./conflict.js";
import { editing, figures, figuresFirst, inputPanel, report, warnings, wayBack } from "./panel.js";
import { asked, studies } from "./study.js";
import { whenUnits } from "./units.js";
import { opener } from "./why.js";

const page = crypto.randomUUID();
const state = { file: "", text: "", version: "", changes: {}, past: [], shown: null, before: null, flight: "", note: "" };
const edit = editing(state, size, open);
const question = (more = {}) => edit.question({ engine: openEngine.file, engine_changes: openEngine.changes, ...more });
const panel = inputPanel(byId("inputs"), edit.change);
let number = 0;

async function open(name, changes = {}) {
  calm();
  calmConflict();
  try {
    const file = await get("/api/file?name=" + encodeURIComponent(name));
    Object.assign(state, { file: file.file, text: file.text, version: file.version, changes, past: [], future: [], shown: null, before: null });
    byId("inputs").replaceChildren();
    await size();
  } catch (error) {
    complain(error);
  }
}

async function size() {
  const mine = ++number;
  byId("results").classList.add("stale");
  edit.address();
  say("Sizing …");
  const start = performance.now();
  try {
    const answer = await post("/api/vehicle", question({ page, number: mine }));
    if (mine === number) {
      calm();
      state.flight = "";
      show(answer);
      say(state.note + "Sized in " + Math.round(performance.now() - start) + " ms.");
      state.note = "";
    }
  } catch (error) {
    if (mine === number) {
      complain(error);
      panel.mark(error.answer?.keys || [], error.answer?.problems || []);
      buttons();
    }
  }
}

function show(answer) {
  state.before = state.shown;
  state.shown = answer;
  byId("results").classList.remove("stale");
  byId("title").textContent = answer.name;
  byId("kind").textContent = answer.kind + (answer.description ? ". " + answer.description : "");
  const verdict = byId("verdict");
  verdict.hidden = false;
  verdict.className = "verdict good";
  verdict.textContent = answer.flown ? "Sized on the losses of its own flight." : "Sized on the losses that the mission assumes; a flight replaces them.";
  const flight = state.flight;
  const traced = (text, path) => opener(text, path, () => question({ flight }), "/api/vehicle/why");
  figures(byId("headline"), answer.measures, state.before ? state.before.measures : [], traced);
  byId("warnings").replaceChildren(...warnings(answer.warnings));
  byId("figures").replaceChildren(...answer.figures.map((f, i) => drawing(f, fileName() + "-" + (i + 1))));
  byId("tables").replaceChildren(...answer.tables.map((grid) => table(grid, traced)));
  byId("notes").replaceChildren(make("ul", {}, ...answer.definitions.map((d) => make("li", {}, d))));
  panel.show(answer.inputs, state.changes);
  engineNote(answer.engines);
  buttons();
}

/** Says which unsaved changes of an engine count here, and takes them out on request. */
function engineNote(engines) {
  const changed = Object.keys(openEngine.changes).length > 0;
  byId("engine").hidden = !changed;
  if (changed) {
    const name = openEngine.file.replace(/\.toml$/, "");
    const said = listed(openEngine.changes);
    const without = make("button", { type: "button" }, "Without them");
    without.addEventListener("click", () => {
      openEngine.changes = {};
      size();
    });
    byId("engine").replaceChildren(...engines.includes(openEngine.file)
      ? ["With the unsaved changes of " + name + ": " + said + ". Studies and saved files have the engine as it is saved. ", without]
      : ["The unsaved changes of " + name + " (" + said + ") touch no engine of this vehicle."]);
  }
}

const fileName = () => asFileName(state.shown ? state.shown.name : "vehicle");

function buttons() {
  edit.buttons();
  byId("fly").disabled = !state.shown || !byId("stop").disabled;
}

async function flown() {
  const answer = await get("/api/flight/" + state.flight + "/result");
  number++;
  show(answer);
}

async function fly() {
  calm();
  try {
    const id = (await post("/api/flight", question())).id;
    byId("stop").disabled = false;
    byId("stop").dataset.flight = id;
    buttons();
    const flight = await watch("/api/flight/" + id, (job) => job.done + " %", () => "Flying …");
    if (flight.failure) {
      return say("No flight.");
    }
    state.flight = id;
    await flown();
    say("Flown.");
  } catch (error) {
    complain(error);
  } finally {
    byId("stop").disabled = true;
    buttons();
  }
}

async function save(as, version) {
  calm();
  try {
    const saved = await post("/api/vehicle/save", question({ as, version }));
    calmConflict();
    state.note = "Saved as " + saved.file + ". ";
    Object.assign(state, { file: saved.file, text: saved.text, version: saved.version, changes: {}, past: wayBack(state.changes, state.shown?.inputs), future: [] });
    choose(byId("file"), (await get("/api/files")).vehicles);
    byId("file").value = saved.file;
    await size();
  } catch (error) {
    notSaved(error, as, { save, open: edit.theirs, place });
  }
}

const place = (name) => placeIn("vehicles/", name);

function saveAs() {
  const as = place(byId("as").value.trim());
  save(as, as === state.file ? state.version : "");
}

byId("file").addEventListener("change", (e) => { state.step = true; open(e.target.value); });
byId("save").addEventListener("click", () => save(state.file, state.version));
byId("saveas").addEventListener("click", saveAs);
byId("report").addEventListener("click",
  () => report("/api/vehicle/report", question({ flight: state.flight }), "vehicle-" + fileName()));
byId("fly").addEventListener("click", fly);
byId("stop").addEventListener("click", (e) => post("/api/flight/" + e.target.dataset.flight + "/stop", {}).catch(complain));
whenUnits(() => { state.shown = null; state.text && (state.flight ? flown() : size()); });
byId("add").addEventListener("submit", (e) => {
  e.preventDefault();
  edit.change(byId("key").value.trim(), byId("value").value, "");
});

figuresFirst();
try {
  const names = (await get("/api/files")).vehicles;
  choose(byId("file"), names);
  studies("vehicle", byId("plan"),
    () => ({ cases: [byId("file").value], changes: state.changes, vary: [], samples: 0, fly: Boolean(state.flight) }),
    async (study) => { byId("file").value = study.cases[0]; await open(study.cases[0], study.changes); state.wanted = study.fly; },
    async () => { if (state.wanted) { await fly(); } }, false);
  if (!names.length) {
    say("The workspace holds no vehicle yet.");
  } else if (!asked) {
    await open(byId("file").value, addressed());
  }
} catch (error) {
  complain(error);
}
