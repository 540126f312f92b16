import type { Choices } from "../drafting/choices.ts";
import type { Measures } from "../drafting/measures.ts";
import type { Rail } from "../drafting/rail.ts";
import { asMm } from "../drafting/words.ts";
import type { Mm } from "../geometry/units.ts";
import { BAND } from "./data/bandConstants.ts";

/**
 * The sewn length of a cuff or hem band: its girth and its ease (method 5.3), held where a tiny girth
 * and a large negative ease would leave nothing to sew.
 */
export const roundOf = (girth: Mm, ease: Mm): Mm => Math.max(girth + ease, BAND.least * girth);

const shortRail = (id: Rail["id"], what: string, girth: Mm, ease: Mm): readonly Rail[] => {
  const [wanted, used] = [girth + ease, roundOf(girth, ease)];
  if (wanted >= used) return [];
  const message = `The ${what} would be ${asMm(wanted)} round; on this body it is drawn ${asMm(used)} round. Give it more ease.`;
  return [{ id, wanted, used, unit: "mm", stops: false, message }];
};

/** What was held of cuff and hem band. */
export const shortBandRails = (
  { wrist, hip }: Measures,
  { bands: { cuff, hemBand } }: Choices,
): readonly Rail[] => [
  ...shortRail("rail-cuff", "cuff", wrist, cuff.ease),
  ...shortRail("rail-hem-band", "hem band", hip, hemBand.ease),
];
