// Studies: what a page has been set to, kept as a file that the command line does again; and steps back.
import { byId, calm, complain, get, listed, make, place as placeIn, post, Refused, say } from "./common.js";
import { calmConflict, notSaved } from "./conflict.js";

/** The study that the address asks for, read before the page writes its own case there; null if it asks for none. */
export const asked = new URLSearchParams(location.search).get("study");

/**
 * @param study kind of study on this page, or the kinds where there are several and the page's own state says which
 * @param form element whose changes can be taken back
 * @param capture gives what the page is set to
 * @param restore sets the page, without running anything
 * @param run does the study
 * @param steps whether steps back are taken here; a page may have its own
 */
export function studies(study, form, capture, restore, run, steps = true) {
  const kinds = [study].flat();
  const state = { file: "", version: "", past: [], last: capture() };
  const choice = make("select", { id: "study-file" });
  const undo = make("button", { id: "undo", type: "button", disabled: true }, "Undo");
  const name = make("input", { id: "study-name", type: "text", size: "18", placeholder: "name", spellcheck: "false", autocomplete: "off" });
  const saver = make("button", { id: "study-save", type: "button" }, "Save study");
  byId("study").replaceChildren(make("label", {}, "Study ", choice), ...(steps ? [undo] : []), make("label", {}, "Save study as ", name), saver);

  async function list(current) {
    const all = (await get("/api/studies")).studies.filter((s) => kinds.includes(s.study) || !s.study);
    choice.replaceChildren(make("option", { value: "" }, "none"), ...all.map((s) => make("option", { value: s.file }, s.name)));
    choice.value = current;
  }

  function remember() {
    state.past.push(state.last);
    state.last = capture();
    undo.disabled = false;
  }

  async function open(file) {
    calm();
    calmConflict();
    try {
      const opened = await get("/api/study?name=" + encodeURIComponent(file));
      if (!kinds.includes(opened.study)) {
        throw new Refused(422, { problems: [opened.name + " is a study of another page: " + opened.study] });
      }
      await restore(opened);
      Object.assign(state, { file, version: opened.version });
      name.value = file.replace(/^studies\/|\.toml$/g, "");
      remember();
      await run();
    } catch (error) {
      complain(error);
    }
  }

  async function save(as, version) {
    calm();
    try {
      const saved = await post("/api/study", { study: kinds[0], ...capture(), name: as.replace(/^studies\/|\.toml$/g, "").replaceAll("-", " "), as, version });
      calmConflict();
      Object.assign(state, { file: saved.file, version: saved.version });
      await list(saved.file);
      say("Saved as " + saved.file + "; penstock study " + saved.file.replace(/^studies\/|\.toml$/g, "") + " does it again.");
    } catch (error) {
      notSaved(error, as, { save, open, place });
    }
  }

  const place = (text) => placeIn("studies/", text);

  form.addEventListener("change", remember);
  choice.addEventListener("change", () => choice.value && open(choice.value));
  undo.addEventListener("click", async () => {
    state.last = state.past.pop();
    await restore(state.last);
    undo.disabled = !state.past.length;
  });
  saver.addEventListener("click", () => {
    const as = place(name.value.trim());
    save(as, as === state.file ? state.version : "");
  });
  list("").then(() => asked && (choice.value = asked, open(asked))).catch(complain);
}

/**
 * What is set in place of the values of the cases.
 *
 * @param whose name of the one case that it belongs to; empty for all
 */
export function settings(changes, whose = "") {
  const head = whose ? whose + " with " : "With ";
  byId("set").replaceChildren(...(Object.keys(changes).length ? [head + listed(changes) + "."] : []));
}
