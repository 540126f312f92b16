import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { openNeckline } from "../../../src/drafting/alterations/neckline.ts";
import { cornerOf } from "../../../src/drafting/block/neckEdge.ts";
import type { Block } from "../../../src/drafting/piece.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, startOf, startTangent } from "../../../src/geometry/path.ts";
import { pointAlong } from "../../../src/geometry/split.ts";
import { degrees } from "../../../src/geometry/units.ts";
import { aPath } from "../../support/curves.ts";
import {
  edgesOfBody,
  edgesOfSleeve,
  expectChained,
  near,
  nearPoint,
} from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { OWN_BLOCKS, redrawn, someOwnBlock } from "../../support/ownBlocks.ts";
import { DRAFTED } from "../../support/workedGarment.ts";

type Opening = { readonly lowerFront: number; readonly lowerBack: number; readonly widen: number };

const open = (block: Block, opening: Partial<Opening>) =>
  openNeckline(block, { on: true, lowerFront: 0, lowerBack: 0, widen: 0, ...opening });
const opened = (block: Block, opening: Partial<Opening>): Block => open(block, opening).altered;

/** Front, back, sleeve front, sleeve back. */
const raglans = ({ front, back, sleeve }: Block): readonly number[] =>
  [front.raglan, back.raglan, sleeve.raglanFront, sleeve.raglanBack].map(lengthOf);

describe.each(OWN_BLOCKS)("the neckline of %s", (_, block) => {
  test("lowered by 20 and 5 lies so much lower on the fold, and is wide as before", () => {
    const { front, back } = opened(block, { lowerFront: 20, lowerBack: 5 });
    near(startOf(front.neckline).y - startOf(block.front.neckline).y, 20, 1e-9);
    near(startOf(back.neckline).y - startOf(block.back.neckline).y, 5, 1e-9);
    const { x, y } = endOf(block.front.neckline);
    nearPoint(endOf(front.neckline), [x, y], 1e-9);
  });

  test("widened by 15 takes 15 off all four raglan edges, so they stay matched", () => {
    const before = raglans(block);
    raglans(opened(block, { widen: 15 })).forEach((length, i) => {
      near((before[i] ?? NaN) - length, 15, 1e-8);
    });
  });

  test("widened ends where the raglan is cut, 15 along it", () => {
    const { front } = opened(block, { widen: 15 });
    const { x, y } = pointAlong(block.front.raglan, 15);
    nearPoint(endOf(front.neckline), [x, y], 1e-7);
  });

  test("keeps its angle to the fold", () => {
    const { front } = opened(block, { lowerFront: 20, widen: 15 });
    near(startTangent(front.neckline).y, startTangent(block.front.neckline).y, 0.35);
    expect(startOf(front.neckline).x).toBe(0);
  });

  test("keeps every piece closed", () => {
    const after = opened(block, { lowerFront: 20, lowerBack: 5, widen: 15 });
    expectChained(edgesOfBody(after.front), 1e-7);
    expectChained(edgesOfBody(after.back), 1e-7);
    expectChained(edgesOfSleeve(after.sleeve), 1e-7);
  });

  test("runs on over both raglan seams, drawn anew even where nothing is lowered or widened", () => {
    for (const opening of [{}, { lowerFront: 20, widen: 15 }]) {
      const { front, back, sleeve } = opened(block, opening);
      const atFront =
        cornerOf(front.neckline, front.raglan) + cornerOf(sleeve.neckline, sleeve.raglanFront);
      const atBack =
        cornerOf(back.neckline, back.raglan) + cornerOf(sleeve.raglanBack, sleeve.neckline);
      near(degrees(atFront), 180, 1e-6);
      near(degrees(atBack), 180, 1e-6);
    }
  });

  test("leaves the body below the raglan alone", () => {
    const { front, sleeve } = opened(block, { lowerFront: 20, widen: 15 });
    expect([front.side, front.hem]).toEqual([block.front.side, block.front.hem]);
    expect(sleeve.underarmFront).toEqual(block.sleeve.underarmFront);
  });
});

describe("a lowered neckline on the drafted block", () => {
  test("stays square to the fold", () => {
    const { front, back } = opened(DRAFTED, { lowerFront: 60, lowerBack: 30, widen: 40 });
    near(startTangent(front.neckline).y, 0, 1e-12);
    near(startTangent(back.neckline).y, 0, 1e-12);
  });

  test("is longer the lower it lies", () => {
    const length = (lowerFront: number) => lengthOf(opened(DRAFTED, { lowerFront }).front.neckline);
    expect(length(20)).toBeGreaterThan(length(0));
    expect(length(40)).toBeGreaterThan(length(20));
    expect(length(-20)).toBeLessThan(length(0));
  });

  test("lowered by nothing is the neckline as it was", () => {
    const { front } = opened(DRAFTED, {});
    near(lengthOf(front.neckline), lengthOf(DRAFTED.front.neckline), 1e-9);
  });
});

describe("a neckline whose corner lies level with the fold", () => {
  // Depths cannot be scaled where there is none: each point goes down by its share (method 3.1).
  test("is lowered at the fold and meets the raglan all the same", () => {
    const level: Block = {
      ...DRAFTED,
      front: {
        ...DRAFTED.front,
        neckline: aPath("M0 30.8 C30 32 50 32 73.274325 30.795276"),
        raglan: redrawn(DRAFTED.front.raglan, [0.02, 0]),
      },
    };
    const { front } = opened(level, { lowerFront: 20 });
    near(startOf(front.neckline).y, 50.8, 1e-9);
    nearPoint(endOf(front.neckline), [73.274325, 30.795276], 1e-4);
    const middle = front.neckline[0];
    if (middle.kind !== "cubic") throw new Error("The neckline is a curve.");
    nearPoint(middle.startHandle, [30, 32 + 20 - (20 * 30) / 73.274325], 1e-4);
  });
});

describe("the neckline of any block", () => {
  test("takes as much off the sleeve's raglans as off the body's", () => {
    const drawn = fc.tuple(
      someOwnBlock,
      fc.integer({ min: 0, max: 80 }),
      fc.integer({ min: -20, max: 150 }),
      fc.integer({ min: -20, max: 100 }),
    );
    holdsFor(4401, drawn, ([block, widen, lowerFront, lowerBack]) => {
      const { altered, rails } = open(block, { widen, lowerFront, lowerBack });
      const used = rails[0]?.used ?? widen;
      const before = raglans(block);
      raglans(altered).forEach((length, i) => {
        near((before[i] ?? NaN) - length, used, 1e-7);
      });
      near(startOf(altered.front.neckline).y - startOf(block.front.neckline).y, lowerFront, 1e-9);
    });
  });
});

describe("a neckline wider than the raglan bears", () => {
  test("is held to 0.3 of the shortest raglan, and says so", () => {
    expect(open(DRAFTED, { widen: 80 }).rails).toEqual([]);
    const short: Block = {
      ...DRAFTED,
      sleeve: { ...DRAFTED.sleeve, raglanFront: aPath("M43.4615 -246.2109 L207.5 -140") },
    };
    const [rail] = open(short, { widen: 80 }).rails;
    const shortest = Math.hypot(207.5 - 43.4615, 246.2109 - 140);
    near(rail?.used ?? NaN, 0.3 * shortest, 1e-6);
    expect(rail?.message).toBe(
      "The neckline cannot be widened by 80\u00a0mm; the shortest raglan seam leaves room for 58.6\u00a0mm. Widen it by less.",
    );
  });
});
