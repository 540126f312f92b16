import type { Mm } from "../../geometry/units.ts";

/** What the maker reads and types in. Inside, every length stays in millimetres. */
export const UNITS = ["mm", "cm", "in"] as const;
export type Unit = (typeof UNITS)[number];

/** Millimetres in one of each: exact, the inch since 1959. */
export const MM_IN: Readonly<Record<Unit, Mm>> = { mm: 1, cm: 10, in: 25.4 };

/** How far an arrow key goes, and with Shift, and with PageUp (design, section 8). In mm. */
export const STEPS: Readonly<Record<Unit, { step: Mm; fine: Mm; leap: Mm }>> = {
  mm: { step: 1, fine: 0.1, leap: 10 },
  cm: { step: 1, fine: 0.1, leap: 10 },
  in: { step: 25.4 / 16, fine: 25.4 / 64, leap: 25.4 / 2 },
};

/** What a dragged value comes to rest on, and with Shift (design, section 7). In mm. */
const RESTS: Readonly<Record<Unit, { rest: Mm; fine: Mm }>> = {
  mm: { rest: 0.5, fine: 0.1 },
  cm: { rest: 0.5, fine: 0.1 },
  in: { rest: 25.4 / 16, fine: 25.4 / 64 },
};

/** Half a millionth of a millimetre: takes off what dividing by a step leaves, and nothing more. */
const DUST = 1e6;

/** The round value of the unit nearest to `length`. */
export const snapped = (length: Mm, unit: Unit, fine = false): Mm => {
  const { rest, fine: small } = RESTS[unit];
  const step = fine ? small : rest;
  return Math.round(Math.round(length / step) * step * DUST) / DUST;
};
