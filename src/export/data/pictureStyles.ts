import type { Mm } from "../../geometry/units.ts";
import type { MarkKind } from "../../guide/picture.ts";

/** On paper, in mm whatever the picture's scale. Dash, gap, dash, gap ...; empty: unbroken. */
type MarkStyle = { readonly width: Mm; readonly dash: readonly Mm[] };

/** Told apart by weight and dash alone, so that any printer will do (common practice, no source). */
export const MARK_STYLES: Readonly<Record<MarkKind, MarkStyle>> = {
  cut: { width: 0.3, dash: [] },
  sew: { width: 0.18, dash: [1.6, 1] },
  sewn: { width: 0.18, dash: [] },
  stitching: { width: 1, dash: [2, 1.1] },
  stay: { width: 0.6, dash: [0.8, 0.5] },
  fold: { width: 0.25, dash: [4, 1, 0.8, 1] },
  notch: { width: 0.4, dash: [] },
  arrow: { width: 0.25, dash: [] },
  snip: { width: 0.6, dash: [] },
  stop: { width: 0.3, dash: [] },
};

/** The right side is plain, with a breath of grey so that paper between pieces is not taken for cloth. */
export const RIGHT_GREY = 0.95;
/** The wrong side: short slanting hatch. Rib: light grey with ribs. */
export const WRONG = { apart: 1.7, dash: 1.5, gap: 1.4, width: 0.15 } as const;
export const RIB = { apart: 1.1, width: 0.12, grey: 0.87, edge: 0.25 } as const;
/** How large the dot is at which to stop, across. */
export const STOP: Mm = 2.2;
/** Letters of a picture, as a printer counts them. */
export const PICTURE_LETTERS: Mm = 3.2;
