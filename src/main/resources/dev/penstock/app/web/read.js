// Charts that answer: a pointer, a finger or the arrow keys read every curve off at one place; a stretch can be looked at alone.
// The numbers are in the drawing.
import { make } from "./common.js";
import { draw, stretch } from "./zoom.js";

const STEPS = 100;
/** A shorter drag is a click (px of the drawing), and no stretch is shorter than this share of the whole axis. */
const LEAST_DRAG = 12;
const LEAST_SHARE = 1e-3;
const HINT = "Point at a curve, or press the arrow keys, to read values. Drag, or press + and −, to look at a stretch; 0 or a double click shows all.";

/** Lets a drawing of curves answer; a drawing without numbers stays as it is. */
export function answering(svg) {
  if (!svg.dataset.read) {
    return [];
  }
  const data = JSON.parse(svg.dataset.read);
  const whole = { low: data.x.low, high: data.x.high };
  const top = Math.min(...data.panels.map((p) => p.to));
  const bottom = Math.max(...data.panels.map((p) => p.from));
  const hair = draw("line", { y1: top, y2: bottom, style: "stroke:var(--ink-text);stroke-width:1;stroke-dasharray:3 3;visibility:hidden" });
  const chosen = draw("rect", { y: top, height: bottom - top, style: "fill:var(--ink-oxidizer);fill-opacity:.18;visibility:hidden" });
  svg.append(hair, chosen);
  const out = make("output", { class: "reading" }, HINT);
  let shown = whole;
  let group = null;
  let place = 0.5;
  let began = null;

  const valueOf = (share) => shown.low + share * (shown.high - shown.low);

  function show(share) {
    place = Math.max(0, Math.min(1, share));
    const x = valueOf(place);
    const at = data.x.from + place * (data.x.to - data.x.from);
    hair.setAttribute("x1", at);
    hair.setAttribute("x2", at);
    hair.style.visibility = "visible";
    const axis = { low: shown.low, high: shown.high };
    const values = data.panels.flatMap((panel) => panel.curves.map((curve) => [panel, curve, valueAt(curve.points, x)]))
      .filter(([, , y]) => y !== null)
      .map(([panel, curve, y]) => make("span", {}, (curve.name || panel.label) + " ", make("b", {}, figure(y, panel)), unit(panel.label)));
    out.replaceChildren(make("span", {}, data.x.label.split(/[,(]/)[0].trim() + " ", make("b", {}, figure(x, axis)), unit(data.x.label)), ...values);
  }

  /** Shows a stretch of the axis, or all of it again; the place that was read stays where it is. */
  function look(low, high) {
    const x = valueOf(place);
    const all = low <= whole.low && high >= whole.high;
    if (!all && high - low < LEAST_SHARE * (whole.high - whole.low)) {
      return;
    }
    shown = all ? whole : { low: Math.max(low, whole.low), high: Math.min(high, whole.high) };
    group?.remove();
    group = all ? null : stretch(svg, data, shown.low, shown.high, valueAt);
    if (group) {
      hair.before(group);
    }
    svg.dataset.stretch = all ? "" : shown.low + " " + shown.high;
    show((x - shown.low) / (shown.high - shown.low));
  }

  /** Shorter or longer about the place that is read. */
  function scale(factor) {
    const x = valueOf(place);
    const low = x - place * (shown.high - shown.low) * factor;
    const size = (shown.high - shown.low) * factor;
    const start = Math.max(whole.low, Math.min(low, whole.high - size));
    look(start, start + size);
  }

  const share = (e) => {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
    return Math.max(0, Math.min(1, (p.x - data.x.from) / (data.x.to - data.x.from)));
  };
  const across = (s) => data.x.from + s * (data.x.to - data.x.from);

  svg.addEventListener("pointermove", (e) => {
    show(share(e));
    if (began !== null) {
      const [a, b] = [began, place].sort((x, y) => x - y);
      chosen.setAttribute("x", across(a));
      chosen.setAttribute("width", across(b) - across(a));
      chosen.style.visibility = "visible";
    }
  });
  svg.addEventListener("pointerdown", (e) => {
    show(share(e));
    if (e.pointerType !== "touch" && e.button === 0) {
      e.preventDefault();
      svg.focus({ preventScroll: true });
      svg.setPointerCapture(e.pointerId);
      began = place;
    }
  });
  const ended = (e) => {
    if (began === null) {
      return;
    }
    const [a, b] = [began, share(e)].sort((x, y) => x - y);
    began = null;
    chosen.style.visibility = "hidden";
    if (e.type === "pointerup" && across(b) - across(a) > LEAST_DRAG) {
      look(valueOf(a), valueOf(b));
    }
  };
  svg.addEventListener("pointerup", ended);
  svg.addEventListener("pointercancel", ended);
  svg.addEventListener("dblclick", () => look(whole.low, whole.high));
  svg.setAttribute("tabindex", "0");
  svg.addEventListener("keydown", (e) => {
    const to = { ArrowLeft: place - 1 / STEPS, ArrowRight: place + 1 / STEPS, PageDown: place - 0.1, PageUp: place + 0.1, Home: 0, End: 1 }[e.key];
    const act = { "+": () => scale(0.5), "=": () => scale(0.5), "-": () => scale(2), "−": () => scale(2), "0": () => look(whole.low, whole.high) }[e.key];
    if (e.ctrlKey || e.metaKey || e.altKey || (to === undefined && !act)) {
      return;
    }
    e.preventDefault();
    if (act) {
      act();
    } else {
      show(to);
    }
  });
  return [out];
}

/** The value of a curve at a place, on a straight line between its points; null in a gap and beyond its ends. */
export function valueAt(points, x) {
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1], points[i]];
    if ((a[0] <= x && x <= b[0]) || (b[0] <= x && x <= a[0])) {
      if (a[1] === null || b[1] === null) {
        continue;
      }
      return a[0] === b[0] ? a[1] : a[1] + (b[1] - a[1]) * (x - a[0]) / (b[0] - a[0]);
    }
  }
  return null;
}

/** As many digits as the axis can tell apart. */
function figure(value, axis) {
  const digits = Math.max(0, 3 - Math.floor(Math.log10(Math.abs(axis.high - axis.low) || 1)));
  return Math.min(digits, 6) === 0 ? String(Math.round(value)) : value.toFixed(Math.min(digits, 6));
}

function unit(label) {
  const found = label.match(/\(((?:[^()]|\([^()]*\))*)\)/);
  return found ? " " + found[1] : "";
}
