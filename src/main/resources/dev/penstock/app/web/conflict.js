// Somebody else has written the file: both texts are shown, and nothing is lost whatever is chosen.
import { byId, complain, keep, make, Refused } from "./common.js";

/**
 * Says why a file was not saved, and shows both texts where somebody else has written it.
 *
 * @param error why it was not saved
 * @param as name of the file
 * @param choices save(as, version) writes mine, open(as) goes on from theirs, place(name) is the file that a name means
 */
export function notSaved(error, as, choices) {
  if (error instanceof Refused && error.status === 409 && "theirs" in error.answer) {
    conflict(as, error.answer, choices);
  }
  complain(error);
}

function conflict(as, answer, choices) {
  const button = (text, action) => {
    const b = make("button", { type: "button" }, text);
    b.addEventListener("click", action);
    return b;
  };
  const name = make("input", { id: "conflict-name", type: "text", size: "18", value: as.replace(/\.toml$/, "-mine.toml"), spellcheck: "false", autocomplete: "off" });
  const theirs = button("Go on from theirs", () => { calmConflict(); choices.open(as); });
  const box = byId("conflict");
  box.hidden = false;
  box.replaceChildren(make("h2", {}, answer.theirs ? "Two versions of " + as : as + " is gone"),
    make("p", {}, "Lines that only one of them has are marked. Nothing is lost whatever you choose."),
    make("div", { class: "texts" },
      text("In the workspace", answer.theirs, answer.yours), text("Yours", answer.yours, answer.theirs)),
    make("div", { class: "controls" }, ...(answer.theirs ? [theirs] : []),
      button("Write mine over it", () => choices.save(as, answer.version)),
      make("label", {}, "Save mine as ", name), button("Save under that name", () => choices.save(choices.place(name.value.trim()), "")),
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
