import { describe, expect, test } from "vitest";
import { lengthOf } from "../../src/geometry/length.ts";
import { offsetPath } from "../../src/geometry/offset.ts";
import { OFFSET_ERROR } from "../../src/geometry/tolerance.ts";
import { BAND_RUNS } from "./worked/bands.ts";
import { CLOTH_RUNS } from "./worked/cloth.ts";
import { CURVE_RUNS } from "./worked/curves.ts";
import { ellipse, stadium } from "./worked/fineCurves.ts";
import { PAPER_PARTS, PAPER_RUNS } from "./worked/paper.ts";
import { SEAM_RUNS } from "./worked/seams.ts";
import { expectWorked, workedCheck, workedChecks } from "./workedChecks.ts";

/**
 * The 86 worked checks of data/worked-checks.json, each with its own source and tolerance, run
 * against the project's code.
 */
const RUNS = { ...CURVE_RUNS, ...PAPER_RUNS, ...BAND_RUNS, ...SEAM_RUNS, ...CLOTH_RUNS };

/** Checks that are run in another file of this folder. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  N01: "leastSquares.test.ts",
  N02: "leastSquares.test.ts",
  N03: "leastSquares.test.ts",
  P01: "workedSheets.test.ts",
  P05: "workedSheets.test.ts",
  P06: "workedSheets.test.ts",
  P07: "workedSheets.test.ts",
  P08: "workedSheets.test.ts",
  P09: "workedSheets.test.ts",
  P10: "workedSheets.test.ts",
  U05: "workedSheets.test.ts",
  U06: "workedSheets.test.ts",
  U10: "workedSheets.test.ts",
  U11: "workedSheets.test.ts",
};

/** Checks that nothing in the project computes, and why. */
const LEFT_OUT: Readonly<Record<string, string>> = {
  C17: "Ramanujan's first formula: the project measures curves, it has no formula for an ellipse",
  C18: "his second formula, as C17; C19 holds it against the project's own length",
  U07: "pixels of CSS: nothing is drawn to scale on screen",
  U08: "weights of cloth are not asked for",
  U09: "weights of cloth are not asked for",
  U12: "stitches are words in the guide, not numbers in the code",
  U13: "stitches, as U12",
  P03: "what a sheet may be out by when trimmed: nobody asks",
  P11: "a sheet fitted to other paper: the test square finds it, no code does",
  P12: "what a test square can hide, as P11",
  R04: "sew lines are measured, not cut widths; own blocks given cut are moved inward by O04's rule",
  R07: "what a zigzag gives is not worked",
  O02: "corners of an allowance are mitred or true, never round",
  S01: "stretch is entered as a share, read at the table",
  S02: "growth, as S01",
  S03: "recovery is entered as a share, read at the table",
  S04: "change in the wash is entered as a share",
  S06: "one figure for the wash is entered, after as many washes as the maker chose",
  Y01: "cloth is laid out and measured, not reckoned from an efficiency",
  Y02: "mass of cloth is not worked",
};

const inGroup = (letter: string) =>
  workedChecks.filter(({ id }) => id.startsWith(letter) && RUNS[id] !== undefined);

describe.each([
  ["curves", "C"],
  ["units", "U"],
  ["bands", "B"],
  ["raglan and V", "R"],
  ["offsets", "O"],
  ["areas", "A"],
  ["shrinkage", "S"],
  ["cloth", "Y"],
])("worked checks on %s", (_, letter) => {
  test.each(inGroup(letter))("$id: $title", (check) => {
    expectWorked(check, RUNS[check.id]?.(check) ?? []);
  });
});

describe("worked checks of which the project has a part", () => {
  test.each(Object.entries(PAPER_PARTS))("%s: the papers it prints on", (id, parts) => {
    const { expected } = workedCheck(id);
    for (const [place, value] of parts) expect(value).toBeCloseTo(expected[place] ?? NaN, 9);
  });
});

describe("the ring under a fold", () => {
  // B09 and B11 say how long it is; the true parallel curve of 1.4 must come out as long.
  test.each([
    ["B09", ellipse(480 / (2 * Math.PI), 480 / (2 * Math.PI))],
    ["B11", stadium(60, 50)],
  ] as const)("of %s is as long as the drawn offset", (id, outer) => {
    const check = workedCheck(id);
    const inner = lengthOf(offsetPath(outer, -check.number("depth")));
    expect(Math.abs(inner - (check.expected[0] ?? NaN))).toBeLessThan(2 * OFFSET_ERROR);
  });
});

test("every one of the 86 worked checks is run or says why not", () => {
  const isTold = (id: string) =>
    [RUNS, PAPER_PARTS, ELSEWHERE, LEFT_OUT].filter((told) => id in told).length === 1;
  expect(workedChecks).toHaveLength(86);
  expect(workedChecks.filter(({ id }) => !isTold(id)).map(({ id }) => id)).toEqual([]);
});
