import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { moveSideSeams } from "../../../src/drafting/alterations/moveSideSeams.ts";
import { raiseHem } from "../../../src/drafting/alterations/raiseHem.ts";
import type { Block, BodyEdges } from "../../../src/drafting/piece.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, endTangent, mapPath, startOf, startTangent } from "../../../src/geometry/path.ts";
import { point } from "../../../src/geometry/point.ts";
import { splitAt } from "../../../src/geometry/split.ts";
import { aPath } from "../../support/curves.ts";
import { edgesOfBody, expectChained, near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { CURVED, OWN_BLOCKS, someOwnBlock, UNEQUAL, UNEQUAL_BY } from "../../support/ownBlocks.ts";
import { DRAFTED } from "../../support/workedGarment.ts";

const kept = (block: Block, by: number): Block =>
  raiseHem(block, { by, sidesMoved: false }).altered;
const onMoved = (block: Block, by: number): Block =>
  raiseHem(moveSideSeams(block, { on: true, by: 12.7 }), { by, sidesMoved: true }).altered;

const halves = ({ front, back }: Block): readonly BodyEdges[] => [front, back];
const pairs = (before: Block, after: Block) =>
  halves(before).map((old, i) => ({ old, now: halves(after)[i] ?? old }));

describe.each(OWN_BLOCKS)("raising the hem of %s", (name, block) => {
  test("with its sides kept lifts the hem at the side and at the fold by just so much", () => {
    for (const { old, now } of pairs(block, kept(block, 50.8))) {
      near(endOf(old.side).y - endOf(now.side).y, 50.8, 1e-9);
      near(endOf(old.hem).y - endOf(now.hem).y, 50.8, 1e-9);
    }
  });

  test("with its sides kept leaves what is left of each side as it was", () => {
    for (const { old, now } of pairs(block, kept(block, 50.8))) {
      expect(startOf(now.side)).toEqual(startOf(old.side));
      const [first] = splitAt(old.side, lengthOf(now.side));
      const { x, y } = endOf(first);
      nearPoint(endOf(now.side), [x, y], 1e-6);
    }
  });

  test("keeps the pieces closed, the centre on the fold", () => {
    for (const raised of [kept(block, 50.8), onMoved(block, 50.8)]) {
      for (const half of halves(raised)) {
        expectChained(edgesOfBody(half));
        expect([startOf(half.centre).x, endOf(half.centre).x]).toEqual([0, 0]);
      }
    }
  });

  test("with its sides moved makes them vertical and of one length", () => {
    const { front, back } = onMoved(block, 50.8);
    for (const { side } of [front, back]) near(startOf(side).x, endOf(side).x, 1e-9);
    near(lengthOf(front.side), lengthOf(back.side), name === "the drafted block" ? 1e-9 : 0.1);
  });

  test("with its sides moved lifts the hem by just so much at the fold", () => {
    for (const { old, now } of pairs(block, onMoved(block, 50.8))) {
      near(endOf(old.hem).y - endOf(now.hem).y, 50.8, 1e-9);
    }
  });

  test("leaves the hem square to the fold, as it was", () => {
    for (const raised of [kept(block, 50.8), onMoved(block, 50.8)]) {
      for (const { hem } of halves(raised)) near(endTangent(hem).y, 0, 1e-9);
    }
  });
});

describe("the hem of any block of the maker's own", () => {
  test("is raised by just what was asked, where the side has room", () => {
    const drawn = fc.tuple(someOwnBlock, fc.integer({ min: 0, max: 120 }));
    holdsFor(4101, drawn, ([block, by]) => {
      const { altered, rails } = raiseHem(block, { by, sidesMoved: false });
      const [rail] = rails;
      const used = rail ? rail.used : by;
      for (const { old, now } of pairs(block, altered)) {
        near(endOf(old.hem).y - endOf(now.hem).y, used, 1e-6);
        near(endOf(old.side).y - endOf(now.side).y, used, 1e-6);
        expectChained(edgesOfBody(now), 1e-6);
      }
    });
  });

  test("is joined to vertical sides that agree within a tenth", () => {
    holdsFor(4102, someOwnBlock, (block) => {
      const { front, back } = onMoved(block, 40);
      near(lengthOf(front.side), lengthOf(back.side), 0.1);
      for (const half of [front, back]) expectChained(edgesOfBody(half), 1e-6);
    });
  });
});

describe("the worked example, its sides moved and its hem raised by 50.8 (method 8)", () => {
  test("has its hem at 521.2, 287.7 wide, and sides of 274.1414", () => {
    const { front, back } = onMoved(DRAFTED, 50.8);
    for (const half of [front, back]) {
      near(endOf(half.hem).y, 521.2, 1e-4);
      near(lengthOf(half.hem), 287.7, 1e-4);
      near(lengthOf(half.side), 274.1414, 1e-4);
    }
  });
});

describe("a hem that dips at the fold", () => {
  test("keeps its dip when it is raised: 14 in front, 22 behind", () => {
    for (const raised of [kept(CURVED, 50.8), onMoved(CURVED, 50.8)]) {
      near(endOf(raised.front.hem).y - startOf(raised.front.hem).y, 14, 0.2);
      near(endOf(raised.back.hem).y - startOf(raised.back.hem).y, 22, 0.2);
    }
  });
});

describe("sides of unlike length", () => {
  test("are left as they are where they are kept", () => {
    const { front, back } = kept(UNEQUAL, 50.8);
    near(lengthOf(back.side) - lengthOf(front.side), UNEQUAL_BY, 0.1);
  });

  test("are both drawn to their mean where they were moved", () => {
    const moved = moveSideSeams(UNEQUAL, { on: true, by: 12.7 });
    const { front, back } = onMoved(UNEQUAL, 0);
    const own = (half: BodyEdges): number => endOf(half.side).y - endOf(half.raglan).y;
    const mean = (own(moved.front) + own(moved.back)) / 2;
    near(lengthOf(front.side), mean, 1e-9);
    near(lengthOf(back.side), mean, 1e-9);
  });

  test("move the outer two thirds of the hem and leave it alone at the fold", () => {
    const { front } = onMoved(UNEQUAL, 0);
    near(endOf(front.hem).y, endOf(UNEQUAL.front.hem).y, 1e-9);
    near(endTangent(front.hem).y, 0, 1e-9);
  });

  test("within a tenth of each other are left as they are", () => {
    const lower = ({ x, y }: { x: number; y: number }) => point(x, y > 400 ? y + 0.09 : y);
    const { back } = DRAFTED;
    const nearly: Block = {
      ...DRAFTED,
      back: { ...back, side: mapPath(back.side, lower), hem: mapPath(back.hem, lower) },
    };
    const altered = onMoved(nearly, 0);
    near(lengthOf(altered.back.side) - lengthOf(altered.front.side), 0.09, 1e-9);
  });
});

describe("raising the hem by nothing", () => {
  test("leaves a block alone whose sides are kept", () => {
    expect(kept(CURVED, 0)).toEqual(CURVED);
  });

  test("joins it to the sides all the same where they were moved", () => {
    const { front } = onMoved(DRAFTED, 0);
    near(startOf(front.hem).x, endOf(front.raglan).x, 1e-9);
    near(endOf(front.hem).y, endOf(DRAFTED.front.hem).y, 1e-9);
    near(startTangent(front.hem).y, 0, 1e-9);
  });
});

describe("a side that winds", () => {
  // Down to 500, up to 440 and down to 572: the level 480 is crossed three times.
  test("is cut at its last crossing with the new hem", () => {
    const side = aPath("M275 247 L290 500 L280 440 L273.5 572");
    const winding: Block = { ...DRAFTED, front: { ...DRAFTED.front, side } };
    const { front } = kept(winding, 92);
    expect(front.side).toHaveLength(3);
    near(endOf(front.side).y, 480, 1e-9);
    near(endOf(front.side).x, 280 - 6.5 * (40 / 132), 1e-9);
  });
});

describe("a hem raised past the side", () => {
  test("is held to 60 below the underarm, and says so", () => {
    const { altered, rails } = raiseHem(DRAFTED, { by: 300, sidesMoved: false });
    const [rail] = rails;
    expect([rail?.id, rail?.wanted, rail?.stops]).toEqual(["rail-raise-hem", 300, false]);
    near(rail?.used ?? NaN, 572 - 247 - 60, 1e-9);
    near(endOf(altered.front.side).y, 247 + 60, 1e-9);
    expect(rail?.message).toBe(
      "The hem cannot be raised by 300\u00a0mm; the side leaves room for 265\u00a0mm. Raise it by less, or draft the block longer.",
    );
  });

  test("is held by the shorter of the two sides", () => {
    const { rails } = raiseHem(UNEQUAL, { by: 300, sidesMoved: false });
    near(rails[0]?.used ?? NaN, 265, 1e-9);
  });

  test("is not raised at all where the side has less than 60", () => {
    const short = kept(DRAFTED, 265);
    const { altered, rails } = raiseHem(short, { by: 20, sidesMoved: false });
    expect(rails[0]?.used).toBe(0);
    expect(altered).toEqual(short);
  });
});
