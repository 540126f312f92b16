import type { Mm } from "../../geometry/units.ts";

type ClothWidth = { readonly width: Mm; readonly source: string };

const practice = (width: Mm): ClothWidth => ({ width, source: "common practice, no source" });

/**
 * Usable widths of open sweatshirt fleece and jersey, between the selvedges. Common practice, no
 * source: 1450 to 1850, most often 1500.
 */
export const BODY_WIDTHS: readonly ClothWidth[] = [1450, 1500, 1650, 1850].map(practice);

/**
 * Usable widths of rib, opened out. Rib is mostly sold as a tube, 350 to 750 wide as it lies flat
 * (common practice, no source): cut open it is twice as wide.
 */
export const RIB_WIDTHS: readonly ClothWidth[] = [700, 1000, 1200, 1500].map(practice);

/** Left free between pieces and at both ends of the cloth: room for the shears. Practice. */
export const GAP: Mm = 10;

/** What is bought is rounded up to a whole number of these. Common practice, no source. */
export const BOUGHT_BY: Mm = 10;
