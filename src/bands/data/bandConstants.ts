import type { Ratio } from "../../geometry/units.ts";

/**
 * What the lengths of rib bands rest on (method 2.1 and 5). "Model": two models of ours, written
 * apart and compared, with the tension curve of a published rib (Singal et al. 2024,
 * doi 10.1038/s41467-024-46498-z); no cloth was tested. "Practice": common practice, no source.
 */
export const BAND = {
  /** Worn length of the neckband as a part of its ring on the body: aimed at, and still flat. Model. */
  target: 0.98 as Ratio,
  limit: 1.03 as Ratio,
  /** The head passes within this part of the rib's stretch. Practice. */
  safeStretch: 0.9 as Ratio,
  /** A band is sewn on with at most this part of the rib's stretch. Practice. */
  sewStretch: 0.5 as Ratio,
  /** Pressure of a worn band, kPa·mm. Model. */
  pressFactor: 716,
  /** A hem band shorter than the hip by this part of stretch·hip holds a blouse. Model. */
  blouse: 0.06 as Ratio,
  /** A cuff or hem band is at least this part of its girth, or nothing is left to sew. Ours, no source. */
  least: 0.2 as Ratio,
} as const;
