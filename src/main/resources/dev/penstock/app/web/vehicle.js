// The vehicles of the workspace; the server's report is shown in a frame that may run nothing.
import { byId, calm, choose, complain, get, post, Refused, say } from "./common.js";

function changes() {
  const text = byId("change").value.trim();
  if (!text) {
    return {};
  }
  const equals = text.indexOf("=");
  if (equals < 1) {
    throw new Refused(422, { problems: ["write a change as key = value, for example payload = 14 t"] });
  }
  return { [text.slice(0, equals).trim()]: text.slice(equals + 1).trim() };
}

async function size(e) {
  e.preventDefault();
  calm();
  byId("go").disabled = true;
  say(byId("fly").checked ? "Balancing, sizing and flying …" : "Balancing and sizing …");
  try {
    const made = await post("/api/vehicle", { file: byId("file").value, changes: changes(), fly: byId("fly").checked });
    const frame = byId("page");
    frame.hidden = false;
    frame.src = "/shown/" + made.id;
    byId("keep").hidden = false;
    byId("keep").href = "/shown/" + made.id + "?download=1";
    say("Sized.");
  } catch (error) {
    complain(error);
  } finally {
    byId("go").disabled = false;
  }
}

byId("plan").addEventListener("submit", size);

try {
  choose(byId("file"), (await get("/api/files")).vehicles);
} catch (error) {
  complain(error);
}
