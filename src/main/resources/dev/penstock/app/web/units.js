// The units that a reader has chosen: one switch on every page, kept in the browser; the server writes in them.
import { byId } from "./common.js";

const NAME = "penstock-units";

/** Has a page show itself again when the units change. Nothing is asked of it before. */
export function whenUnits(again) {
  const choice = byId("units");
  choice.value = document.cookie.match("(?:^|; )" + NAME + "=([a-z]+)")?.[1] || "metric";
  choice.addEventListener("change", () => {
    document.cookie = NAME + "=" + choice.value + "; path=/; max-age=31536000; samesite=strict";
    again();
  });
}
