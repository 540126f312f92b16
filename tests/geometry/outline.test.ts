import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pointAt } from "../../src/geometry/curve.ts";
import { areaOf, boundsOf, crossesItself } from "../../src/geometry/outline.ts";
import {
  endOf,
  mapPath,
  mirroredPath,
  pathOf,
  reversed,
  startOf,
} from "../../src/geometry/path.ts";
import { apart, point } from "../../src/geometry/point.ts";
import { line, type Path } from "../../src/geometry/segment.ts";
import { ellipse, polygon } from "../reference/worked/fineCurves.ts";
import { aCubic, aPath, CUSP, scaled, someCubic, somePath } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const SQUARE = aPath("M0 0 L10 0 L10 10 L0 10 L0 0");
const OVAL = aPath(
  "M-60 0 C-60 -16 -33 -30 0 -30 C33 -30 60 -16 60 0 C60 16 33 30 0 30 C-33 30 -60 16 -60 0",
);
const closed = (path: Path): Path => pathOf([...path, line(endOf(path), startOf(path))]);
const someRing = somePath(300).map(closed);

describe("the area inside a closed path", () => {
  test("of a square of 10 mm, clockwise on the page, is 100 mm²", () => {
    expect(areaOf(SQUARE)).toBe(100);
    expect(areaOf(reversed(SQUARE))).toBe(-100);
  });

  // ∫ (1 - x²) dx from -1 to 1 = 4/3: under a parabola, two thirds of its rectangle (Archimedes).
  test("of a parabola's segment is two thirds of its rectangle", () => {
    const arch = aPath(
      "M-100 0 C-33.33333333333333 -133.33333333333334 33.33333333333333 -133.33333333333334 100 0",
    );
    expect(areaOf(closed(arch))).toBeCloseTo((2 / 3) * 200 * 100, 6);
  });

  test("of an ellipse is π times both half axes", () => {
    expect(areaOf(ellipse(90, 40)) / (Math.PI * 90 * 40)).toBeCloseTo(1, 9);
  });

  test("changes its sign in a mirror, and nothing else", () => {
    holdsFor(2201, someRing, (ring) => {
      expect(areaOf(mirroredPath(ring))).toBeCloseTo(-areaOf(ring), 4);
    });
  });

  test("grows by across times down where the ring does, wherever it lies", () => {
    holdsFor(2202, someRing, (ring) => {
      const grown = mapPath(ring, ({ x, y }) => point(1.1 * x + 40, 1.3 * y - 70));
      expect(areaOf(grown)).toBeCloseTo(1.1 * 1.3 * areaOf(ring), 4);
    });
  });

  test("is the sum of both halves where it is cut in two", () => {
    const top = aPath("M0 0 C30 -40 70 -40 100 0 L0 0");
    const bottom = aPath("M0 0 L100 0 C80 60 20 60 0 0");
    const whole = aPath("M0 0 C30 -40 70 -40 100 0 C80 60 20 60 0 0");
    expect(areaOf(top) + areaOf(bottom)).toBeCloseTo(areaOf(whole), 9);
  });
});

describe("the bounds of a path", () => {
  // x = 3t(1 - t): the largest is 3/4 of the handles' 100, half way.
  test("reach as far as the curve does, not as its handles do", () => {
    expect(boundsOf(aPath("M0 0 C100 0 100 50 0 50"))).toEqual({
      left: 0,
      top: 0,
      right: expect.closeTo(75, 12),
      bottom: 50,
    });
  });

  // (1 - t)² a + 2t(1 - t) b + t² c stands still at t = (a - b) / (a - 2b + c). Written as a cubic its
  // t³ is nil but for rounding, which far from the origin is no longer small.
  test("of a quadratic that was raised to a cubic are the quadratic's", () => {
    const ordinate = fc.double({ min: -1e5, max: 1e5, noNaN: true });
    holdsFor(2206, fc.tuple(ordinate, ordinate, ordinate), ([a, b, c]) => {
      const raised = aCubic([a, 0], [a + ((b - a) * 2) / 3, 0], [c + ((b - c) * 2) / 3, 0], [c, 0]);
      const t = (a - b) / (a - 2 * b + c);
      const still = t > 0 && t < 1 ? (1 - t) * (1 - t) * a + 2 * t * (1 - t) * b + t * t * c : a;
      const { left, right } = boundsOf([raised]);
      expect(Math.abs(left - Math.min(a, c, still))).toBeLessThan(1e-9);
      expect(Math.abs(right - Math.max(a, c, still))).toBeLessThan(1e-9);
    });
  });

  test("hold every point of the path, and touch it on all four sides", () => {
    holdsFor(2203, somePath(), (path) => {
      const box = boundsOf(path);
      const points = path.flatMap((s) =>
        Array.from({ length: 401 }, (_, i) => pointAt(s, i / 400)),
      );
      const xs = points.map(({ x }) => x);
      const ys = points.map(({ y }) => y);
      expect(box.left).toBeLessThanOrEqual(Math.min(...xs) + 1e-9);
      expect(box.bottom).toBeGreaterThanOrEqual(Math.max(...ys) - 1e-9);
      expect(Math.abs(box.left - Math.min(...xs))).toBeLessThan(0.05);
      expect(Math.abs(box.right - Math.max(...xs))).toBeLessThan(0.05);
      expect(Math.abs(box.top - Math.min(...ys))).toBeLessThan(0.05);
      expect(Math.abs(box.bottom - Math.max(...ys))).toBeLessThan(0.05);
    });
  });
});

describe("a closed path that crosses itself", () => {
  test("is found, and where", () => {
    const eight = aPath("M0 0 L100 100 L100 0 L0 100 L0 0");
    const found = crossesItself(eight);
    expect(apart(found ?? point(NaN, NaN), point(50, 50))).toBeLessThan(1e-9);
  });

  test("is found where a single curve makes a loop", () => {
    expect(crossesItself(closed(aPath("M0 0 C300 200 -200 200 100 0")))).not.toBeNull();
  });

  test("is found where one edge runs over another, straight or curved", () => {
    expect(crossesItself(aPath("M0 0 L100 0 L100 100 L50 -20 L0 100 L0 0"))).not.toBeNull();
    expect(crossesItself(aPath("M0 0 L100 0 L100 100 C80 -60 20 -60 0 100 L0 0"))).not.toBeNull();
  });

  test("is none of a square, a rounded one, or one that only comes near itself", () => {
    expect(crossesItself(SQUARE)).toBeNull();
    expect(crossesItself(OVAL)).toBeNull();
    expect(crossesItself(aPath("M0 0 L100 0 L100 100 C80 0.1 20 0.1 0 100 L0 0"))).toBeNull();
  });

  test("is none of a corner that is a cusp", () => {
    expect(crossesItself(closed([scaled(CUSP, 100)]))).toBeNull();
  });

  test("is none of any convex polygon", () => {
    const someHull = fc
      .uniqueArray(fc.integer({ min: 0, max: 359 }), { minLength: 3, maxLength: 12 })
      .map((angles) => [...angles].sort((a, b) => a - b))
      .map((angles) =>
        polygon(
          angles.map((a) =>
            point(90 * Math.cos((a * Math.PI) / 180), 60 * Math.sin((a * Math.PI) / 180)),
          ),
        ),
      );
    holdsFor(2204, someHull, (ring) => expect(crossesItself(ring)).toBeNull());
  });

  // 65,536 chords: held each against each this takes a minute, and the test would run out of time.
  test("is none of an oval drawn with a thousand curves", () => {
    expect(crossesItself(ellipse(60, 30))).toBeNull();
  });

  test("is one still when it is turned round or mirrored", () => {
    holdsFor(
      2205,
      someCubic(200).map((c) => closed([c])),
      (ring) => {
        const crosses = crossesItself(ring) !== null;
        expect(crossesItself(mirroredPath(ring)) !== null).toBe(crosses);
      },
    );
  });
});
