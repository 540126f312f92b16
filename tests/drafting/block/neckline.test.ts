import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawNecklines } from "../../../src/drafting/block/neckline.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { startOf, startTangent } from "../../../src/geometry/path.ts";
import { dir, type Point, point, stepped } from "../../../src/geometry/point.ts";
import { cubic, type Path } from "../../../src/geometry/segment.ts";
import { radians } from "../../../src/geometry/units.ts";
import { near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";

/** The method's section 8: a neck base of 372 and a quarter chest of 275. */
const worked = drawNecklines(372, 275);

/** A whole neckline from its points as section 8 prints them. */
const whole = (a: Point, b: Point, c: Point): Path => [cubic(a, b, c, point(92, -11.7341))];
const BACK = whole(point(0, 16), point(64.4, 16), point(85.0428, 6.3903));
const FRONT = whole(point(0, 84.75), point(51.52, 84.75), point(74.7116, 33.3037));

const someNeck = fc.tuple(fc.integer({ min: 250, max: 520 }), fc.integer({ min: 190, max: 450 }));

describe("the necklines of the block", () => {
  test("begin on the fold 16 and 84.75 below the nape (method 8, 3–5)", () => {
    nearPoint(startOf(worked.back), [0, 16], 1e-9);
    nearPoint(startOf(worked.front), [0, 84.75], 1e-9);
  });

  test("end in the raglan corners RB and RF (method 8, 6)", () => {
    nearPoint(worked.backCorner, [79.1167, 3.6692], 1e-4);
    nearPoint(worked.frontCorner, [73.2743, 30.7953], 1e-4);
  });

  test("end 0.055 and 0.125 of the neck base before the neck point (method 2.2, 6)", () => {
    near(lengthOf(BACK) - lengthOf(worked.back), 20.46, 1e-3);
    near(lengthOf(FRONT) - lengthOf(worked.front), 46.5, 1e-3);
  });

  test("leave the fold square to it, on every body", () => {
    holdsFor(3101, someNeck, ([neckBase, quarter]) => {
      const { front, back } = drawNecklines(neckBase, quarter);
      for (const line of [front, back]) {
        expect(startOf(line).x).toBe(0);
        expect(startTangent(line).y).toBeCloseTo(0, 12);
        expect(startTangent(line).x).toBeGreaterThan(0);
      }
    });
  });

  // Drawn on to the neck point both end along the same line, square to the shoulder of 21°, so
  // that the neckline runs on over the shoulder.
  test("point at the neck point along the same line, square to the shoulder", () => {
    const square = dir(radians(90 + 21));
    for (const [handle, depth] of [
      [point(85.0428, 6.3903), 27.7341 * 0.7],
      [point(74.7116, 33.3037), 96.4841 * 0.5],
    ] as const) {
      const from = stepped(point(92, -11.7341), square, depth);
      nearPoint(from, [handle.x, handle.y], 1e-3);
    }
  });

  test("stand 30 outside the neck base", () => {
    expect(worked.widened).toBeCloseTo(30, 9);
    expect(worked.rails).toEqual([]);
  });
});

describe("a neckline wider than the chest allows", () => {
  const held = drawNecklines(372, 160);

  test("is held to 0.55 of the quarter chest, and says so: 92 and 88 mm", () => {
    const [rail] = held.rails;
    expect(rail?.id).toBe("rail-neck-width");
    expect(rail?.wanted).toBeCloseTo(92, 9);
    expect(rail?.used).toBeCloseTo(88, 9);
    expect(rail?.stops).toBe(false);
    expect(rail?.message).toBe(
      "The neckline would reach 92\u00a0mm to each side; the chest leaves room for 88\u00a0mm. Measure neck base and chest again, or give the chest more ease.",
    );
  });

  test("counts what it was widened by from the neck base, as held", () => {
    expect(held.widened).toBeCloseTo(26, 9);
  });
});
