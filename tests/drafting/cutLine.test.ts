import { describe, expect, test } from "vitest";
import type { Side } from "../../src/drafting/allowances.ts";
import { begunOnFold, cutLineOf, endedOnFold } from "../../src/drafting/cutLine.ts";
import { areaOf } from "../../src/geometry/outline.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import type { Changes } from "../support/choices.ts";
import { aPath } from "../support/curves.ts";
import { cutPieceOf } from "../support/cutPieces.ts";
import { near, nearPoint } from "../support/expectations.ts";
import { expectCutLine } from "../support/independent/cutLines.ts";
import { OWN_BLOCKS } from "../support/ownBlocks.ts";
import { garmentOf } from "../support/workedGarment.ts";

const side = (data: string, allowance: number): Side => ({
  name: "side",
  path: aPath(data),
  allowance,
  corner: "mitre",
});

describe("a cut line round a whole piece", () => {
  test("of a rectangle is a rectangle as much larger on each side", () => {
    const cut = cutLineOf(
      [
        side("M0 0 L100 0", 10),
        side("M100 0 L100 50", 20),
        side("M100 50 L0 50", 10),
        side("M0 50 L0 0", 5),
      ],
      false,
    );
    near(areaOf(cut), (100 + 20 + 5) * (50 + 10 + 10), 1e-9);
    expect(endOf(cut)).toEqual(startOf(cut));
  });

  test("with no allowance at all is the sew line", () => {
    const cut = cutLineOf(
      [side("M0 0 L100 0", 0), side("M100 0 L50 80", 0), side("M50 80 L0 0", 0)],
      false,
    );
    expect(cut).toEqual(aPath("M0 0 L100 0 L50 80 L0 0"));
  });
});

describe("a cut line on the fold", () => {
  test("leaves the fold itself without an allowance", () => {
    const cut = cutLineOf(
      [side("M0 0 L100 0", 10), side("M100 0 L100 50", 10), side("M100 50 L0 50", 10)],
      true,
    );
    expect(cut.map(({ end }) => [end.x, end.y])).toEqual([
      [100, -10],
      [110, -10],
      [110, 0],
      [110, 50],
      [110, 60],
      [100, 60],
      [0, 60],
      [0, -10],
    ]);
  });

  test("begins where the first offset crosses the fold, or is prolonged to it", () => {
    nearPoint(startOf(begunOnFold(aPath("M-5 -10 L5 -10 L50 0"))), [0, -10], 1e-9);
    nearPoint(startOf(begunOnFold(aPath("M10 -10 L60 40"))), [0, -20], 1e-9);
    nearPoint(startOf(begunOnFold(aPath("M10 -10 L10 40"))), [0, -10], 1e-9);
  });

  test("ends where the last offset crosses the fold last, or is prolonged to it", () => {
    nearPoint(endOf(endedOnFold(aPath("M50 10 L-5 10 L5 20 L-5 30"))), [0, 25], 1e-9);
    nearPoint(endOf(endedOnFold(aPath("M60 40 L10 -10"))), [0, -20], 1e-9);
  });

  test("stays off the other side of the fold where the V leans over it", () => {
    const { cutLine } = garmentOf().pieces[0] ?? { cutLine: aPath("M-1 0 L-2 0") };
    for (const { start } of cutLine) expect(start.x).toBeGreaterThan(-1e-9);
  });
});

const TRIED: readonly (readonly [string, Changes])[] = [
  ["the default choices", {}],
  ["wide allowances", { allowances: { raglan: 20, side: 25, underarm: 18, bands: 7 } }],
  ["narrow allowances", { allowances: { raglan: 2, side: 3, underarm: 1, bands: 0.5 } }],
  ["no alteration of the sides", { moveSideSeams: { on: false }, vInsert: { on: false } }],
  ["a V cut away", { vInsert: { method: "cut-away" } }],
  ["a wide, low neckline", { neckline: { on: true, lowerFront: 40, lowerBack: 15, widen: 30 } }],
  ["cloth that shrinks", { body: { shrinkLength: 0.08, shrinkWidth: 0.03 } }],
];

describe("the cut lines of every piece lie at their allowances within a tenth, both ways", () => {
  test.each(TRIED)("with %s", (_, changes) => {
    const garment = garmentOf(changes);
    for (const piece of garment.pieces) expectCutLine(cutPieceOf(piece, garment));
    for (const piece of Object.values(garment.block)) expectCutLine(cutPieceOf(piece, garment));
  });

  test.each(OWN_BLOCKS)("on %s", (_, block) => {
    const garment = garmentOf({}, { block });
    for (const piece of garment.pieces) expectCutLine(cutPieceOf(piece, garment));
  });

  test("and a cut line drawn a fifth of a millimetre too wide is found to be out", () => {
    const garment = garmentOf();
    const [front] = garment.pieces;
    if (!front) throw new Error("A garment has a front.");
    const wider = { ...garment.choices.allowances, raglan: 9.725 };
    const said = { choices: { ...garment.choices, allowances: wider } };
    expect(() => expectCutLine(cutPieceOf(front, said))).toThrow();
  });
});
