import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { directionAt, pointAt } from "../../src/geometry/curve.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { nearestOnPath } from "../../src/geometry/nearest.ts";
import { apart, dot, minus, type Point, point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";
import { pointAlong } from "../../src/geometry/split.ts";
import { aPath, CUSP, HARD_CUBICS, scaled, somePath, somePoint } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

/** By trying 4,000 points a segment: no nearer than the true one. */
const triedDistance = (path: Path, q: Point): number =>
  Math.min(
    ...path.flatMap((s) => Array.from({ length: 4001 }, (_, i) => apart(pointAt(s, i / 4000), q))),
  );

describe("the nearest point of a path", () => {
  test("of a straight is straight across it, or its end", () => {
    const road = aPath("M0 0 L100 0");
    expect(nearestOnPath(road, point(30, 40))).toEqual({
      point: { x: 30, y: 0 },
      along: 30,
      away: 40,
    });
    expect(nearestOnPath(road, point(103, 4)).away).toBe(5);
  });

  test("of a point on the path is that point, at its length", () => {
    holdsFor(2001, fc.tuple(somePath(), fc.double({ min: 0, max: 1, noNaN: true })), (drawn) => {
      const [path, share] = drawn;
      const on = pointAlong(path, share * lengthOf(path));
      expect(nearestOnPath(path, on).away).toBeLessThan(1e-6);
    });
  });

  test("is no further than any of 4,000 points tried a segment", () => {
    holdsFor(
      2002,
      fc.tuple(somePath(), somePoint()),
      ([path, q]) => {
        expect(nearestOnPath(path, q).away).toBeLessThanOrEqual(triedDistance(path, q) + 1e-6);
      },
      30,
    );
  });

  test.each(HARD_CUBICS)("is found on %s", (_, c) => {
    for (const q of [point(50, 40), point(-20, -30), point(98, 2), point(0.5, 0.5)]) {
      expect(nearestOnPath([c], q).away).toBeLessThanOrEqual(triedDistance([c], q) + 1e-6);
    }
  });

  test("is the tip of a cusp for a point beyond it", () => {
    const tip = nearestOnPath([scaled(CUSP, 100)], point(-30, 0));
    expect(tip.away).toBeCloseTo(30, 6);
    expect(apart(tip.point, point(0, 0))).toBeLessThan(1e-6);
  });

  test("is square across the path where it is not an end", () => {
    const curve = aPath("M0 0 C60 80 120 80 180 0");
    const q = point(70, 20);
    const { point: foot, along } = nearestOnPath(curve, q);
    const whole = lengthOf(curve);
    expect(along).toBeGreaterThan(0);
    expect(along).toBeLessThan(whole);
    const t = Array.from({ length: 10001 }, (_, i) => i / 10000).reduce((best, u) =>
      apart(pointAt(curve[0], u), foot) < apart(pointAt(curve[0], best), foot) ? u : best,
    );
    expect(Math.abs(dot(directionAt(curve[0], t), minus(q, foot)))).toBeLessThan(0.02);
  });
});
