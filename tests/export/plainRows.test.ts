import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Piece } from "../../src/drafting/piece.ts";
import { layOut } from "../../src/export/layout.ts";
import { plainCount, plainRows } from "../../src/export/plainRows.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../../src/export/printChoices.ts";
import { paperGrid } from "../../src/export/tiles.ts";
import { pathOf } from "../../src/geometry/path.ts";
import { line } from "../../src/geometry/segment.ts";
import { make } from "../../src/project/make.ts";
import { SAMPLE_BODIES } from "../reference/survey.ts";
import { subjectOf } from "../support/sheetSubjects.ts";

const FORTY = SAMPLE_BODIES.map(
  ({ id, measures }) => make({ id, measures }, DEFAULT_CHOICES, null).garment.pieces,
);

const printed = (changes: Partial<PrintChoices>): PrintChoices => ({
  ...DEFAULT_PRINT,
  ...changes,
});

/** A rectangle with its corner at the origin, in place of a piece. */
const boxed = (name: Piece["name"], width: number, height: number): Piece => {
  const [first] = subjectOf().garment.pieces;
  if (!first) throw new Error("A garment has pieces.");
  const corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const sides = corners.map((from, i) => line(from, corners[(i + 1) % 4] ?? from));
  const at = { x: width / 2, y: height / 2 };
  return {
    ...first,
    name,
    cutLine: pathOf(sides),
    edges: [],
    notches: [],
    grain: { from: at, to: { x: at.x, y: at.y + 1 } },
  };
};

describe("plain rows", () => {
  // A4 shows 190 by 277 and repeats 10: a row of seven reaches to 1270, less 1.5 at either edge.
  test("lie one beside the other, 10 apart, until a row is full", () => {
    const four = (["front", "back", "sleeve", "cuff"] as const).map((name) =>
      boxed(name, 600, 260),
    );
    const { placements, sheets } = plainRows(four, paperGrid("a4"));
    expect(placements.map(({ x, y }) => [x, y])).toEqual([
      [1.5, 1.5],
      [611.5, 1.5],
      [1.5, 271.5],
      [611.5, 271.5],
    ]);
    // Seven across (to 1211.5) by two down (to 531.5): every one has a side of some box on it.
    expect(sheets).toBe(14);
  });

  test("are as narrow as their widest piece where that needs fewer sheets", () => {
    const two = [boxed("front", 170, 250), boxed("back", 170, 250)];
    expect(plainRows(two, paperGrid("a4")).sheets).toBe(2);
  });
});

describe.each(["a4", "letter"] as const)("forty bodies on %s", (paper) => {
  const sharesSaved = (print: PrintChoices) =>
    FORTY.map((pieces) => {
      const sheets = layOut(pieces, paper, print);
      return 1 - sheets.pages.length / plainCount(pieces, sheets);
    });
  const meanOf = (values: readonly number[]) => values.reduce((a, b) => a + b, 0) / values.length;

  test.each(["portrait", "landscape", "fewest"] as const)(
    "lying %s never need more sheets than plain rows, and 10 %% fewer on average",
    (turn) => {
      const saved = sharesSaved(printed({ turn }));
      expect(Math.min(...saved)).toBeGreaterThanOrEqual(0);
      expect(meanOf(saved)).toBeGreaterThanOrEqual(0.1);
    },
  );

  test("whichever way needs fewer is never more than either", () => {
    for (const pieces of FORTY) {
      const [upright, lying, fewest] = (["portrait", "landscape", "fewest"] as const).map(
        (turn) => layOut(pieces, paper, printed({ turn })).pages.length,
      );
      expect(fewest).toBe(Math.min(upright ?? 0, lying ?? 0));
    }
  });
});
