// The page of claims. The text under change lives here; the server reads it, judges it and keeps nothing.
import { addressed, asFileName, byId, calm, choose, complain, get, keep, listed, make, openEngine, place, post, say, sections, watch } from "./common.js";
import { calmConflict, notSaved } from "./conflict.js";
import { editing, report } from "./panel.js";
import { pictureTool } from "./picture.js";
import { whenUnits } from "./units.js";

const FOLDER = "claims/";
/** Claims about the engine that is open on other pages: they lie in no file until they are saved. */
const ABOUT = FOLDER + "about-the-open-engine";
const engineName = openEngine.file.replace(/\.toml$/, "");
const KINDS = { "value": "value ± error", "range": "between two ends", "at_least": "at least", "at_most": "at most" };

const state = { file: "", text: "", version: "", changes: {}, past: [], shown: null };
const edit = editing(state, read, open);
const question = edit.question;
let running = "";
let number = 0;

async function open(name, changes = {}) {
  calm();
  calmConflict();
  try {
    const begun = name === ABOUT && openEngine.file;
    const opened = begun ? { file: ABOUT, version: "", ...(await post("/api/claims/begin", openEngine)) } : await get("/api/file?name=" + encodeURIComponent(name));
    byId("file").value = name;
    byId("as").value = begun ? engineName : "";
    aboutEngine(begun);
    Object.assign(state, { file: opened.file, text: opened.text, version: opened.version, changes, past: Object.keys(changes).length ? [{}] : [], future: [] });
    forget();
    await read();
  } catch (error) {
    complain(error);
  }
}

/** Says what the claims were begun from. */
function aboutEngine(begun) {
  byId("engine").hidden = !begun;
  const changes = Object.keys(openEngine.changes).length ? " with its unsaved changes (" + listed(openEngine.changes) + ")" : "";
  byId("engine").textContent = begun
    ? "About " + engineName + changes + ": what its concept states is taken as certain, what its estimate gives is claimed. Take out or widen what nobody has said."
    : "";
}

/** The files of the workspace, after the open engine. */
function offer(names) {
  choose(byId("file"), openEngine.file ? [ABOUT, ...names] : names, { [ABOUT]: "about " + engineName + ", the open engine" });
}

/** A judgement belongs to the claims that it was made of. */
function forget() {
  state.shown = null;
  byId("verdict").hidden = true;
  byId("best").hidden = true;
  byId("out").replaceChildren(make("p", {}, "Nothing is judged yet."));
}

async function read() {
  const mine = ++number;
  edit.address();
  try {
    const answer = await post("/api/claims", question());
    if (mine !== number) {
      return;
    }
    calm();
    byId("title").textContent = answer.name;
    show(answer);
    byId("results").classList.toggle("stale", Boolean(state.shown));
    byId("judge").disabled = Boolean(running);
    edit.buttons();
    say("Read: " + answer.claims.length + " claims.");
  } catch (error) {
    if (mine === number) {
      byId("judge").disabled = true;
      edit.buttons();
      complain(error);
    }
  }
}

const kindOf = (fields) => ("value" in fields ? "value" : "low" in fields ? "range" : "at_least" in fields ? "at_least" : "at_most");
const boxesOf = { value: ["value", "within"], range: ["low", "high"], at_least: ["at_least", "within"], at_most: ["at_most", "within"] };
const LABELS = { value: "value", within: "± (90 % interval)", low: "from", high: "to", at_least: "at least", at_most: "at most", source: "source" };
const idOf = (path, field) => "in-" + path.replace(/[^\w]/g, "-") + "-" + field;

function box(path, field, value, changed, fixed = false) {
  const own = make("input", { id: idOf(path, field), type: "text", value, spellcheck: "false", disabled: fixed });
  own.addEventListener("change", () => changed(own.value.trim()));
  return make("div", { class: "field" }, make("label", { for: own.id }, LABELS[field] || field), own);
}

function remove(name, action) {
  const button = make("button", { type: "button", class: "back", "aria-label": "Remove " + name }, "remove");
  button.addEventListener("click", action);
  return button;
}

function claim(c) {
  const at = "claims." + c.path;
  const kind = kindOf(c.fields);
  const choice = make("select", { id: idOf(c.path, "kind"), disabled: !c.own },
    ...Object.entries(KINDS).map(([value, text]) => make("option", { value, selected: value === kind }, text)));
  choice.addEventListener("change", () => edit.set(asKind(at, c.fields, choice.value)));
  return make("fieldset", { class: "claim", "data-claim": c.path },
    make("legend", {}, c.title || c.path),
    make("p", { class: "kind" }, make("code", {}, c.path)),
    make("div", { class: "field" }, make("label", { for: choice.id }, "what is said"), choice),
    ...[...boxesOf[kind], "source"].map((field) => box(c.path, field, c.fields[field] || "", (value) => edit.set({ [at + "." + field]: value }), !c.own)),
    ...(c.own ? [remove("the claim " + c.path, () => edit.set({ [at]: "" }))] : []));
}

/** The same claim said in another way, with the number that stands first. */
function asKind(at, fields, kind) {
  const first = fields.value || fields.low || fields.at_least || fields.at_most;
  const changes = {};
  for (const key of ["value", "within", "low", "high", "at_least", "at_most"]) {
    if (key in fields) {
      changes[at + "." + key] = "";
    }
  }
  if (kind === "range") {
    changes[at + ".low"] = fields.low || first;
    changes[at + ".high"] = fields.high || first.replace(/^[-+\d.eE]+/, (n) => Number((1.1 * n).toPrecision(4)));
  } else {
    changes[at + "." + kind] = first;
    if (fields.within) {
      changes[at + ".within"] = fields.within;
    }
  }
  return changes;
}

function group(name, open, ...children) {
  const before = byId("inputs").querySelector('details[data-table="' + name + '"]');
  return make("details", { "data-table": name, open: before ? before.open : open }, make("summary", {}, name), ...children);
}

/** Words of a list, as a file has it. */
const list = (words) => (words.length === 1 ? '"' + words[0] + '"' : "[" + words.map((w) => '"' + w + '"').join(", ") + "]");

function choices(name, key, all, chosen) {
  const boxes = all.map((one) => {
    const own = make("input", { type: "checkbox", value: one.id, checked: chosen.includes(one.id) });
    own.addEventListener("change", () => {
      const words = boxes.map((b) => b.querySelector("input")).filter((b) => b.checked).map((b) => b.value);
      if (words.length) {
        edit.set({ [key]: key === "cycle" && words.length === all.length ? '"any"' : list(words) });
      } else {
        own.checked = true;
        say("One at least is needed.");
      }
    });
    return make("label", { class: "check" }, own, " " + one.title);
  });
  return group(name + ": " + (chosen.length === all.length ? "any" : chosen.length), false, make("fieldset", { class: "plainly" }, make("legend", {}, name), ...boxes));
}

function adder(id, what, fields, add) {
  const boxes = fields.map((f) => make("input", { id: id + "-" + f.name, type: "text", spellcheck: "false", autocomplete: "off", list: f.list, placeholder: f.example }));
  const button = make("button", { type: "button", id: id + "-go" }, "Add");
  button.addEventListener("click", () => {
    if (boxes.slice(0, 2).every((b) => b.value.trim())) {
      add(...boxes.map((b) => b.value.trim()));
    } else {
      say("Write at least " + fields[0].name + " and " + fields[1].name + ".");
    }
  });
  return make("fieldset", { class: "claim" }, make("legend", {}, what),
    ...fields.map((f, i) => make("div", { class: "field" }, make("label", { for: boxes[i].id }, f.name), boxes[i])), button);
}

function show(answer) {
  const focused = document.activeElement?.id;
  const known = make("datalist", { id: "paths" }, ...answer.choices.paths.map((p) => make("option", { value: p.path }, p.title)));
  const same = (ids) => ids.map((id) => ({ id, title: id }));
  byId("inputs").replaceChildren(known,
    group("claims", true, ...answer.claims.map(claim),
      adder("new", "A further claim", [{ name: "path", list: "paths", example: "engine.isp_vacuum" }, { name: "value", example: "358 s" },
        { name: "within", example: "4 s, or 2 %" }, { name: "source", example: "announcement" }],
      (path, value, within, source) => edit.set(asClaim({ path, value, within, source })))),
    choices("cycles", "cycle", answer.choices.cycles, answer.cycles),
    choices("oxidizers", "propellants.oxidizer", same(answer.choices.oxidizers), answer.oxidizers),
    choices("fuels", "propellants.fuel", same(answer.choices.fuels), answer.fuels),
    group("taken as certain", true,
      ...answer.given.map((g) => make("div", { class: "given" },
        box("given." + g.path, g.path, g.value, (value) => edit.set({ ["given." + g.path]: value })),
        remove(g.path, () => edit.set({ ["given." + g.path]: "" })))),
      adder("certain", "A further certain value", [{ name: "path", list: "paths", example: "engine.thrust_vacuum" }, { name: "value", example: "110 kN" }],
        (path, value) => edit.set({ ["given." + path]: value }))),
    ...(answer.priors.length ? [group("believed before", false, ...answer.priors.flatMap((p) => [make("p", { class: "kind" }, p.path + ": " + p.title),
      ...["low", "high", "source"].map((key) => box("prior." + p.path, key, p[key], (value) => edit.set({ ["prior." + p.path + "." + key]: value })))]))] : []),
    ...(answer.body ? [group("body", false, ...Object.entries(answer.body).map(([key, value]) => box("body", key, value, (text) => edit.set({ ["body." + key]: text }))))] : []));
  if (focused) {
    document.getElementById(focused)?.focus({ preventScroll: true });
  }
}

function asClaim(c) {
  const changes = { ["claims." + c.path]: "", ["claims." + c.path + ".value"]: c.value };
  if (c.within) {
    changes["claims." + c.path + ".within"] = c.within;
  }
  if (c.source) {
    changes["claims." + c.path + ".source"] = c.source;
  }
  return changes;
}

async function judge() {
  calm();
  byId("judge").disabled = true;
  const asked = JSON.stringify(state.changes);
  try {
    running = (await post("/api/judgement", question({ samples: Number(byId("samples").value) }))).id;
    byId("stop").disabled = false;
    let early = false;
    const job = await watch("/api/judgement/" + running, (j) => j.done + " %, " + j.doing, (j) => {
      if (j.early && !early) {
        early = true;
        answer(asked, true).catch(complain);
      }
      return j.cancelled ? "Stopping …" : early ? "A first answer is shown; it is made surer …" : "Judging …";
    });
    if (job.failure) {
      say("No judgement.");
      return;
    }
    await answer(asked, false);
    say(job.cancelled ? "Stopped; what is done is shown." : "Judged.");
  } catch (error) {
    complain(error);
  } finally {
    state.judged = running;
    state.judgedFor = asked;
    running = "";
    byId("judge").disabled = false;
    byId("stop").disabled = true;
    edit.buttons();
  }
}

const TONES = { consistent: "good", strained: "doubt", undecided: "doubt", contradicted: "bad", impossible: "bad" };

async function answer(asked, rough) {
  const judged = await get("/api/judgement/" + (running || state.judged) + "/so-far");
  if (rough && state.shown === running + "whole") {
    return;
  }
  state.shown = running + (rough ? "rough" : "whole");
  byId("results").classList.toggle("stale", asked !== JSON.stringify(state.changes));
  const verdict = byId("verdict");
  verdict.hidden = false;
  verdict.className = "verdict " + TONES[judged.verdict];
  verdict.replaceChildren(make("b", {}, rough ? "First, rough answer" : judged.verdict[0].toUpperCase() + judged.verdict.slice(1)),
    rough ? ": the claims are not held against each other yet. " + judged.brief + "." : ". " + judged.brief + ".");
  best(judged);
  byId("out").replaceChildren(...sections(judged.sections.filter((s) => !rough || s.id !== "verdict"), fileName()),
  make("p", { class: "kind" }, judged.effort + "."), ...judged.cautions.map((c) => make("p", { class: "kind" }, c)));
}

const fileName = () => asFileName(byId("title").textContent);

/** The best-fitting engine can be opened as any other concept. */
function best(judged) {
  byId("best").hidden = !judged.concept;
  if (!judged.concept) {
    return;
  }
  const name = fileName().toLowerCase().slice(0, 50).replace(/-+$/, "") + "-best.toml";
  const open = make("button", { type: "button", id: "best-open" }, "Keep the best-fitting engine as " + name);
  open.addEventListener("click", async () => {
    try {
      const there = await get("/api/file?name=" + name).then((f) => f.version, () => "");
      await post("/api/save", { file: name, text: judged.concept, changes: {}, whole: true, as: name, version: there });
      byId("best").replaceChildren(make("a", { href: "/?file=" + name }, "Open " + name + " on the page Engine"));
      say("Kept as " + name + ".");
    } catch (error) {
      complain(error);
    }
  });
  const text = make("button", { type: "button" }, "TOML text");
  text.addEventListener("click", () => keep(new Blob([judged.concept], { type: "text/plain" }), name));
  byId("best").replaceChildren(open, text);
}

async function save(as, version) {
  calm();
  try {
    const saved = await post("/api/claims/save", question({ as, version }));
    calmConflict();
    Object.assign(state, { file: saved.file, text: saved.text, version: saved.version, changes: {}, past: [], future: [] });
    offer((await get("/api/files")).claims);
    aboutEngine(false);
    byId("file").value = saved.file;
    await read();
    say("Saved as " + saved.file + "; penstock judge " + saved.file.replace(/^claims\/|\.toml$/g, "") + " judges it.");
  } catch (error) {
    notSaved(error, as, { save, open, place: (name) => place(FOLDER, name) });
  }
}

byId("file").addEventListener("change", (e) => { state.step = true; open(e.target.value); });
byId("save").addEventListener("click", () => save(state.file, state.version));
byId("saveas").addEventListener("click", () => {
  const as = place(FOLDER, byId("as").value.trim());
  save(as, as === state.file ? state.version : "");
});
byId("report").addEventListener("click", () => report("/api/judgement/" + (state.judged || running) + "/report", {}, fileName() + "-judged"));
byId("judge").addEventListener("click", judge);
byId("stop").addEventListener("click", () => post("/api/judgement/" + running + "/stop", {}).catch(complain));
whenUnits(async () => {
  await read();
  if (state.judged && !running && state.shown) {
    await answer(state.judgedFor, false).catch(complain);
  }
});
pictureTool(byId("picture"), (values) => edit.set(Object.assign({}, ...values.map(asClaim))));

try {
  const names = (await get("/api/files")).claims;
  offer(names);
  if (byId("file").options.length) {
    await open(byId("file").value, addressed());
  } else {
    say("The workspace holds no claims yet.");
  }
} catch (error) {
  complain(error);
}
