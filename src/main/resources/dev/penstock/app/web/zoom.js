// A stretch of a chart of curves, drawn over the chart from the numbers that are in it: axes, curves and limits of their own.

const NS = "http://www.w3.org/2000/svg";
/** Gap between the axis and its figures, and size of these (px). */
const FIGURES = 11.5;
const DASHES = { dashed: "7 4", dotted: "1.6 3" };

/** An element of a drawing. */
export function draw(tag, attributes, text) {
  const element = document.createElementNS(NS, tag);
  for (const [name, value] of Object.entries(attributes)) {
    element.setAttribute(name, value);
  }
  if (text !== undefined) {
    element.textContent = text;
  }
  return element;
}

/** Round steps from one end to the other, few enough to be read. */
export function ticks(low, high, most) {
  const rough = (high - low) / most;
  const decade = 10 ** Math.floor(Math.log10(rough));
  const step = decade * [1, 2, 5, 10].find((s) => s * decade >= rough);
  const digits = Math.max(0, -Math.floor(Math.log10(step) + 1e-9));
  const list = [];
  for (let k = Math.ceil(low / step - 1e-9); k * step <= high + 1e-9 * step; k++) {
    list.push({ at: k * step, text: (k * step).toFixed(digits) });
  }
  return list;
}

/** The values of curves inside a stretch, its ends included; what lies beyond is cut off at the ends. */
function inside(points, low, high, valueAt) {
  const own = points.filter(([x]) => x > low && x < high);
  const end = (x) => (valueAt(points, x) === null ? [] : [[x, valueAt(points, x)]]);
  const rising = points.length < 2 || points[0][0] <= points[points.length - 1][0];
  return rising ? [...end(low), ...own, ...end(high)] : [...end(high), ...own, ...end(low)];
}

/** Lowest and highest value, with room; level values get room too. */
function span(values) {
  const low = Math.min(...values);
  const high = Math.max(...values);
  const room = Math.max(0.06 * (high - low), 5e-4 * Math.max(Math.abs(low), Math.abs(high)), 1e-9);
  return { low: low - room, high: high + room };
}

/** Which line is which, above its panel, as the whole chart has it. */
function keys(group, data, panel, style) {
  let x = data.x.from;
  for (const curve of panel.curves.filter((c) => c.keyed)) {
    const line = { x1: x, x2: x + 26, y1: panel.to - 14, y2: panel.to - 14 };
    group.append(draw("line", { ...line, style: "stroke:" + curve.ink + ";stroke-width:2.2;stroke-dasharray:" + (DASHES[curve.line] || "none") }));
    group.append(draw("text", { x: x + 32, y: panel.to - 10, style }, curve.name));
    x += 52 + 6.2 * curve.name.length;
  }
}

/**
 * @param svg drawing of the chart
 * @param data its numbers
 * @param low left end of the stretch
 * @param high right end
 * @param valueAt value of a curve at a place
 * @return the stretch as a group of the drawing
 */
export function stretch(svg, data, low, high, valueAt) {
  const box = svg.viewBox.baseVal;
  const group = draw("g", { class: "stretch" });
  const id = (svg.id || "chart") + "-stretch-" + Math.random().toString(36).slice(2, 8);
  group.append(draw("rect", { x: 0, y: data.top, width: box.width, height: data.bottom - data.top, style: "fill:var(--sheet);stroke:none" }));
  const across = (x) => data.x.from + (x - low) / (high - low) * (data.x.to - data.x.from);
  const figure = "font-size:" + FIGURES + "px;fill:var(--ink-muted);stroke:none";
  const name = "font-size:12px;fill:var(--ink-text);stroke:none";
  const rule = (x1, y1, x2, y2, ink = "--ink-rule") => draw("line", { x1, y1, x2, y2, style: "stroke:var(" + ink + ");stroke-width:1" });
  const upright = ticks(low, high, 8);
  data.panels.forEach((panel, i) => {
    const curves = panel.curves.map((curve) => ({ ...curve, points: inside(curve.points, low, high, valueAt) }));
    const values = curves.flatMap((c) => c.points.map(([, y]) => y)).filter((y) => y !== null);
    if (!values.length) {
      return;
    }
    const range = span(values);
    const up = (y) => panel.from + (y - range.low) / (range.high - range.low) * (panel.to - panel.from);
    const clip = draw("clipPath", { id: id + i });
    clip.append(draw("rect", { x: data.x.from, y: panel.to, width: data.x.to - data.x.from, height: panel.from - panel.to }));
    group.append(clip);
    for (const t of upright) {
      group.append(rule(across(t.at), panel.to, across(t.at), panel.from));
    }
    for (const t of ticks(range.low, range.high, Math.max(2, Math.round((panel.from - panel.to) / 36)))) {
      group.append(rule(data.x.from, up(t.at), data.x.to, up(t.at)));
      group.append(draw("text", { x: data.x.from - 7, y: up(t.at) + 4, "text-anchor": "end", style: figure }, t.text));
    }
    const middle = (panel.from + panel.to) / 2;
    group.append(draw("text", { x: 14, y: middle, "text-anchor": "middle", transform: "rotate(-90 14 " + middle + ")", style: name }, panel.label));
    group.append(rule(data.x.from, panel.to, data.x.from, panel.from, "--ink-muted"));
    keys(group, data, panel, name);
    const inner = draw("g", { "clip-path": "url(#" + id + i + ")" });
    for (const mark of data.marks.filter((m) => m.at > low && m.at < high)) {
      inner.append(draw("line", { x1: across(mark.at), x2: across(mark.at), y1: panel.to, y2: panel.from, style: "stroke:var(--ink-text);stroke-width:1.4;stroke-dasharray:3 3" }));
      if (i === 0) {
        inner.append(draw("text", { x: across(mark.at) + 4, y: panel.to + 13, style: name + ";font-weight:bold" }, mark.label));
      }
    }
    for (const level of panel.levels.filter((l) => l.at > range.low && l.at < range.high)) {
      inner.append(draw("line", { x1: data.x.from, x2: data.x.to, y1: up(level.at), y2: up(level.at), style: "stroke:" + level.ink + ";stroke-width:1.4;stroke-dasharray:3 3" }));
      inner.append(draw("text", { x: data.x.from + 6, y: up(level.at) - panel.to < 14 ? up(level.at) + 12 : up(level.at) - 4, style: "font-size:11px;stroke:none;fill:" + level.ink }, level.label));
    }
    for (const curve of curves) {
      let path = "";
      let pen = "M";
      for (const [x, y] of curve.points) {
        if (y === null) {
          pen = "M";
        } else {
          path += pen + across(x).toFixed(2) + " " + up(y).toFixed(2);
          pen = "L";
        }
      }
      inner.append(draw("path", { d: path, style: "fill:none;stroke:" + curve.ink + ";stroke-width:" + (curve.line === "dotted" ? 1.3 : 2.2) + ";stroke-dasharray:" + (DASHES[curve.line] || "none") }));
    }
    group.append(inner);
  });
  const last = data.panels[data.panels.length - 1];
  for (const t of upright) {
    group.append(draw("text", { x: across(t.at), y: last.from + 16, "text-anchor": "middle", style: figure }, t.text));
  }
  group.append(rule(data.x.from, last.from, data.x.to, last.from, "--ink-muted"));
  group.append(draw("text", { x: (data.x.from + data.x.to) / 2, y: Math.min(last.from + 34, data.bottom), "text-anchor": "middle", style: name }, data.x.label));
  return group;
}
