import { PAPERS } from "../../../src/export/data/paper.ts";
import { MM_PER_INCH } from "../../../src/geometry/units.ts";
import type { Run, Runs } from "./run.ts";

const INCHES_IN_A_YARD = 36;

const inches: Run = (check) => [check.number("value") * MM_PER_INCH];
const yards: Run = (check) => [check.number("value") * INCHES_IN_A_YARD * MM_PER_INCH];

/** The papers that the project prints on, of the A series; it rounds as ISO 216 does. */
const { a0, a3, a4, letter } = PAPERS;

export const PAPER_RUNS: Runs = {
  U01: inches,
  U02: inches,
  U03: inches,
  U04: yards,
};

/** Of a row of sizes the project has some: [place in the check, what the project says]. */
export const PAPER_PARTS: Readonly<Record<string, readonly (readonly [number, number])[]>> = {
  P02: [
    [0, a0.width],
    [1, a0.height],
    [6, a3.width],
    [7, a3.height],
    [8, a4.width],
    [9, a4.height],
  ],
  P04: [
    [0, letter.width],
    [1, letter.height],
  ],
};
