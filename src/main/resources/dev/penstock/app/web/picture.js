// A picture to measure. It never leaves the browser: marks on it are sent as numbers of pixels, and come back as lengths with errors.
import { complain, make, post, say } from "./common.js";

const NS = "http://www.w3.org/2000/svg";
const TOOLS = [
  { id: "reference", name: "known length", marks: 2, colour: "var(--ink-fuel)", help: "both ends of something whose length you know" },
  { id: "exit", name: "exit", marks: 3, colour: "var(--ink-oxidizer)", help: "both ends of the ellipse's longest diameter, then its rim half-way between them" },
  { id: "throat", name: "throat", marks: 2, colour: "var(--ink-gain)", help: "both ends of the throat's diameter" },
  { id: "length", name: "length", marks: 2, colour: "var(--bad)", help: "centre of the throat, then centre of the exit" },
];

/**
 * @param place element that the tool is built in
 * @param take told of the values that become claims
 */
export function pictureTool(place, take) {
  const marks = Object.fromEntries(TOOLS.map((t) => [t.id, []]));
  let width = 0;
  let height = 0;
  let zoom = 1;
  let values = [];

  const file = make("input", { id: "picture-file", type: "file", accept: "image/*" });
  const svg = document.createElementNS(NS, "svg");
  svg.setAttribute("id", "picture-view");
  svg.setAttribute("tabindex", "0");
  svg.setAttribute("role", "application");
  svg.setAttribute("aria-label", "Picture: a click sets the next mark; arrow keys move the last one by a pixel, with Shift by ten; Enter sets one, Backspace takes the last one away");
  const view = make("div", { class: "canvas", hidden: true }, svg);
  const tools = make("fieldset", { class: "tools", hidden: true }, make("legend", {}, "Mark"),
    ...TOOLS.map((t, i) => make("label", { class: "check" }, make("input", { type: "radio", name: "tool", value: t.id, checked: i === 0 }), " " + t.name)));
  const help = make("p", { class: "kind" });
  const again = make("button", { type: "button", id: "picture-again" }, "Mark this anew");
  const nearer = make("select", { id: "picture-zoom" }, ...[1, 2, 4, 8].map((z) => make("option", { value: z }, z === 1 ? "whole picture" : z + " times")));
  const field = (id, label, value, note, more = {}) => {
    const box = make("input", { id: "picture-" + id, type: "text", size: "9", value, spellcheck: "false", autocomplete: "off", ...more });
    box.addEventListener("change", measure);
    return { box, row: make("label", {}, label, box, make("small", {}, note)) };
  };
  const known = field("known", "Known length", "", "such as 3.7 m or 12 ft");
  const error = field("error", "± (90 % interval)", "", "of the known length; empty: exact");
  const along = make("select", { id: "picture-along" }, make("option", { value: "" }, "across the line of sight"), make("option", { value: "1" }, "along the nozzle's axis"));
  const facing = make("select", { id: "picture-facing" }, make("option", { value: "" }, "I cannot tell"), make("option", { value: "towards" }, "toward the camera"), make("option", { value: "away" }, "away from the camera"));
  const depth = field("depth", "Known length may stand nearer or farther by", "", "than the exit; empty: one exit diameter");
  const angle = field("angle", "Angle of view across the picture", "50 deg", "of the camera; a guess for a usual lens, without a source");
  const mark = field("mark", "A mark is sure within (pixels)", "2", "half of the 90 % interval");
  const settings = make("div", { class: "controls", role: "group", "aria-label": "What is known of the picture", hidden: true },
    known.row, error.row, make("label", {}, "It runs", along), make("label", {}, "The exit faces", facing, make("small", {}, "toward: one sees into the nozzle")), depth.row, angle.row, mark.row);
  const out = make("div", { id: "picture-out" });
  const drop = make("label", { class: "drop" }, "Choose a picture, or drop one here ", file);
  const row = make("div", { class: "controls", role: "group", "aria-label": "View", hidden: true }, make("label", {}, "Show", nearer), again);
  place.append(drop, tools, help, row, view, settings, out);

  const tool = () => TOOLS.find((t) => t.id === tools.querySelector("input:checked").value);

  async function load(picture) {
    if (!picture || !picture.type.startsWith("image/")) {
      say("That is no picture.");
      return;
    }
    try {
      const url = await new Promise((done, failed) => {
        const reader = new FileReader();
        reader.addEventListener("load", () => done(reader.result));
        reader.addEventListener("error", () => failed(reader.error));
        reader.readAsDataURL(picture);
      });
      const image = new Image();
      image.src = url;
      await image.decode();
      width = image.naturalWidth;
      height = image.naturalHeight;
      TOOLS.forEach((t) => { marks[t.id] = []; });
      const shown = document.createElementNS(NS, "image");
      shown.setAttribute("href", url);
      shown.setAttribute("width", width);
      shown.setAttribute("height", height);
      svg.setAttribute("viewBox", "0 0 " + width + " " + height);
      svg.replaceChildren(shown, document.createElementNS(NS, "g"));
      for (const part of [view, tools, settings, row]) {
        part.hidden = false;
      }
      out.replaceChildren();
      values = [];
      draw();
      say("The picture is " + width + " by " + height + " pixels; it stays in this browser.");
    } catch (unreadable) {
      say("The browser cannot read that picture.");
    }
  }

  function line(x1, y1, x2, y2, colour) {
    const l = document.createElementNS(NS, "line");
    Object.entries({ x1, y1, x2, y2 }).forEach(([k, v]) => l.setAttribute(k, v));
    l.setAttribute("style", "stroke:" + colour);
    l.setAttribute("class", "stroke");
    return l;
  }

  /** The ellipse through three marks: ends of its longest diameter, and a point of its rim. */
  function ellipse([p, q, r], colour) {
    const a = Math.hypot(q[0] - p[0], q[1] - p[1]) / 2;
    const [cx, cy] = [(p[0] + q[0]) / 2, (p[1] + q[1]) / 2];
    const [ux, uy] = [(q[0] - p[0]) / (2 * a), (q[1] - p[1]) / (2 * a)];
    const u = (r[0] - cx) * ux + (r[1] - cy) * uy;
    const v = (r[1] - cy) * ux - (r[0] - cx) * uy;
    const b = Math.abs(u) < a ? Math.abs(v) / Math.sqrt(1 - (u / a) ** 2) : 0;
    const e = document.createElementNS(NS, "ellipse");
    Object.entries({ cx, cy, rx: a, ry: b }).forEach(([k, n]) => e.setAttribute(k, n));
    e.setAttribute("transform", "rotate(" + (Math.atan2(uy, ux) * 180 / Math.PI) + " " + cx + " " + cy + ")");
    e.setAttribute("style", "stroke:" + colour + ";fill:none");
    e.setAttribute("class", "stroke");
    return e;
  }

  function draw() {
    svg.setAttribute("width", zoom === 1 ? "100%" : zoom * 100 + "%");
    const layer = svg.querySelector("g");
    const parts = [];
    const size = width / (svg.clientWidth || width);
    for (const t of TOOLS) {
      const own = marks[t.id];
      if (own.length > 1) {
        parts.push(line(...own[0], ...own[1], t.colour));
      }
      if (own.length > 2) {
        parts.push(ellipse(own, t.colour));
      }
      for (const [x, y] of own) {
        const dot = document.createElementNS(NS, "circle");
        Object.entries({ cx: x, cy: y, r: 4.5 * size }).forEach(([k, v]) => dot.setAttribute(k, v));
        dot.setAttribute("style", "stroke:" + t.colour);
        dot.setAttribute("class", "dot");
        parts.push(dot);
      }
    }
    layer?.replaceChildren(...parts);
    const t = tool();
    help.textContent = "Mark the " + t.name + ": " + t.help + ". " + marks[t.id].length + " of " + t.marks + " marks set. Backspace takes the last one away.";
  }

  function set(x, y) {
    const t = tool();
    const own = marks[t.id].length >= t.marks ? [] : marks[t.id];
    marks[t.id] = [...own, [Math.max(0, Math.min(width, x)), Math.max(0, Math.min(height, y))]];
    draw();
    if (marks[t.id].length === t.marks) {
      const next = TOOLS.find((other) => marks[other.id].length === 0);
      if (next) {
        tools.querySelector('input[value="' + next.id + '"]').checked = true;
        draw();
      }
      measure();
    }
  }

  /** The tool in hand, or the last one that has marks if that has none. */
  function marked() {
    return marks[tool().id].length ? tool() : [...TOOLS].reverse().find((other) => marks[other.id].length) || tool();
  }

  function unmark() {
    const t = marked();
    marks[t.id] = marks[t.id].slice(0, -1);
    tools.querySelector('input[value="' + t.id + '"]').checked = true;
    draw();
    measure();
  }

  function nudge(dx, dy) {
    const own = marks[marked().id];
    if (own.length) {
      own[own.length - 1] = [own[own.length - 1][0] + dx, own[own.length - 1][1] + dy];
      draw();
      measure();
    }
  }

  async function measure() {
    const whole = (id) => (marks[id].length === TOOLS.find((t) => t.id === id).marks ? marks[id].flat() : []);
    if (!whole("reference").length || !(whole("exit").length || whole("throat").length)) {
      values = [];
      out.replaceChildren();
      return;
    }
    try {
      const answer = await post("/api/picture", {
        width, view: angle.box.value, mark: Number(mark.box.value), reference: whole("reference"), known: known.box.value, error: error.box.value,
        along: along.value === "1", facing: facing.value, depth: depth.box.value, throat: whole("throat"), exit: whole("exit"), length: whole("length"),
      });
      values = answer.values;
      show(answer);
    } catch (refused) {
      out.replaceChildren(make("p", { class: "verdict doubt" }, refused.answer?.problems?.[0] || refused.message));
    }
  }

  function show(answer) {
    const usual = values.some((v) => v.path === "nozzle.area_ratio") ? (v) => v.path !== "nozzle.throat_diameter" : () => true;
    const boxes = values.map((v) => make("input", { type: "checkbox", "aria-label": "Take as a claim: " + v.title, checked: usual(v) }));
    const heads = ["claim", "what", "value", "± (90 % interval)", "of it marks", "perspective", "known length"];
    const rows = values.map((v, i) => make("tr", { "data-measured": v.path },
      make("th", { scope: "row" }, make("label", {}, boxes[i], " " + v.path)), make("td", {}, v.title),
      ...[v.value, v.within, v.pixel, v.perspective, v.reference].map((text) => make("td", { class: "n" }, text))));
    const button = make("button", { type: "button", id: "picture-take" }, "Take as claims");
    button.addEventListener("click", () => {
      take(values.filter((v, i) => boxes[i].checked));
      say("Taken as claims; save them to keep them.");
    });
    out.replaceChildren(
      make("p", {}, "The nozzle is tilted by " + answer.tilt + " out of the picture; the camera stood about " + answer.distance + " away. " + answer.facing),
      make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": "Measured values" },
        make("table", {}, make("caption", {}, "Measured in the picture"),
          make("thead", {}, make("tr", {}, ...heads.map((h, i) => make("th", { scope: "col", class: i > 1 ? "n" : undefined }, h)))), make("tbody", {}, ...rows))),
      make("p", { class: "kind" }, "Two of exit diameter, throat diameter and area ratio say all; taking three counts the same marks twice."),
      button);
  }

  svg.addEventListener("click", (e) => {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
    set(p.x, p.y);
  });
  svg.addEventListener("keydown", (e) => {
    const step = e.shiftKey ? 10 : 1;
    const by = { ArrowLeft: [-step, 0], ArrowRight: [step, 0], ArrowUp: [0, -step], ArrowDown: [0, step] }[e.key];
    if (by) {
      e.preventDefault();
      nudge(...by);
    } else if (e.key === "Backspace" || e.key === "Delete") {
      e.preventDefault();
      unmark();
    } else if (e.key === "Enter") {
      const last = marks[tool().id].at(-1) || [width / 2, height / 2];
      set(last[0] + 20, last[1]);
    }
  });
  tools.addEventListener("change", draw);
  along.addEventListener("change", measure);
  facing.addEventListener("change", measure);
  nearer.addEventListener("change", () => { zoom = Number(nearer.value); draw(); });
  again.addEventListener("click", () => { marks[tool().id] = []; draw(); measure(); });
  file.addEventListener("change", () => load(file.files[0]));
  place.parentElement.addEventListener("dragover", (e) => e.preventDefault());
  place.parentElement.addEventListener("drop", (e) => { e.preventDefault(); load(e.dataTransfer.files[0]); });
}
