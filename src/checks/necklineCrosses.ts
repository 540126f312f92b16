import type { Garment } from "../bands/garment.ts";
import { asMm } from "../drafting/words.ts";
import { endOf, startOf } from "../geometry/path.ts";
import type { Mm } from "../geometry/units.ts";
import type { Check } from "./check.ts";

/** How far the neckline (or the V's tip) lies below the hem at the fold; above it below nought. */
const belowHem = ({ finished }: Garment, piece: "front" | "back"): Mm => {
  const { v, neckline, hem } = finished[piece];
  return startOf((v ?? neckline).path).y - endOf(hem.path).y;
};

/**
 * Only where a neckline was lowered past the hem, so that the outline crosses itself: the method
 * holds the neckline and the hem each alone, not both together. Ours. In mm.
 */
export const necklineCrosses = (garment: Garment): readonly Check[] => {
  const value = Math.max(belowHem(garment, "front"), belowHem(garment, "back"));
  if (value < 0) return [];
  return [
    {
      id: "neckline-crosses",
      verdict: "stop",
      value,
      limit: 0,
      unit: "mm",
      message: `At the fold the neckline lies ${asMm(value)} below the hem; the limit is ${asMm(0)}. Lower the neckline by less, or raise the hem by less.`,
    },
  ];
};
