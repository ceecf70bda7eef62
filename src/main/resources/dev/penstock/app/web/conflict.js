// Somebody else has written the file: both texts are shown, and whichever is chosen, the other is kept beside the file.
import { byId, complain, keep, make, post, Refused, say } from "./common.js";

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
  const theirs = button("Go on from theirs", async () => {
    const kept = await beside(as, "mine", answer.yours);
    calmConflict();
    await choices.open(as);
    add("Yours is kept as " + kept + "; Undo takes up your values again.");
  });
  const over = button("Write mine over it", async () => {
    const kept = answer.theirs ? await beside(as, "theirs", answer.theirs) : "";
    await choices.save(as, answer.version);
    if (kept) {
      add("The other version is kept as " + kept + ".");
    }
  });
  const box = byId("conflict");
  box.hidden = false;
  box.replaceChildren(make("h2", {}, answer.theirs ? "Two versions of " + as : as + " is gone"),
    make("p", {}, "Lines that only one of them has are marked. Whichever you choose, the other one is kept in a file beside it."),
    make("div", { class: "texts" },
      text("In the workspace", answer.theirs, answer.yours), text("Yours", answer.yours, answer.theirs)),
    make("div", { class: "controls" }, ...(answer.theirs ? [theirs] : []),
      over,
      make("label", {}, "Save mine as ", name), button("Save under that name", () => choices.save(choices.place(name.value.trim()), "")),
      button("Keep mine as a download", () => keep(new Blob([answer.yours], { type: "text/plain" }), as.replace(/.*\//, "")))));
  box.querySelector("button").focus();
}

/** Says something more behind what is said already. */
const add = (text) => say(byId("status").textContent + " " + text);

/** Writes a version into a file of its own beside the one in question, under the first name that is free. */
async function beside(as, whose, text) {
  for (let n = 1; ; n++) {
    const name = as.replace(/\.toml$/, "-" + whose + (n > 1 ? "-" + n : "") + ".toml");
    try {
      await post("/api/save", { file: name, text, as: name, whole: true, changes: {}, version: "" });
      return name;
    } catch (error) {
      if (!(error instanceof Refused) || error.status !== 409) {
        complain(error);
        throw error;
      }
    }
  }
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
