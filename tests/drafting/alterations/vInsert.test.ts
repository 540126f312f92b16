import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { toSweatshirt } from "../../../src/drafting/alterations/sweatshirt.ts";
import { insertV } from "../../../src/drafting/alterations/vInsert.ts";
import type { BodyEdges } from "../../../src/drafting/piece.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { areaOf } from "../../../src/geometry/outline.ts";
import {
  endOf,
  joined,
  mirroredPath,
  reversed,
  startOf,
  straight,
} from "../../../src/geometry/path.ts";
import { cross, minus, point, unit } from "../../../src/geometry/point.ts";
import { splitAt } from "../../../src/geometry/split.ts";
import { degrees } from "../../../src/geometry/units.ts";
import { choicesOf } from "../../support/choices.ts";
import { aPath } from "../../support/curves.ts";
import { edgesOfBody, expectChained, near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { OWN_BLOCKS, someOwnBlock } from "../../support/ownBlocks.ts";
import { DRAFTED, given } from "../../support/workedGarment.ts";

type Choice = Parameters<typeof insertV>[1];
const TRUE: Choice = { on: true, halfWidth: 25.4, depth: 50.8, allowance: 6.35, method: "true" };
const CUT_AWAY: Choice = { ...TRUE, method: "cut-away" };

const withV = (front: BodyEdges, choice: Choice) => {
  const { altered, rails } = insertV(front, choice);
  return { ...altered, v: given(altered.front.v), rails };
};

/** A level neckline 100 wide: the V is then two right-angled triangles. */
const LEVEL: BodyEdges = {
  neckline: straight(point(0, 0), point(100, 0)),
  raglan: straight(point(100, 0), point(250, 250)),
  side: straight(point(250, 250), point(250, 500)),
  hem: straight(point(250, 500), point(0, 500)),
  centre: straight(point(0, 500), point(0, 0)),
};
/** The same, its hem at this level. */
const levelTo = (y: number): BodyEdges => ({
  ...LEVEL,
  side: straight(point(250, 250), point(250, y)),
  hem: straight(point(250, y), point(0, y)),
  centre: straight(point(0, y), point(0, 0)),
});

describe("a V 30 to each side and 40 deep in a level neckline", () => {
  const choice: Choice = { ...TRUE, halfWidth: 30, depth: 40, allowance: 6 };

  test("is 50 a side: 3, 4, 5", () => {
    const { v, insert } = withV(LEVEL, choice);
    near(lengthOf(v), 50, 1e-9);
    near(lengthOf(insert.left), 50, 1e-9);
    near(lengthOf(insert.right), 50, 1e-9);
    near(lengthOf(insert.top), 60, 1e-9);
  });

  // Moved 6 into the garment: 10 lower on the fold (6/sin β, sin β = 3/5), and 7.5 further out.
  test("cut away is sewn from (0, 50) to (37.5, 0), 12.5 longer a side than the insert", () => {
    const { v, insert } = withV(LEVEL, { ...choice, method: "cut-away" });
    nearPoint(startOf(v), [0, 50], 1e-9);
    nearPoint(endOf(v), [37.5, 0], 1e-9);
    near(lengthOf(v) - lengthOf(insert.left), 12.5, 1e-9);
  });

  test("cut away without an allowance is the true V", () => {
    const cut = withV(LEVEL, { ...choice, method: "cut-away", allowance: 0 });
    expect(cut.v).toEqual(withV(LEVEL, { ...choice, allowance: 0 }).v);
  });
});

describe("the V of the worked example (method 8)", () => {
  const { block } = toSweatshirt(DRAFTED, {
    ...choicesOf().alterations,
    vInsert: { ...TRUE, on: false },
  });

  test("has its top at T, its point at P, and sides of 60.6464", () => {
    const { v, insert } = withV(block.front, TRUE);
    nearPoint(endOf(v), [24.8436, 80.2257], 1e-3);
    nearPoint(startOf(v), [0, 135.55], 1e-9);
    near(lengthOf(v), 60.6464, 1e-4);
    near(lengthOf(insert.left), lengthOf(v), 1e-9);
    const [{ x, y }] = [minus(endOf(v), startOf(v))];
    near(degrees(Math.atan2(x, -y)), 24.183, 1e-3);
  });

  test("leaves a front neckline of 70.6941", () => {
    near(lengthOf(withV(block.front, TRUE).front.neckline), 70.6941, 1e-4);
  });

  test("cut away is sewn over 82.279 a side on an insert of 60.646: 21.633 short", () => {
    const { v, insert } = withV(block.front, CUT_AWAY);
    near(lengthOf(v), 82.279, 1e-3);
    near(lengthOf(insert.left), 60.646, 1e-3);
    near(lengthOf(v) - lengthOf(insert.left), 21.633, 1e-3);
  });
});

describe.each(OWN_BLOCKS)("a V in %s", (_, { front }) => {
  test("has a top that follows the neckline: twice its first 25.4, mirrored", () => {
    const { insert } = withV(front, TRUE);
    const [inner] = splitAt(front.neckline, 25.4);
    expect(insert.top).toEqual(joined(reversed(mirroredPath(inner)), inner));
    near(lengthOf(insert.top), 50.8, 1e-8);
  });

  test("fits its opening exactly by the true method", () => {
    const { v, insert, rails } = withV(front, TRUE);
    near(lengthOf(v), lengthOf(insert.left), 1e-9);
    near(lengthOf(v), lengthOf(insert.right), 1e-9);
    expect(rails).toEqual([]);
  });

  test("leaves the neckline without its first part, by the true method", () => {
    const left = lengthOf(withV(front, TRUE).front.neckline);
    near(left, lengthOf(front.neckline) - 25.4, 1e-8);
  });

  test("cut away is sewn alongside the drawn V, one allowance inside the garment", () => {
    const drawn = withV(front, TRUE).v;
    const sewn = withV(front, CUT_AWAY).v;
    const way = unit(minus(endOf(drawn), startOf(drawn)));
    for (const p of [startOf(sewn), endOf(sewn)]) {
      near(cross(way, minus(p, startOf(drawn))), 6.35, 1e-7);
    }
    expect(startOf(sewn).x).toBe(0);
  });

  test("keeps the front closed, begun by the V", () => {
    for (const choice of [TRUE, CUT_AWAY]) {
      const half = withV(front, choice).front;
      expectChained(edgesOfBody(half), 1e-9);
      expect(startOf(half.centre).x).toBe(0);
    }
  });

  test("is an insert that runs clockwise and closes", () => {
    const { insert } = withV(front, TRUE);
    expectChained([insert.top, insert.right, insert.left]);
    expect(areaOf(joined(insert.top, insert.right, insert.left))).toBeGreaterThan(0);
  });
});

describe("the V of any block of the maker's own", () => {
  test("is sewn equal by the true method, whatever is asked for", () => {
    const drawn = fc.record({
      block: someOwnBlock,
      halfWidth: fc.integer({ min: 5, max: 80 }),
      depth: fc.integer({ min: 10, max: 250 }),
      allowance: fc.integer({ min: 0, max: 15 }),
    });
    holdsFor(4501, drawn, ({ block, ...choice }) => {
      const { v, insert, allowance } = withV(block.front, { ...TRUE, ...choice });
      near(lengthOf(v), lengthOf(insert.left), 1e-8);
      expect(allowance).toBeLessThanOrEqual(choice.allowance);
      expect(startOf(v).y).toBeGreaterThanOrEqual(endOf(v).y + 10 - 1e-9);
    });
  });
});

describe("what is held of a V", () => {
  test("a width beyond 0.6 of the neckline", () => {
    const { rails, v } = withV(LEVEL, { ...TRUE, halfWidth: 80 });
    expect(rails).toEqual([
      {
        id: "rail-v-width",
        wanted: 80,
        used: 60,
        unit: "mm",
        stops: false,
        message:
          "The V cannot be 80\u00a0mm to each side; this neckline leaves room for 60\u00a0mm. Make it narrower.",
      },
    ]);
    near(endOf(v).x, 60, 1e-9);
  });

  test("a depth nearer than 60 to the hem", () => {
    const { rails, v } = withV(levelTo(150), { ...TRUE, depth: 250 });
    near(startOf(v).y, 90, 1e-9);
    expect(rails.map(({ id, used, message }) => [id, used, message])).toEqual([
      [
        "rail-v-depth",
        90,
        "The V cannot be 250\u00a0mm deep on this front; it is drawn 90\u00a0mm deep. Make it shallower.",
      ],
    ]);
  });

  // The neckline drops by 1 in 1 at the top, so its tangent meets the fold as far below the top as
  // the top lies out: a V of 10 there would cross the neckline.
  test("a depth so shallow that it would cross the neckline", () => {
    const falling: BodyEdges = { ...LEVEL, neckline: aPath("M0 40 L40 0 L100 0") };
    const { rails, v } = withV(falling, { ...TRUE, halfWidth: 20, depth: 5 });
    near(startOf(v).y, 50, 1e-9);
    expect(rails[0]?.id).toBe("rail-v-depth");
    near(rails[0]?.used ?? NaN, 10, 1e-9);
    expect(rails[0]?.message).toBe(
      "The V cannot be 5\u00a0mm deep on this front; it is drawn 10\u00a0mm deep. Make it deeper or narrower, or it would cross the neckline.",
    );
  });

  test("a point at least 10 below the top, where the neckline rises from the fold", () => {
    const rising: BodyEdges = { ...LEVEL, neckline: aPath("M0 0 L40 40 L100 0") };
    const { v } = withV(rising, { ...TRUE, halfWidth: 20, depth: 10 });
    near(startOf(v).y, endOf(v).y + 10, 1e-9);
  });

  test("a V for which least and most depth cross, which stops", () => {
    const { rails } = withV(levelTo(65), { ...TRUE, depth: 50 });
    const cut = rails.find(({ id }) => id === "rail-v-cut");
    expect([cut?.stops, cut?.wanted, cut?.used]).toEqual([true, 10, 5]);
    expect(cut?.message).toBe(
      "The V needs a depth of 10\u00a0mm and this front has room for 5\u00a0mm; it cannot be sewn as drawn. Make the V smaller, or the front longer.",
    );
  });

  // 0.5·T.x·cos β at T = (5, 0) and P = (0, 50).
  test("an allowance that would lie over the fold", () => {
    const { rails, allowance } = withV(LEVEL, { ...TRUE, halfWidth: 5, depth: 50, allowance: 15 });
    near(allowance, 0.5 * 5 * (50 / Math.hypot(50, 5)), 1e-9);
    expect(rails.map(({ id, message }) => [id, message])).toEqual([
      [
        "rail-v-allowance",
        "The V has no room for an allowance of 15\u00a0mm; it takes 2.5\u00a0mm. Make the allowance smaller or the V wider.",
      ],
    ]);
  });

  // 40 on the fold down to 20 above the hem, sin β = 20/√(20² + 90²): 8.68, less than over the fold.
  test("an allowance by cut-away that would bring the point to the hem", () => {
    const choice: Choice = { ...CUT_AWAY, halfWidth: 20, depth: 90, allowance: 15 };
    const { v, allowance, rails } = withV(levelTo(150), choice);
    near(allowance, (40 * 20) / Math.hypot(20, 90), 1e-9);
    near(startOf(v).y, 130, 1e-9);
    expect(rails.map(({ id }) => id)).toEqual(["rail-v-allowance"]);
    near(withV(levelTo(150), { ...choice, method: "true" }).allowance, 9.76, 0.01);
  });

  test("an allowance by cut-away where the hem leaves none at all", () => {
    expect(withV(levelTo(25), { ...CUT_AWAY, depth: 50 }).allowance).toBe(0);
  });

  test("a V cut away whose sewn line misses what is left of the neckline, which stops", () => {
    // Beyond its top the neckline runs on along the V itself, so it never comes 6 away from it.
    const beside: BodyEdges = { ...LEVEL, neckline: aPath("M0 0 L20 0 L40 -40") };
    const { rails, v } = withV(beside, { ...CUT_AWAY, halfWidth: 20, depth: 40, allowance: 6 });
    const cut = rails.find(({ id }) => id === "rail-v-cut");
    expect(cut?.stops).toBe(true);
    expect(cut?.used).toBe(0);
    expect(cut?.message).toBe(
      "The V cut away, sewn 6\u00a0mm inside its edge, no longer meets the neckline; the limit is 0\u00a0mm. Make the V smaller, or use the method “true”.",
    );
    nearPoint(endOf(v), [20, 0], 1e-9);
  });
});
