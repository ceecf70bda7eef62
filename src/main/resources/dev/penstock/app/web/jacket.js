// The cooling jacket of one concept.
import { address, addressed, byId, calm, choose, complain, drawing, get, make, post, say, table } from "./common.js";
import { whenUnits } from "./units.js";
import { opener } from "./why.js";

const page = crypto.randomUUID();
let number = 0;
let changes = addressed();

async function show() {
  calm();
  say("Balancing …");
  const mine = ++number;
  try {
    const read = await get("/api/file?name=" + encodeURIComponent(byId("file").value));
    address(read.file, changes);
    const file = { file: read.file, text: read.text, changes };
    const answer = await post("/api/cooling", { ...file, page, number: mine });
    if (mine === number) {
      byId("out").replaceChildren(
        make("h2", {}, answer.name),
        ...(Object.keys(changes).length ? [make("p", { class: "kind" }, "With " + Object.entries(changes).map(([k, v]) => k + " = " + v).join(", ") + ", not saved.")] : []),
        ...(answer.note ? [make("p", {}, answer.note)] : [
          make("div", { class: "figures" }, ...answer.figures.map((f) => drawing(f, answer.name + "-jacket"))),
          ...answer.tables.map((grid) => table(grid, (text, path) => opener(text, path, () => file)))]));
      say("Done.");
    }
  } catch (error) {
    byId("out").replaceChildren();
    complain(error);
  }
}

byId("file").addEventListener("change", () => { changes = {}; show(); });

whenUnits(show);

try {
  choose(byId("file"), (await get("/api/files")).concepts);
  await show();
} catch (error) {
  complain(error);
}
