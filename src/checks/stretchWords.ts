import { asPercent } from "../drafting/words.ts";
import type { Ratio } from "../geometry/units.ts";

/** What a band or seam has to do for something to pass; a stretch below nought is none. */
export const mustStretch = (by: Ratio): string =>
  by > 0 ? `must stretch by ${asPercent(by)}` : "need not stretch";
