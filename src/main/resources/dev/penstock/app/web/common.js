// What all pages share: requests, tables, drawings, messages. Text only ever enters the page as text.
import { answering } from "./read.js";

/** A refused request: its sentences, and the whole answer. */
export class Refused extends Error {
  constructor(status, answer) {
    super((answer.problems || ["no answer"]).join("\n"));
    this.status = status;
    this.answer = answer;
  }
}

async function read(response) {
  const answer = await response.json().catch(() => ({ problems: ["Penstock gave no answer (" + response.status + ")"] }));
  if (!response.ok) {
    throw new Refused(response.status, answer);
  }
  return answer;
}

async function asked(path, options) {
  try {
    return await fetch(path, options);
  } catch (broken) {
    throw new Refused(0, { problems: ["Penstock does not answer; is penstock serve still running?"] });
  }
}

const posted = (path, body, further = {}) =>
  asked(path, { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body), ...further });

export const get = async (path) => read(await asked(path, {}));

export const post = async (path, body) => read(await posted(path, body));

/** Asks for a file rather than for an answer. */
export async function file(path, body) {
  const response = await posted(path, body);
  if (!response.ok) {
    await read(response);
  }
  return response.blob();
}

export const byId = (id) => document.getElementById(id);

/** An element with attributes and children; children that are texts become text. */
export function make(tag, attributes = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value === true) {
      element.setAttribute(name, "");
    } else if (value !== false && value !== undefined) {
      element.setAttribute(name, value);
    }
  }
  element.append(...children);
  return element;
}

export function say(text) {
  byId("status").textContent = text;
}

/** Shows why something was refused; an answer that was replaced by a newer question says nothing. */
export function complain(error) {
  if (error instanceof Refused) {
    if (!error.answer.superseded) {
      byId("problems").replaceChildren(...error.answer.problems.map((p) => make("p", {}, p)));
      say("Not done: " + error.answer.problems[0]);
    }
    return;
  }
  throw error;
}

export function calm() {
  byId("problems").replaceChildren();
}

/** Said once below a table, with a star in its cells. */
const UNSOURCED = "common practice, no source";

/** A table of the server's; a number with a trail is drawn by {@code number}. */
export function table(grid, number = (text) => text) {
  const side = (i) => (grid.columns[i].text ? {} : { class: "n" });
  const often = grid.rows.flatMap((row) => row.cells).filter((cell) => typeof cell === "string" && cell.includes(UNSOURCED)).length > 2;
  const content = (cell) => (typeof cell === "object" ? number(cell.text, cell.path) : often ? cell.replace(UNSOURCED, "*") : cell);
  const head = grid.columns.map((c, i) => make("th", { scope: "col", ...side(i) }, c.title));
  const rows = grid.rows.map((row) =>
    make("tr", { class: row.mark || undefined },
      ...row.cells.map((cell, i) => make(i === 0 ? "th" : "td", { scope: i === 0 ? "row" : undefined, ...side(i) }, content(cell)))));
  const own = make("table", {}, make("caption", {}, grid.caption), make("thead", {}, make("tr", {}, ...head)), make("tbody", {}, ...rows));
  return make("div", { class: "grid" },
    make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": grid.caption }, own),
    ...(often ? [make("p", { class: "star" }, "* " + UNSOURCED)] : []), takeAway(own, grid.caption));
}

/** Sections of a report that the server has made: what is asked, said, drawn and listed. */
export function sections(list, name) {
  return list.flatMap((s) => [
    make("h2", { id: "s-" + s.id }, s.title), make("p", { class: "kind" }, s.question),
    ...s.text.map((t) => make("p", {}, t)),
    ...(s.figures.length ? [make("div", { class: "figures" }, ...s.figures.map((f, i) => drawing(f, name + "-" + s.id + "-" + (i + 1))))] : []),
    ...s.tables.map((grid) => table(grid))]);
}

/** Buttons that copy a table, or keep it as a file of comma-separated values. */
export function takeAway(own, caption) {
  const name = asFileName(caption.split(/[,;:]/)[0].trim()).toLowerCase() || "table";
  const copy = make("button", { type: "button", "aria-label": "Copy the table: " + caption }, "Copy");
  const save = make("button", { type: "button", "aria-label": "Keep as CSV: " + caption }, "CSV");
  copy.addEventListener("click", async () => {
    try {
      await navigator.clipboard.writeText(lines(own, "\t"));
      say("The table is copied: paste it into a sheet.");
    } catch (refused) {
      say("The browser does not let a page copy; keep the table as CSV.");
    }
  });
  save.addEventListener("click", () => keep(new Blob([lines(own, ",")], { type: "text/csv" }), name + ".csv"));
  return make("div", { class: "save" }, copy, save);
}

/** A table as text, a line for each row; what holds the separator is quoted. */
export function lines(own, separator) {
  const cell = (c) => {
    const text = c.textContent.trim();
    return separator === "," && /[",\n]/.test(text) ? '"' + text.replaceAll('"', '""') + '"' : text;
  };
  return [...own.rows].map((row) => [...row.cells].map(cell).join(separator)).join("\n") + "\n";
}

/** A drawing that the server has made, with its caption and links to keep it. */
export function drawing(figure, name) {
  const parsed = make("template");
  parsed.innerHTML = figure.svg;
  const svg = parsed.content.firstElementChild;
  const asSvg = make("button", { type: "button" }, "SVG");
  const asPng = make("button", { type: "button" }, "PNG");
  asSvg.setAttribute("aria-label", "Keep as SVG: " + name);
  asPng.setAttribute("aria-label", "Keep as PNG: " + name);
  asSvg.addEventListener("click", () => keep(new Blob([plain(svg)], { type: "image/svg+xml" }), name + ".svg"));
  asPng.addEventListener("click", () => raster(svg, name));
  return make("figure", {},
    make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": figure.caption }, svg),
    ...answering(svg),
    make("figcaption", {}, figure.caption),
    make("div", { class: "save" }, asSvg, asPng));
}

/** The drawing with the colours of light paper in place of the page's variables, and with its font, so that it stands alone. */
function plain(svg) {
  const light = new Map();
  let fonts = "";
  for (const sheet of document.styleSheets) {
    const first = sheet.cssRules[0];
    for (const name of first.style) {
      light.set(name, first.style.getPropertyValue(name).trim());
    }
    fonts += [...sheet.cssRules].filter((rule) => rule instanceof CSSFontFaceRule).map((rule) => rule.cssText).join("");
  }
  return new XMLSerializer().serializeToString(svg)
    .replace(/var\((--[\w-]+)\)/g, (all, name) => light.get(name) || "#000")
    .replace(/>/, () => "><style>" + fonts + "</style>");
}

function raster(svg, name) {
  const box = svg.viewBox.baseVal;
  const width = box && box.width ? box.width : svg.clientWidth;
  const height = box && box.height ? box.height : svg.clientHeight;
  const image = new Image();
  image.addEventListener("load", () => {
    const canvas = make("canvas", { width: 2 * width, height: 2 * height });
    const pen = canvas.getContext("2d");
    pen.fillStyle = "#ffffff";
    pen.fillRect(0, 0, canvas.width, canvas.height);
    pen.drawImage(image, 0, 0, canvas.width, canvas.height);
    canvas.toBlob((blob) => keep(blob, name + ".png"));
    URL.revokeObjectURL(image.src);
  });
  image.src = URL.createObjectURL(new Blob([plain(svg)], { type: "image/svg+xml" }));
}

/** Has the browser keep as a file what lies at an address. */
export function download(href, name) {
  const link = make("a", { href, download: name });
  document.body.append(link);
  link.click();
  link.remove();
}

export function keep(blob, name) {
  const address = URL.createObjectURL(blob);
  download(address, name);
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}

/** What people call a thing, as the name of a file that the browser keeps. */
export const asFileName = (name) => name.replace(/[^A-Za-z0-9]+/g, "-");

/** The file that a name means, in a folder of the workspace that ends in a slash, or in the workspace itself. */
export function place(folder, name) {
  const bare = name.startsWith(folder) ? name.slice(folder.length) : name;
  return folder + bare.replace(/\.toml$/, "") + ".toml";
}

const wait = (ms) => new Promise((done) => setTimeout(done, ms));

/**
 * Follows long work to its end, with its progress on the page, and why it failed if it did. Whoever leaves the page stops it.
 *
 * @param count gives how far it is, as text
 * @param doing gives what is being done, as text
 */
export async function watch(path, count, doing) {
  const left = () => posted(path + "/stop", {}, { keepalive: true }).catch(() => {});
  addEventListener("pagehide", left);
  try {
    return await watched(path, count, doing);
  } finally {
    removeEventListener("pagehide", left);
  }
}

async function watched(path, count, doing) {
  for (;;) {
    const job = await get(path);
    byId("progress").max = job.of;
    byId("progress").value = job.done;
    byId("count").textContent = count(job);
    if (job.failure) {
      byId("problems").replaceChildren(make("p", {}, job.failure));
    }
    if (!job.running) {
      if (!job.failure && !job.cancelled) {
        byId("progress").value = job.of;
      }
      return job;
    }
    say(doing(job));
    await wait(250);
  }
}

/** Fills a choice of files and picks the one that the address names, or the first. */
export function choose(select, names, titles = {}) {
  const wanted = new URLSearchParams(location.search).get("file");
  select.replaceChildren(...names.map((name) => make("option", { value: name }, titles[name] || name.replace(/\.toml$/, ""))));
  if (wanted && !names.includes(wanted)) {
    select.prepend(make("option", { value: wanted }, wanted));
  }
  if (wanted) {
    select.value = wanted;
  }
}

/** The changes that the address holds, so that a link shows what its sender saw. */
export const addressed = () => headed("set.");

/** What the address holds under names with this head. */
function headed(head) {
  const values = {};
  for (const [key, value] of new URLSearchParams(location.search)) {
    if (key.startsWith(head)) {
      values[key.slice(head.length)] = value;
    }
  }
  return values;
}

const OPENED = ["engine", "vehicle", "claims"];
const kindOf = (file) => ({ vehicles: "vehicle", claims: "claims" }[file.split("/")[0]] || "engine");

/** What is open on other pages with its unsaved changes, by its kind: each page keeps the others' and hands them back. */
const elsewhere = Object.fromEntries(OPENED.map((kind) =>
  [kind, { file: new URLSearchParams(location.search).get(kind) || "", changes: headed(kind + ".set.") }]));
export const openEngine = elsewhere.engine;

/** Changes for people. */
export const listed = (changes) => Object.entries(changes).map(([key, value]) => key + " = " + (value || "left out")).join(", ");

/** A query that opens one kind of thing and carries the others. */
function carrying(kind, opened) {
  const query = new URLSearchParams();
  for (const one of [kind, ...OPENED.filter((other) => other !== kind)]) {
    const [name, head] = one === kind ? ["file", "set."] : [one, one + ".set."];
    if (opened[one].file) {
      query.set(name, opened[one].file);
    }
    for (const [key, value] of Object.entries(opened[one].changes)) {
      query.set(head + key, value);
    }
  }
  return String(query);
}

/**
 * Writes the open file and its unsaved changes into the address and into the links to the other pages, with what is open there.
 *
 * @param step whether the browser's way back leads to the address as it was
 */
export function address(file, changes, step = false) {
  const home = kindOf(file);
  const opened = { ...elsewhere, [home]: { file, changes } };
  const here = location.pathname + "?" + carrying(home, opened);
  if (here !== location.pathname + location.search) {
    history[step ? "pushState" : "replaceState"](null, "", here);
  }
  for (const link of document.querySelectorAll("header.bar nav a")) {
    const path = link.getAttribute("href").split("?")[0];
    const kind = { "/vehicle": "vehicle", "/claims": "claims", "/studies": home === "vehicle" ? home : "engine" }[path] || "engine";
    const handed = carrying(kind, opened);
    link.href = handed ? path + "?" + handed : path;
  }
}

/** A dotted path for people, as the axes of charts have it. */
export const words = (path) => path.replaceAll(".", ", ").replaceAll("_", " ");

export const plainName = (key) => key.slice(key.lastIndexOf(".") + 1).replaceAll("_", " ");
