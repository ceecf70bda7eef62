// Where a number comes from: one step of its trail at a time, in a dialog.
import { byId, complain, make, post } from "./common.js";

/** A number, or its name, that opens where the number comes from. The question is asked when it is opened. */
export function opener(text, path, question, address = "/api/why") {
  const button = make("button", { type: "button", class: "opener", title: "Where does this number come from?" }, text);
  button.addEventListener("click", () => why(path, question(), address, []));
  return button;
}

async function why(path, question, address, before) {
  try {
    const step = await post(address, { ...question, path });
    const go = (to) => {
      const button = make("button", { type: "button", class: "opener" }, to.path);
      button.addEventListener("click", () => why(to.path, question, address, [...before, path]));
      return make("li", {}, button, " = " + to.shown);
    };
    const back = make("button", { type: "button", disabled: !before.length }, "One step back");
    back.addEventListener("click", () => why(before[before.length - 1], question, address, before.slice(0, -1)));
    const close = make("button", { type: "button" }, "Close");
    close.addEventListener("click", () => byId("why").close());
    const fact = (name, text) => (text ? [make("dt", {}, name), make("dd", {}, text)] : []);
    byId("why").replaceChildren(
      make("h2", { id: "why-title" }, step.path + " = " + step.shown),
      make("dl", {}, ...fact("Model", step.model.title), ...fact("Equation", step.model.equation), ...fact("Holds", step.model.range),
        ...fact("Uncertainty", step.model.uncertainty), ...fact("Source", step.model.sources.join(", "))),
      ...step.warnings.map((w) => make("p", { class: "verdict bad" }, w)),
      ...(step.inputs.length ? [make("h3", {}, "What went in"), make("ul", {}, ...step.inputs.map(go))] : []),
      make("div", { class: "controls" }, back, close));
    if (!byId("why").open) {
      byId("why").showModal();
    }
    close.focus();
  } catch (error) {
    byId("why").close();
    complain(error);
  }
}
