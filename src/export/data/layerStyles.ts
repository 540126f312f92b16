import type { Mm } from "../../geometry/units.ts";

/** Dash, gap, dash, gap ...; empty: unbroken. */
type LayerStyle = { readonly width: Mm; readonly dash: readonly Mm[] };

const THIN: Mm = 0.3;
const BOLD: Mm = 0.55;
/** Long and short dashes, and the gap between them: told apart at a glance over 30 mm of line. */
const [LONG, SHORT, DOT, GAP] = [9, 3.5, 0.7, 1.6];

const DASHES: readonly (readonly Mm[])[] = [
  [],
  [LONG, GAP],
  [LONG, GAP, DOT, GAP],
  [SHORT, GAP],
  [LONG, GAP, DOT, GAP, DOT, GAP],
  [LONG, GAP, SHORT, GAP],
  [SHORT, GAP, DOT, GAP],
  [LONG, GAP, DOT, GAP, DOT, GAP, DOT, GAP],
];

/**
 * A line kind for each of several sizes in one file, told apart without colour: eight dashes, thin
 * and then bold. Ours; no one standard sets them, which is why the first page carries a key.
 */
export const LAYER_STYLES: readonly LayerStyle[] = [THIN, BOLD].flatMap((width) =>
  DASHES.map((dash) => ({ width, dash })),
);

/** As many as there are line kinds; more could not be told apart. */
export const MOST_NESTED = LAYER_STYLES.length;

/** Seam lines of all sizes: thin, for they are switched on one size at a time. */
export const SEAM_STYLE: LayerStyle = { width: 0.15, dash: [2.5, 1.2] };
