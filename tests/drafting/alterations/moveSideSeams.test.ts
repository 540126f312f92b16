import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { moveSideSeams, raglanSlope } from "../../../src/drafting/alterations/moveSideSeams.ts";
import type { Block } from "../../../src/drafting/piece.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, endTangent, startOf, startTangent } from "../../../src/geometry/path.ts";
import { apart, dir, turn } from "../../../src/geometry/point.ts";
import { radians } from "../../../src/geometry/units.ts";
import { near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { OWN_BLOCKS, someOwnBlock, steepBlock } from "../../support/ownBlocks.ts";
import { DRAFTED } from "../../support/workedGarment.ts";

const moved = (block: Block, by: number): Block => moveSideSeams(block, { on: true, by });

/** By how much each raglan of a block grew: front, sleeve front, back, sleeve back. */
const growth = (before: Block, after: Block): readonly number[] =>
  [
    [before.front.raglan, after.front.raglan],
    [before.sleeve.raglanFront, after.sleeve.raglanFront],
    [before.back.raglan, after.back.raglan],
    [before.sleeve.raglanBack, after.sleeve.raglanBack],
  ].map(([old, now]) => (old && now ? lengthOf(now) - lengthOf(old) : NaN));

const steep = (slope: number): Block => steepBlock({ front: slope, back: 0 });

describe.each(OWN_BLOCKS)("moving the side seams of %s", (_, block) => {
  test("by half an inch moves both underarm points outward by just that", () => {
    const after = moved(block, 12.7);
    near(endOf(after.front.raglan).x - endOf(block.front.raglan).x, 12.7, 1e-9);
    near(endOf(after.back.raglan).x - endOf(block.back.raglan).x, 12.7, 1e-9);
  });

  test("makes the sleeve's raglans longer by as much as the body's, front and back", () => {
    const [front = NaN, sleeveFront = NaN, back = NaN, sleeveBack = NaN] = growth(
      block,
      moved(block, 12.7),
    );
    near(front, sleeveFront, 1e-8);
    near(back, sleeveBack, 1e-8);
    expect(front).toBeGreaterThanOrEqual(12.7 - 1e-8);
  });

  test("draws all four straight on along their own ends", () => {
    const after = moved(block, 12.7);
    for (const [old, now] of [
      [block.front.raglan, after.front.raglan],
      [block.back.raglan, after.back.raglan],
      [block.sleeve.raglanFront, after.sleeve.raglanFront],
    ] as const) {
      near(turn(endTangent(old), endTangent(now)), 0, 1e-9);
    }
    const { raglanBack } = after.sleeve;
    near(turn(startTangent(block.sleeve.raglanBack), startTangent(raglanBack)), 0, 1e-9);
  });

  test("leaves the neck ends where they were", () => {
    const after = moved(block, 12.7);
    expect(startOf(after.front.raglan)).toEqual(startOf(block.front.raglan));
    expect(startOf(after.sleeve.raglanFront)).toEqual(startOf(block.sleeve.raglanFront));
    expect(endOf(after.sleeve.raglanBack)).toEqual(endOf(block.sleeve.raglanBack));
  });
});

describe("the worked example, its side seams moved by 12.7 (method 8)", () => {
  const after = moved(DRAFTED, 12.7);

  test("grows by 12.70014 along 0.2644°", () => {
    for (const by of growth(DRAFTED, after)) near(by, 12.70014, 1e-5);
    near(raglanSlope(DRAFTED), 0.2644, 1e-4);
  });

  test("has its underarm at (287.7, 247.0586), the sleeve's at (219.8382, 3.0098)", () => {
    nearPoint(endOf(after.front.raglan), [287.7, 247.0586], 1e-4);
    nearPoint(endOf(after.sleeve.raglanFront), [219.8382, 3.0098], 2e-4);
  });
});

describe("moving the side seams of any block", () => {
  test("by any amount keeps what the raglans differ by", () => {
    const drawn = fc.tuple(someOwnBlock, fc.integer({ min: 0, max: 60 }));
    holdsFor(4201, drawn, ([block, by]) => {
      const [front = NaN, sleeveFront = NaN, back = NaN, sleeveBack = NaN] = growth(
        block,
        moved(block, by),
      );
      near(front, sleeveFront, 1e-7);
      near(back, sleeveBack, 1e-7);
      near(endOf(moved(block, by).front.raglan).x - endOf(block.front.raglan).x, by, 1e-7);
    });
  });

  test("by nothing adds nothing", () => {
    expect(moved(DRAFTED, 0)).toEqual(DRAFTED);
  });
});

describe("a raglan that reaches the underarm steeply", () => {
  test.each([10, 29.9, -20])("at %s° is followed along its own end", (slope) => {
    const block = steep(slope);
    const after = moved(block, 12.7);
    const [front = NaN] = growth(block, after);
    near(front, 12.7 / Math.cos(radians(slope)), 1e-8);
    near(raglanSlope(block), Math.abs(slope), 1e-9);
  });

  test.each([
    [45, 30],
    [80, 30],
    [-50, -30],
  ])("at %s° is followed at %s°, so that the point still moves by just so much", (slope, held) => {
    const block = steep(slope);
    const after = moved(block, 12.7);
    const [front = NaN, sleeveFront = NaN] = growth(block, after);
    near(front, 12.7 / Math.cos(radians(30)), 1e-8);
    near(sleeveFront, front, 1e-8);
    near(endOf(after.front.raglan).x - endOf(block.front.raglan).x, 12.7, 1e-9);
    const added = turn(dir(radians(held)), endTangent(after.front.raglan));
    near(added, 0, 1e-9);
  });

  test("is told by the steeper of front and back", () => {
    near(raglanSlope(steep(45)), 45, 1e-9);
    expect(apart(endTangent(steep(45).front.raglan), dir(radians(45)))).toBeLessThan(1e-9);
  });
});
