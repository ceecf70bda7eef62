// The page of one concept. What is under change lives here; the server balances what it is sent and keeps nothing.
import { addressed, asFileName, byId, calm, choose, complain, drawing, file, get, keep, make, place, post, Refused, say, table } from "./common.js";
import { calmConflict, notSaved } from "./conflict.js";
import { editing, figures, figuresFirst, inputPanel, report, warnings, wayBack } from "./panel.js";
import { whenUnits } from "./units.js";
import { opener } from "./why.js";

const page = crypto.randomUUID();
const state = { file: "", text: "", version: "", changes: {}, past: [], shown: null, before: null, note: "" };
const edit = editing(state, balance, open);
const question = edit.question;
/** The inputs that move an engine most, as far as its cycle has them; eight are shown. */
const MOST = ["engine.chamber_pressure", "engine.thrust_vacuum", "engine.thrust_sea_level", "propellants.mixture_ratio", "nozzle.area_ratio",
  "chamber.contraction_ratio", "gas_generator.temperature", "preburner.fuel_rich.temperature", "preburner.oxidizer_rich.temperature",
  "tap_off.temperature", "turbines.main.pressure_ratio", "cooling.film.fuel_fraction", "chamber.characteristic_length", "expander.heated_share"];
const panel = inputPanel(byId("inputs"), (key, value, file, moves) => (key === "cycle" ? cycle(value) : edit.change(key, value, file, moves)), MOST);
let number = 0;

async function open(name, changes = {}) {
  calm();
  try {
    const opened = await get("/api/file?name=" + encodeURIComponent(name));
    await take(opened.file, opened.text, opened.version, changes);
  } catch (error) {
    complain(error);
  }
}

function take(file, text, version, changes = {}) {
  Object.assign(state, { file, text, version, changes, past: Object.keys(changes).length ? [{}] : [], future: [], shown: null, before: null });
  byId("as").value = "";
  calmConflict();
  byId("inputs").replaceChildren();
  return balance();
}

async function upload(file) {
  calm();
  if (file.size > 256 * 1024) {
    complain(new Refused(413, { problems: [file.name + " is larger than 256 KiB; a concept file is a page of text"] }));
    return;
  }
  const text = await file.text();
  try {
    await post("/api/inputs", { file: file.name, text, changes: {} });
    take(file.name, text, "");
    byId("as").value = file.name;
  } catch (error) {
    complain(error);
  }
}

/** Another cycle: what it lacks is left out or translated, and said; one step that undo takes back. */
async function cycle(id) {
  calm();
  try {
    const answer = await post("/api/cycle", question({ cycle: id }));
    state.said = { title: answer.title, said: answer.said, step: state.past.length + 1 };
    edit.set(answer.changes);
  } catch (error) {
    complain(error);
    balance();
  }
}

/** What the last change of the cycle did, as long as that is the last step. */
function switched() {
  const said = state.said && state.said.step === state.past.length ? state.said.said : null;
  byId("switched").replaceChildren(...(said ? [make("div", { class: "note", role: "region", "aria-label": "What changed with the cycle" },
    make("h2", {}, "Now " + state.said.title.toLowerCase() + ": what changed with it"),
    said.length ? make("ul", {}, ...said.map((s) => make("li", {}, s + "."))) : make("p", {}, "Nothing else had to change."))] : []));
}

/** Figures that nobody need wait for are not faded first (ms). */
const LATE = 250;

async function balance() {
  const mine = ++number;
  look();
  const asked = JSON.stringify(state.changes);
  const start = performance.now();
  const answered = post("/api/balance", question({ page, number: mine, ...inView() }));
  const late = setTimeout(() => byId("results").classList.add("stale"), LATE);
  switched();
  if (state.version) {
    edit.address();
  }
  say("Balancing …");
  try {
    const answer = await answered;
    clearTimeout(late);
    if (mine !== number) {
      return;
    }
    calm();
    if (state.shown && asked !== state.shownFor) {
      state.before = state.shown;
    }
    state.shown = answer;
    state.shownFor = asked;
    show(answer);
    took(answer);
    byId("results").classList.remove("stale");
    const note = state.note;
    state.note = "";
    say(note + "Balanced in " + Math.round(performance.now() - start) + " ms.");
    await drawings();
  } catch (error) {
    if (mine === number) {
      byId("results").classList.add("stale");
      complain(error);
      await faulty(error);
    }
  } finally {
    clearTimeout(late);
  }
}

/** The figures of the last balance stay, faded; the inputs stay open for correction. */
async function faulty(error) {
  const keys = error.answer?.keys || [];
  if (!byId("inputs").children.length) {
    try {
      panel.show((await post("/api/inputs", question())).inputs, state.changes);
    } catch (unreadable) {
      complain(unreadable);
    }
  }
  panel.mark(keys, error.answer?.problems || []);
  markNoBalance(error);
  buttons();
}

/** Waiting time of drawings that nobody sees yet while a slider moves (ms). */
const REST = 400;
const DRAWINGS = { flow: drawFlow, charts: drawCharts };
const seen = { flow: true, charts: false };
const drawnFor = { flow: 0, charts: 0 };
let rest = 0;

/** The figures are on the screen; drawings follow at once, those in view first. Who moves a slider asks for no others until it rests. */
function drawings() {
  clearTimeout(rest);
  const mine = number;
  const all = Object.keys(DRAWINGS);
  const behind = async () => {
    tablesBehind();
    for (const what of all.filter(() => mine === number)) {
      await drawn(what);
    }
  };
  if (edit.moves()) {
    rest = setTimeout(behind, REST);
  }
  return Promise.all(all.filter(inSight).map(drawn)).then(() => edit.moves() || whenIdle(behind));
}

/** Whether a place had drawings in view when the question was asked; one that has none yet counts if it is near. */
function inSight(what) {
  const own = [...byId(what).children];
  return own.length ? own.some((figure) => glimpse.has(figure)) : seen[what];
}

/** What is in view comes with the figures. */
const inView = () => ({ flow: byId("flow").children.length > 0 && inSight("flow"), charts: chartsInView() });

/** Puts the drawings that came with the figures. */
function took({ flow, charts }) {
  performance.mark("penstock-figures");
  if (flow) {
    drawnFor.flow = number;
    putFlow(flow);
    performance.mark("penstock-flow");
  }
  if (charts && charts.of === byId("charts").children.length) {
    drawnFor.charts = number;
    putCharts(charts);
    performance.mark("penstock-charts");
    others(charts);
  }
}

/** Places of the charts in view; none where there are no charts yet. */
const chartsInView = () => [...byId("charts").children].flatMap((figure, i) => (glimpse.has(figure) ? [i] : []));

/** Asks once for a drawing of what is shown. */
async function drawn(what) {
  const mine = number;
  if (drawnFor[what] === mine || !state.shown || state.shownFor !== JSON.stringify(state.changes)) {
    return;
  }
  drawnFor[what] = mine;
  const wanted = () => mine === number;
  try {
    await DRAWINGS[what](wanted);
    if (wanted()) {
      performance.mark("penstock-" + what);
    }
  } catch (error) {
    if (mine === number) {
      complain(error);
    }
  }
}

async function drawFlow(wanted) {
  const { flow } = await draw("flow");
  if (wanted()) {
    putFlow(flow);
  }
}

function putFlow(flow) {
  const made = drawing(flow, fileName() + "-flow");
  nameStations(made);
  const old = byId("flow").firstElementChild;
  if (old && !old.querySelector(".fault") && !missed(state.shown.limits).length && follow(old, made)) {
    return;
  }
  const diagram = old ? exchange(old, made) : made;
  if (!old) {
    byId("flow").append(diagram);
  }
  glimpse.add(diagram);
  markFaults(diagram, state.shown.limits);
  leadToTable(diagram);
}

/** Charts in view first; the others are asked for when the browser has time for them. */
async function drawCharts(wanted) {
  let answer = await draw("charts", chartsInView());
  if (answer.places.length < answer.of && answer.of !== byId("charts").children.length && wanted()) {
    answer = await draw("charts");
  }
  if (!wanted()) {
    return;
  }
  putCharts(answer);
  others(answer);
}

/** Asks for the charts that did not come yet when the browser has time for them. */
function others({ of, places }) {
  const mine = number;
  const wanted = () => mine === number;
  const left = [...Array(of).keys()].filter((i) => !places.includes(i));
  if (left.length) {
    whenIdle(() => wanted() && draw("charts", left).then((more) => wanted() && putCharts(more), (error) => wanted() && complain(error)));
  }
}

/** Asks for a drawing of what is shown. */
const draw = (what, places = []) => post("/api/" + what, question({ page, number, charts: places }));

function putCharts({ of, places, figures: all }) {
  const place = byId("charts");
  const made = all.map((f, i) => drawing(f, fileName() + "-chart-" + (places[i] + 1)));
  if (place.children.length !== of) {
    place.replaceChildren(...made);
  } else {
    made.forEach((figure, i) => exchange(place.children[places[i]], figure));
  }
}

/** What is in view, as it stood when the question was asked: to look while the page is being made anew costs a layout. */
let glimpse = new Set();
const visible = (element) => {
  const box = element.getBoundingClientRect();
  return box.bottom > 0 && box.top < innerHeight;
};
const look = () => {
  glimpse = new Set(["flow", "limits", "tables", "charts"].flatMap((id) => [...byId(id).children]).filter(visible));
};

/**
 * Makes the children of a place anew, those in view at once.
 *
 * @return makes the others, one after the other when the browser has time for them
 */
function renew(place, all, made) {
  const mine = number;
  const old = [...place.children];
  const later = old.length === all.length ? all.map((item, i) => i).filter((i) => !glimpse.has(old[i])) : [];
  if (later.length) {
    all.forEach((item, i) => later.includes(i) || exchange(old[i], made(item, i)));
  } else {
    place.replaceChildren(...all.map(made));
  }
  const next = () => {
    if (mine === number && later.length) {
      const i = later.shift();
      exchange(old[i], made(all[i], i));
      whenIdle(next);
    }
  };
  return next;
}

/** What is in a place, made anew. The place itself stays: to the browser a new one is out of sight until it has been laid out once. */
function exchange(old, made) {
  old.replaceChildren(...made.childNodes);
  return old;
}

/** Whether two elements are built alike, whatever they say and where they stand. */
const alike = (old, made) => old.nodeName === made.nodeName && old.childNodes.length === made.childNodes.length &&
  [...made.childNodes].every((child, i) => alike(old.childNodes[i], child));

/**
 * Takes over what a new drawing says where it is built as the old one: the browser lays out and paints only what has changed.
 *
 * @return whether it could
 */
function follow(old, made) {
  const name = (figure) => figure.querySelector(".save button").getAttribute("aria-label");
  if (name(old) !== name(made) || !alike(old, made)) {
    return false;
  }
  const take = (from, to) => {
    if (from.nodeType === Node.TEXT_NODE) {
      if (to.data !== from.data) {
        to.data = from.data;
      }
      return;
    }
    for (const { name, value } of from.attributes) {
      if (to.getAttribute(name) !== value) {
        to.setAttribute(name, value);
      }
    }
    [...from.childNodes].forEach((child, i) => take(child, to.childNodes[i]));
  };
  take(made, old);
  return true;
}

/** Longest wait for a quiet moment (ms). */
const LONGEST_WAIT = 300;
const whenIdle = (act) => (window.requestIdleCallback ? requestIdleCallback(act, { timeout: LONGEST_WAIT }) : setTimeout(act));

const sight = new IntersectionObserver((entries) => entries.forEach((e) => {
  seen[e.target.id] = e.isIntersecting;
  if (e.isIntersecting) {
    drawn(e.target.id);
  }
}), { rootMargin: "300px 0px" });
Object.keys(DRAWINGS).forEach((what) => sight.observe(byId(what)));

const fileName = () => asFileName(state.shown ? state.shown.name : "concept");

/** Makes the tables that are not in view. */
let tablesBehind = () => {};

function show(answer) {
  write("title", answer.name);
  write("kind", answer.kind + (answer.description ? ". " + answer.description : ""));
  const verdict = byId("verdict");
  verdict.hidden = false;
  verdict.className = "verdict " + (answer.missed ? "bad" : answer.doubts ? "doubt" : "good");
  verdict.replaceChildren("Closes to a residual of ", traced(answer.residual.text, answer.residual.path), answer.limitsSentence);
  figures(byId("headline"), answer.measures, state.before ? state.before.measures : [], traced);
  byId("warnings").replaceChildren(...warnings(answer.warnings));
  const grid = (content) => table(content, traced);
  const limitsBehind = renew(byId("limits"), [limits(answer.limits)], grid);
  const othersBehind = renew(byId("tables"), answer.tables, grid);
  tablesBehind = () => { limitsBehind(); othersBehind(); };
  panel.show(answer.inputs, state.changes);
  buttons();
}

/** What stands there already is left alone. */
function write(id, text) {
  if (byId(id).textContent !== text) {
    byId(id).textContent = text;
  }
}

const traced = (text, path) => opener(text, path, question);

function limits(all) {
  return {
    caption: "Limits, the tightest first",
    columns: ["limit", "value", "bound", "margin", "state", "source"].map((title) => ({ title, text: title !== "value" && title !== "margin" })),
    rows: all.map((l) => ({
      mark: l.met ? "" : "missed",
      cells: [l.name, l.value, l.bound, l.margin, l.verdict, l.source],
    })),
  };
}

const missed = (all) => all.filter((l) => !l.met);

/** A missed limit shows on its component in the diagram; one that belongs to no one part below it. */
function markFaults(figure, all) {
  const whole = [];
  for (const limit of missed(all)) {
    const part = limit.component && figure.querySelector('[data-component="' + CSS.escape(limit.component) + '"]');
    const sentence = "missed: " + limit.name + " is " + limit.value.text + ", " + limit.bound.text;
    if (part) {
      flag(part, sentence, "limit missed");
    } else {
      whole.push("limit " + sentence);
    }
  }
  flagWhole(figure.querySelector("svg"), whole);
}

const SIGN = "font-size:11px;font-weight:bold;fill:var(--bad);stroke:var(--sheet);stroke-width:4px;paint-order:stroke";

/** Sentences about the whole engine, in lines added at the foot of its diagram. */
function flagWhole(svg, sentences) {
  const box = svg.viewBox.baseVal;
  const { width, height } = box;
  sentences.forEach((sentence, i) => {
    const sign = document.createElementNS("http://www.w3.org/2000/svg", "text");
    sign.setAttribute("style", SIGN);
    sign.setAttribute("x", 14);
    sign.setAttribute("y", height + 16 * (i + 1) - 6);
    sign.setAttribute("class", "fault sign");
    sign.textContent = sentence;
    svg.append(sign);
  });
  if (sentences.length) {
    const higher = height + 16 * sentences.length + 4;
    svg.setAttribute("viewBox", [box.x, box.y, width, higher].join(" "));
    if (svg.hasAttribute("height")) {
      svg.setAttribute("height", higher);
    }
  }
}

/** What has no balance shows on the components that it names, in the diagram of the last one that has. */
function markNoBalance(error) {
  const sentences = (error.answer?.problems || []).join(" ");
  const keys = (error.answer?.keys || []).map((key) => words(key).map((w) => (w === "cooling" ? "jacket" : w)));
  for (const part of byId("flow").querySelectorAll("[data-component]")) {
    part.querySelectorAll(".sign, title.sentence").forEach((old) => old.remove());
    part.classList.remove("fault");
    const label = part.querySelector("text")?.textContent || "";
    const own = words(part.dataset.component);
    if (label && sentences.includes(label) || keys.some((key) => own.every((word) => key.includes(word)))) {
      flag(part, sentences, "no balance");
    }
  }
}

const words = (name) => name.toLowerCase().split(/[^a-z]+/).map((word) => word.replace(/s$/, ""));

/** A red frame, a word beside it, and the whole sentence as its title. */
function flag(part, sentence, word) {
  part.classList.add("fault");
  const title = document.createElementNS("http://www.w3.org/2000/svg", "title");
  title.textContent = sentence;
  title.classList.add("sentence");
  part.prepend(title);
  const box = part.querySelector("rect");
  if (box && !part.querySelector("text.sign")) {
    const sign = document.createElementNS("http://www.w3.org/2000/svg", "text");
    sign.setAttribute("style", SIGN);
    sign.textContent = word;
    sign.classList.add("sign");
    part.append(sign);
    keepInside(sign, box);
  }
}

/** A sign stands where it leaves the drawing nowhere and covers no other box: beside its own, or in a corner above or below it. */
function keepInside(sign, box) {
  const drawing = sign.ownerSVGElement;
  const width = drawing?.viewBox.baseVal.width;
  const own = sign.getBBox();
  if (!width) {
    return;
  }
  const at = box.getBBox();
  const others = [...drawing.querySelectorAll("rect")].filter((r) => r !== box).map((r) => r.getBBox()).filter((r) => r.width < width / 2);
  const [before, behind] = [at.x - own.width - 6, at.x + at.width + 6];
  const [over, under] = [at.y - 5, at.y + at.height + 13];
  const half = at.x + at.width / 2;
  const places = [[behind, at.y + at.height / 2 + 4], [before, at.y + at.height / 2 + 4], [half + 8, over], [half - 8 - own.width, over], [half + 8, under], [half - 8 - own.width, under]];
  const inside = places.filter(([x]) => x > 4 && x + own.width < width - 4);
  const free = ([x, y]) => others.every((r) => x + own.width < r.x || x > r.x + r.width || y < r.y || y - own.height > r.y + r.height);
  const [x, y] = inside.find(free) || inside[0] || [Math.max(4, width - own.width - 6), over];
  sign.setAttribute("x", x);
  sign.setAttribute("y", y);
}

/** Stations are buttons, one of them in the order of keys. */
function nameStations(figure) {
  figure.querySelector("svg")?.setAttribute("role", "group");
  figure.querySelectorAll("[data-station]").forEach((plate, i) => {
    plate.setAttribute("role", "button");
    plate.setAttribute("aria-label", "station " + plate.dataset.station + ", " + (plate.querySelector("title")?.textContent || ""));
    plate.setAttribute("tabindex", i === 0 ? "0" : "-1");
  });
}

/** The values of a station in the diagram lead to its line in the table, where each of them opens. */
function leadToTable(figure) {
  const plates = [...figure.querySelectorAll("[data-station]")];
  plates.forEach((plate, i) => {
    plate.addEventListener("click", () => toLine(plate));
    plate.addEventListener("keydown", (e) => {
      const to = { ArrowRight: i + 1, ArrowDown: i + 1, ArrowLeft: i - 1, ArrowUp: i - 1, Home: 0, End: plates.length - 1 }[e.key];
      if (e.key === "Enter" || e.key === " ") {
        e.preventDefault();
        toLine(plate);
      } else if (plates[to]) {
        e.preventDefault();
        plate.setAttribute("tabindex", "-1");
        plates[to].setAttribute("tabindex", "0");
        plates[to].focus();
      }
    });
  });
}

function toLine(plate) {
  const line = [...document.querySelectorAll("#tables tbody th")].find((cell) => cell.textContent === plate.dataset.station);
  line?.scrollIntoView({ block: "center" });
  line?.parentElement.querySelector(".opener").focus();
}

function buttons() {
  edit.buttons();
  byId("text").disabled = !state.text;
  byId("slides").disabled = !state.shown;
}

async function save(as, version) {
  calm();
  try {
    const saved = await post("/api/save", question({ as, version }));
    const before = state.shown;
    const back = wayBack(state.changes, before?.inputs);
    state.note = "Saved as " + saved.file + ". ";
    const balanced = take(saved.file, saved.text, saved.version);
    Object.assign(state, { shown: before, past: back });
    await files(saved.file);
    edit.address();
    await balanced;
  } catch (error) {
    notSaved(error, as, { save, open: edit.theirs, place: (name) => place("", name) });
  }
}

function saveAs() {
  const as = place("", byId("as").value.trim());
  save(as, as === state.file ? state.version : "");
}

async function slides() {
  say("Drawing the figures …");
  try {
    keep(await file("/api/figures", question()), fileName() + "-figures.zip");
    say("The figures are downloaded: each wide and square, light and dark, as SVG and PNG.");
  } catch (error) {
    complain(error);
  }
}

async function text() {
  try {
    keep(new Blob([(await post("/api/text", question())).text], { type: "text/plain" }), fileName() + ".toml");
  } catch (error) {
    complain(error);
  }
}

async function files(current) {
  const all = await get("/api/files");
  choose(byId("file"), all.concepts);
  if (current) {
    byId("file").value = current;
  }
  return all.concepts;
}

byId("file").addEventListener("change", (e) => { state.step = true; open(e.target.value); });
byId("upload").addEventListener("change", (e) => e.target.files.length && upload(e.target.files[0]));
byId("save").addEventListener("click", () => save(state.file, state.version));
byId("saveas").addEventListener("click", saveAs);
byId("report").addEventListener("click", () => report("/api/report", question(), fileName()));
byId("text").addEventListener("click", text);
whenUnits(() => { state.before = null; state.text && balance(); });
byId("slides").addEventListener("click", slides);
addEventListener("keydown", (e) => {
  if ((e.ctrlKey || e.metaKey) && e.key === "s") {
    e.preventDefault();
    document.activeElement?.blur();
    if (!byId("save").disabled) {
      save(state.file, state.version);
    }
  }
});

figuresFirst();
try {
  const names = await files();
  if (names.length) {
    await open(byId("file").value, addressed());
  } else {
    say("The workspace holds no concept yet; take one from this computer.");
  }
} catch (error) {
  complain(error);
}
