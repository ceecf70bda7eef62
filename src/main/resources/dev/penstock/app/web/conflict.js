// Somebody else has written the file: both texts are shown, and nothing is lost whatever is chosen.
import { byId, keep, make } from "./common.js";

/**
 * @param as name of the file
 * @param answer the server's refusal, with both texts
 * @param choices over() writes mine over theirs, theirs() goes on from theirs, other(name) writes mine elsewhere
 */
export function conflict(as, answer, choices) {
  const button = (text, action) => {
    const b = make("button", { type: "button" }, text);
    b.addEventListener("click", action);
    return b;
  };
  const name = make("input", { id: "conflict-name", type: "text", size: "18", value: as.replace(/\.toml$/, "-mine.toml"), spellcheck: "false", autocomplete: "off" });
  const theirs = button("Go on from theirs", () => { calmConflict(); choices.theirs(); });
  const box = byId("conflict");
  box.hidden = false;
  box.replaceChildren(make("h2", {}, answer.theirs ? "Two versions of " + as : as + " is gone"),
    make("p", {}, "Lines that only one of them has are marked. Nothing is lost whatever you choose."),
    make("div", { class: "texts" },
      text("In the workspace", answer.theirs, answer.yours), text("Yours", answer.yours, answer.theirs)),
    make("div", { class: "controls" }, ...(answer.theirs ? [theirs] : []),
      button("Write mine over it", () => choices.over(answer.version)),
      make("label", {}, "Save mine as ", name), button("Save under that name", () => choices.other(name.value.trim())),
      button("Keep mine as a download", () => keep(new Blob([answer.yours], { type: "text/plain" }), as.replace(/.*\//, "")))));
  box.querySelector("button").focus();
}

export function calmConflict() {
  byId("conflict").hidden = true;
  byId("conflict").replaceChildren();
}

function text(title, own, other) {
  const known = new Set(other.split("\n"));
  const lines = own.split("\n").flatMap((line) => [line.trim() && !known.has(line) ? make("mark", {}, line) : line, "\n"]);
  return make("div", {}, make("b", {}, title), make("pre", { tabindex: "0", role: "region", "aria-label": title }, ...lines));
}
