import type { Garment } from "../../bands/garment.ts";
import { neckbandBounds } from "../../bands/neckband.ts";
import type { WordKey } from "../words/en.ts";

/** Two lengths are one limit where they differ by less than this, in mm. */
const SAME = 1e-6;

/** Why the neckband is as long as it is: which of the method's limits held it (5.2). */
export const neckbandReason = ({ bands, choices, measures }: Garment): WordKey => {
  if (choices.bands.neckband.ratio !== null) return "ribs.why.own";
  const { opening, bodyRing, finishedLength } = bands.neckband;
  const bounds = neckbandBounds(opening, bodyRing, measures.head, choices.cloth.rib);
  const is = (length: number): boolean => Math.abs(finishedLength - length) < SAME;
  if (is(opening)) return "ribs.why.opening";
  if (is(bounds.target)) return "ribs.why.aimed";
  if (is(bounds.flat)) return "ribs.why.flat";
  return bounds.forHead >= bounds.forSewing ? "ribs.why.head" : "ribs.why.sews";
};
