// Charts that answer: a pointer, a finger or the arrow keys read every curve off at one place. The numbers are in the drawing.
import { make } from "./common.js";

const NS = "http://www.w3.org/2000/svg";
const STEPS = 100;

/** Lets a drawing of curves answer; a drawing without numbers stays as it is. */
export function answering(svg) {
  if (!svg.dataset.read) {
    return [];
  }
  const data = JSON.parse(svg.dataset.read);
  const hair = document.createElementNS(NS, "line");
  hair.setAttribute("style", "stroke:var(--ink-text);stroke-width:1;stroke-dasharray:3 3;visibility:hidden");
  hair.setAttribute("y1", Math.min(...data.panels.map((p) => p.to)));
  hair.setAttribute("y2", Math.max(...data.panels.map((p) => p.from)));
  svg.append(hair);
  const out = make("output", { class: "reading" }, "Point at a curve, or press the arrow keys, to read values.");
  let place = 0.5;

  function show(share) {
    place = Math.max(0, Math.min(1, share));
    const x = data.x.low + place * (data.x.high - data.x.low);
    const at = data.x.from + place * (data.x.to - data.x.from);
    hair.setAttribute("x1", at);
    hair.setAttribute("x2", at);
    hair.style.visibility = "visible";
    const values = data.panels.flatMap((panel) => panel.curves.map((curve) => [panel, curve, valueAt(curve.points, x)]))
      .filter(([, , y]) => y !== null)
      .map(([panel, curve, y]) => make("span", {}, (curve.name || panel.label) + " ", make("b", {}, figure(y, panel)), unit(panel.label)));
    out.replaceChildren(make("span", {}, data.x.label.split(/[,(]/)[0].trim() + " ", make("b", {}, figure(x, data.x)), unit(data.x.label)), ...values);
  }

  const pointed = (e) => {
    const p = new DOMPoint(e.clientX, e.clientY).matrixTransform(svg.getScreenCTM().inverse());
    show((p.x - data.x.from) / (data.x.to - data.x.from));
  };
  svg.addEventListener("pointermove", pointed);
  svg.addEventListener("pointerdown", pointed);
  svg.setAttribute("tabindex", "0");
  svg.addEventListener("keydown", (e) => {
    const to = { ArrowLeft: place - 1 / STEPS, ArrowRight: place + 1 / STEPS, PageDown: place - 0.1, PageUp: place + 0.1, Home: 0, End: 1 }[e.key];
    if (to !== undefined) {
      e.preventDefault();
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
  const found = label.match(/\(([^)]*)\)/);
  return found ? " " + found[1] : "";
}
