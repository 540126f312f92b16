import type { Mm } from "../../geometry/units.ts";

/** A bank card, which most people have at hand: ISO/IEC 7810, size ID-1. */
export const CARD: { readonly width: Mm; readonly height: Mm } = { width: 85.6, height: 53.98 };

/** CSS pixels to a millimetre as the standard has them, 96 to the inch: no screen is bound to it. */
export const NOMINAL = 96 / 25.4;
/** From a wall of a television to the finest telephone. Ours. */
export const PER_MM = { least: 1, most: 9, step: 0.005 } as const;
