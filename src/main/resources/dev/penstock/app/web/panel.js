// What the pages of an engine and of a vehicle share: inputs to change, figures with what they were before, warnings.
import { address, addressed, byId, complain, download, make, plainName, post, say, words } from "./common.js";

/**
 * Inputs by table, each with its unit; what is changed is marked and can be taken back.
 *
 * @param form form element
 * @param changed told of a key, its new text, the file's own, and whether it is still moving; the text is empty or the file's own where a
 *     change is taken back
 * @param first keys of the inputs that matter most: they come first, with sliders, and all others are found by a search
 */
export function inputPanel(form, changed, first = []) {
  const bar = make("div", { class: "finder" });
  let main = [];
  let rows = new Map();
  if (first.length) {
    const find = make("input", { id: "find", type: "search", placeholder: "Search all inputs", "aria-label": "Search all inputs", spellcheck: "false", autocomplete: "off" });
    find.addEventListener("input", () => search(find.value.trim().toLowerCase()));
    bar.append(find);
  }

  /** Shows what a search finds in every table; without a search the tables are folded as they were. */
  function search(words) {
    for (const table of form.querySelectorAll("details")) {
      let found = 0;
      for (const row of table.querySelectorAll(".field")) {
        const hit = (row.dataset.key.replaceAll("_", " ") + " " + row.dataset.key).includes(words);
        row.hidden = !hit;
        found += hit;
      }
      table.hidden = Boolean(words) && !found;
      table.dataset.before ??= table.open;
      table.open = words ? true : table.dataset.before === "true";
      if (!words) {
        delete table.dataset.before;
      }
    }
  }

  function field(input) {
    const id = "in-" + input.key.replaceAll(".", "-");
    const common = { id, class: "entry", "aria-describedby": id + "-note " + id + "-why" };
    const box = input.choices?.length
      ? make("select", common, ...input.choices.map((word) => make("option", { value: word }, word)))
      : make("input", { ...common, type: "text", spellcheck: "false" });
    const back = make("button", { type: "button", class: "back", hidden: true, "aria-label": "Take back the change of " + input.key }, "back");
    box.addEventListener("change", () => changed(input.key, box.value, back.dataset.file));
    back.addEventListener("click", () => { changed(input.key, back.dataset.file, back.dataset.file); box.focus(); });
    return make("div", { class: "field", "data-key": input.key },
      make("label", { for: id }, main.includes(input.key) ? ownName(input.key) : plainName(input.key)), box, ...(main.includes(input.key) ? slider(input, back) : []), make("small", { id: id + "-note" }),
      make("p", { id: id + "-why", class: "why", role: "alert" }), back);
  }

  /** From half to one and a half of the file's value; the engine is balanced while it moves. */
  function slider(input, back) {
    const own = make("input", { type: "range", class: "slider", "aria-label": ownName(input.key) + ", slider" });
    if (!span(own, input.file)) {
      return [];
    }
    own.addEventListener("input", () => changed(input.key, Number(Number(own.value).toPrecision(4)) + (own.dataset.unit ? " " + own.dataset.unit : ""), back.dataset.file, true));
    return [own];
  }

  /** Lays a slider about a written value, in the unit of that; whether there is a value to lay it about. */
  function span(own, written) {
    const [, number, unit = ""] = parts(written) || [];
    if (!number || Number(number) === 0) {
      return false;
    }
    const [low, high] = [0.5 * number, 1.5 * number].sort((a, b) => a - b);
    Object.assign(own, { min: low, max: high, step: (high - low) / 200 });
    own.dataset.unit = unit;
    return true;
  }

  /** What a row shows already is left alone: most edits move one of a hundred. */
  function refresh(row, input, isChanged) {
    const box = row.box;
    const shown = [input.written, input.read, input.file, input.source, isChanged].join("\n");
    if (row.shown === shown && box.value === input.written && !row.classList.contains("wrong")) {
      return;
    }
    row.shown = shown;
    if (box.tagName === "SELECT" && ![...box.options].some((o) => o.value === input.written)) {
      box.prepend(make("option", { value: input.written }, input.written));
    }
    if (document.activeElement !== box || box.value.trim() === "" || box.tagName === "SELECT") {
      box.value = input.written;
    }
    const moved = row.querySelector(".slider");
    if (moved && document.activeElement !== moved) {
      const [, number, unit = ""] = parts(input.written) || [];
      const beyond = Number(number) < Number(moved.min) || Number(number) > Number(moved.max);
      // A value in another unit, or far away, has a slider of its own; the file's value has its own again.
      if (number && (unit !== moved.dataset.unit || beyond)) {
        span(moved, parts(input.file)?.[2] === unit && !beyond ? input.file : input.written);
      }
      moved.value = number ?? moved.value;
    }
    const back = row.querySelector(".back");
    row.classList.remove("wrong");
    box.removeAttribute("aria-invalid");
    row.classList.toggle("changed", isChanged);
    back.hidden = !isChanged;
    back.dataset.file = input.file;
    const unit = (text) => parts(text)?.[2];
    const same = unit(input.read) === unit(input.written) || Math.abs(parts(input.read)?.[1]) < LEAST_READ;
    const read = same ? "" : input.read;
    const note = isChanged ? (input.file ? "changed, file: " + input.file : "added") : input.source;
    row.querySelector("small").textContent = [read, note].filter(Boolean).join("; ");
    row.querySelector(".why").textContent = "";
  }

  return {
    show(inputs, changes) {
      const keys = inputs.map((i) => i.key).join(" ");
      if (form.dataset.keys !== keys || !form.children.length) {
        const folded = new Map([...form.querySelectorAll("details")].map((d) => [d.dataset.table, d.open]));
        const groups = new Map();
        main = first.filter((key) => inputs.some((i) => i.key === key && parts(i.written))).slice(0, MOST_SHOWN);
        for (const input of [...main.map((key) => inputs.find((i) => i.key === key)), ...inputs.filter((i) => !main.includes(i.key))]) {
          const table = input.key.includes(".") ? input.key.slice(0, input.key.lastIndexOf(".")) : "";
          const name = main.includes(input.key) ? MAIN : table;
          groups.set(name, [...(groups.get(name) || []), input]);
        }
        form.replaceChildren(...(first.length ? [bar] : []), ...[...groups].map(([name, list]) =>
          make("details", { "data-table": name, open: folded.get(name) ?? (first.length ? name === MAIN || name === "" : list.some((i) => i.given)) },
            make("summary", {}, title(name)), ...list.map(field))));
        form.dataset.keys = keys;
        rows = new Map([...form.querySelectorAll(".field")].map((row) => [row.dataset.key, Object.assign(row, { box: row.querySelector(".entry") })]));
      }
      for (const input of inputs) {
        refresh(rows.get(input.key), input, input.key in changes);
      }
    },
    /** Marks what was refused and says why beside it; the field that is being written in stays in view and in use. */
    mark(keys, sentences = []) {
      for (const row of form.querySelectorAll(".field")) {
        const at = keys.indexOf(row.dataset.key);
        row.classList.toggle("wrong", at >= 0);
        row.querySelector(".entry").setAttribute("aria-invalid", at >= 0);
        row.querySelector(".why").textContent = at >= 0 ? sentences[at] || "" : "";
      }
      const wrong = form.querySelector(".field.wrong");
      if (wrong) {
        wrong.closest("details").open = true;
        wrong.scrollIntoView({ block: "nearest" });
      }
    },
  };
}

/** The group of the inputs that matter most. */
const MAIN = "what matters most";
const MOST_SHOWN = 8;
/** A value in the reader's unit that is smaller says nothing beside the one in the box. */
const LEAST_READ = 0.01;

/** Among inputs of other tables an input is told by its own: "gas generator temperature"; those of the whole engine are not. */
const ownName = (key) => key.replace(/^(engine|propellants)\./, "").replaceAll(".", " ").replaceAll("_", " ");

/** Number and unit of a written quantity. */
const parts = (written) => written.match(/^\s*([-+]?[\d.]+(?:[eE][-+]?\d+)?)\s*([^\d\s].*?)?\s*$/);

/** stage[0].dry_mass is the dry mass of the first stage, to people. */
function title(table) {
  return words((table || "general").replace(/\[(\d+)\]/g, (all, n) => " " + (Number(n) + 1)));
}

const signed = (value) => (value > 0 ? "+" : "−") + Math.abs(value).toFixed(2);

/**
 * What takes a save back: the values that the file had, as changes of the file as it is now; none if a whole table went or came.
 *
 * @param changes what was saved
 * @param inputs inputs as they were shown before, with the file's own values
 */
export function wayBack(changes, inputs = []) {
  const had = new Map(inputs.map((input) => [input.key, input.file]));
  const keys = Object.keys(changes);
  return keys.length && keys.every((key) => had.has(key)) ? [Object.fromEntries(keys.map((key) => [key, had.get(key)]))] : [];
}

/** On a narrow screen figures stand right below the title, to the keyboard too; on a wide one beside the inputs. */
export function figuresFirst() {
  const narrow = matchMedia("(max-width:980px)");
  const put = () => (narrow.matches ? byId("kind") : byId("inputs").closest(".split > *")).after(byId("summary"));
  narrow.addEventListener("change", put);
  put();
}

/** Headline figures; where one has moved, what it was and by how much. */
export function figures(list, measures, earlier, traced) {
  const before = new Map(earlier.map((m) => [m.key, m]));
  list.replaceChildren(...measures.map((m) => {
    const old = before.get(m.key);
    const was = make("span", { class: "was" });
    if (old && old.text !== m.text) {
      const share = m.key === "tightest_margin" || old.value === 0 ? "" : signed(100 * (m.value / old.value - 1)) + " %";
      const gain = Math.sign(m.value - old.value) * m.better;
      was.classList.toggle("good", gain > 0);
      was.classList.toggle("bad", gain < 0);
      was.append("was " + old.text + (share ? ", " : ""), make("b", {}, share));
    }
    return make("div", { "data-measure": m.key }, make("dt", {}, m.name), make("dd", {}, traced(m.text, m.path), was));
  }));
}

export function warnings(list) {
  return list.length
    ? [make("div", { class: "note", role: "region", "aria-label": "Warnings" }, make("h2", {}, "Warnings"),
        make("ul", {}, ...list.map((w) => make("li", {}, w.message + " ", make("small", {}, w.source)))))]
    : [];
}

/**
 * Changes of a file and the steps back from them, also by the browser's own way back; whoever leaves with changes that no link carries
 * is asked.
 *
 * @param state holds the file's text and version, its changes, the past ones, and what is shown
 * @param again works the changed file out anew
 * @param open opens a file with changes
 */
export function editing(state, again, open) {
  let moving = "";

  /** A slider that moves is one step, however often it tells where it is. */
  function change(key, value, file, moves = false) {
    const next = changed(state.changes, key, value, file);
    if (JSON.stringify(next) !== JSON.stringify(state.changes)) {
      const goesOn = moves && moving === key;
      moving = moves ? key : "";
      take(next, !goesOn);
    }
  }

  /** Goes on to other changes, as a step or as more of the last one. */
  function take(next, asStep = true) {
    if (asStep) {
      state.past.push(state.changes);
      state.step = true;
    }
    state.future = [];
    state.changes = next;
    again();
  }

  /** What is under change, as requests carry it. */
  const question = (more = {}) => ({ file: state.file, text: state.text, changes: state.changes, ...more });

  /** Many changes as one step; an empty text takes a value or a table out of the file. What is set last counts last. */
  function set(values) {
    const next = { ...state.changes };
    for (const [key, value] of Object.entries(values)) {
      for (const old of Object.keys(next)) {
        if (old === key || (value === "" && old.startsWith(key + "."))) {
          delete next[old];
        }
      }
      next[key] = value;
    }
    moving = "";
    take(next);
  }

  /** Takes all changes back, as one step. */
  function reset() {
    moving = "";
    take({});
  }

  /** One step from one pile of states to the other. */
  function step(from, to, button) {
    moving = "";
    if (from.length) {
      to.push(state.changes);
      state.changes = from.pop();
      state.step = true;
      again();
      buttons();
      (button.disabled ? byId("inputs").querySelector(".entry, input") : button)?.focus({ preventScroll: true });
    }
  }

  const undo = () => step(state.past, state.future ??= [], byId("undo"));
  const redo = () => step(state.future ??= [], state.past, byId("redo"));

  function buttons() {
    byId("undo").disabled = !state.past.length;
    byId("redo").disabled = !(state.future || []).length;
    if (document.getElementById("reset")) {
      byId("reset").disabled = !Object.keys(state.changes).length;
    }
    byId("save").disabled = !state.version || !Object.keys(state.changes).length;
    byId("saveas").disabled = !state.text;
    byId("report").disabled = !state.shown;
  }

  document.getElementById("reset")?.addEventListener("click", reset);
  byId("undo").addEventListener("click", undo);
  byId("redo").addEventListener("click", redo);
  addEventListener("keydown", (e) => {
    const typing = e.target instanceof HTMLInputElement && e.target.value !== e.target.defaultValue;
    if ((e.ctrlKey || e.metaKey) && e.key.toLowerCase() === "z" && !typing) {
      e.preventDefault();
      (e.shiftKey ? redo : undo)();
    }
  });
  /** The browser went back or forward: to changes that were made here, or to another file. */
  addEventListener("popstate", () => {
    const [file, changes] = [new URLSearchParams(location.search).get("file"), addressed()];
    const at = (pile) => JSON.stringify(pile?.at(-1)) === JSON.stringify(changes);
    if (file && file !== state.file) {
      byId("file").value = file;
      open(file, changes);
    } else if (JSON.stringify(changes) !== JSON.stringify(state.changes)) {
      const [from, to] = at(state.future) ? [state.future, state.past] : at(state.past) ? [state.past, state.future ??= []] : [[], state.past];
      from.pop();
      to.push(state.changes);
      moving = "";
      state.changes = changes;
      again();
      buttons();
    }
  });
  byId("inputs").addEventListener("submit", (e) => e.preventDefault());
  let carried = false;
  document.querySelector("header.bar nav").addEventListener("click", () => { carried = true; });
  addEventListener("beforeunload", (e) => {
    if (Object.keys(state.changes).length && !carried) {
      e.preventDefault();
    }
  });
  /** Goes on from what somebody else wrote; one step back are the values of this page. */
  async function theirs(name) {
    const mine = state.changes;
    await open(name);
    state.past = [mine];
    buttons();
  }

  /** The address holds what is under change; each step is one of the browser's way back. */
  function addressNow() {
    address(state.file, state.changes, state.step);
    state.step = false;
  }

  return { change, set, theirs, buttons, question, address: addressNow, moves: () => moving !== "" };
}

/** Has a report made, in the form that is chosen, and downloads it. */
export async function report(path, question, name) {
  say("Making the report …");
  try {
    const form = byId("form").value;
    const made = await post(path, { ...question, form });
    download("/shown/" + made.id + "?download=1", name + (form === "html" ? ".html" : ".pdf"));
    say("The report is downloaded: one file that needs nothing else.");
  } catch (error) {
    complain(error);
  }
}

/** Changes with one text taken in: an empty one, or the file's own, takes the change back. */
function changed(changes, key, value, file) {
  const text = value.trim();
  const next = { ...changes };
  if (text === "" || text === file) {
    delete next[key];
  } else {
    next[key] = text;
  }
  return next;
}
