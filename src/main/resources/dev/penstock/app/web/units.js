// The units that a reader has chosen: one switch on every page, kept in the browser; the server writes in them.
import { byId } from "./common.js";

const NAME = "penstock-units";
const choice = byId("units");
let again = () => location.reload();

/** Has a page show itself again when the units change, where loading it anew would lose something. */
export function whenUnits(shown) {
  again = shown;
}

choice.value = document.cookie.match("(?:^|; )" + NAME + "=([a-z]+)")?.[1] || "metric";
choice.addEventListener("change", () => {
  document.cookie = NAME + "=" + choice.value + "; path=/; max-age=31536000; samesite=strict";
  again();
});
