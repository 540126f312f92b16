import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { derivativeAt, reversedSegment } from "../../src/geometry/curve.ts";
import {
  cubicLength,
  lengthOf,
  parameterAtLength,
  segmentLength,
} from "../../src/geometry/length.ts";
import { apart, norm } from "../../src/geometry/point.ts";
import type { Cubic } from "../../src/geometry/segment.ts";
import {
  aCubic,
  aLine,
  aPath,
  CUSP,
  HARD_CUBICS,
  scaled,
  someCubic,
  someCubicOfAnySize,
  someNearCusp,
  someShare,
} from "../support/curves.ts";
import { simpson } from "../support/independent/simpson.ts";
import { holdsFor } from "../support/law.ts";

/** By a rule of another kind than the program's Gauss-Legendre: Simpson's, on halved panels. */
const bySimpson = (c: Cubic): number => simpson((t) => norm(derivativeAt(c, t)), 0, 1, 1e-9);

/** y = x² from 0 to 1. */
const PARABOLA = aCubic([0, 0], [1 / 3, 0], [2 / 3, 1 / 3], [1, 1]);

describe("the length of a curve with a closed form", () => {
  // ∫√(1 + 4x²) dx, any textbook of calculus.
  test.each([0.001, 1, 100, 3000])("of y = x²/a over 0 to a, at a = %s mm", (size) => {
    const wanted = (Math.sqrt(5) / 2 + Math.asinh(2) / 4) * size;
    expect(Math.abs(segmentLength(scaled(PARABOLA, size)) - wanted)).toBeLessThan(1e-9);
  });

  // x = t², y = t³: ds = |t|√(4 + 9t²) dt, so 2(13√13 - 8)/27 from t = -1 to 1, through a cusp.
  test.each([1, 100, 1500])("of the cusp x = t², y = t³, at a size of %s mm", (size) => {
    const wanted = ((2 * (13 * Math.sqrt(13) - 8)) / 27) * size;
    expect(Math.abs(segmentLength(scaled(CUSP, size)) - wanted)).toBeLessThan(1e-9);
  });

  // x = 6t - 15t² + 10t³ turns back at 6 - 30t + 30t² = 0, that is at t = (5 ± √5)/10.
  test("of a way forth and back on a line is the way there, back, and there again", () => {
    const x = (t: number): number => 6 * t - 15 * t * t + 10 * t * t * t;
    const [first, second] = [(5 - Math.sqrt(5)) / 10, (5 + Math.sqrt(5)) / 10];
    const wanted = x(first) + (x(first) - x(second)) + (1 - x(second));
    const found = segmentLength(aCubic([0, 0], [200, 0], [-100, 0], [100, 0]));
    expect(Math.abs(found - 100 * wanted)).toBeLessThan(1e-9);
  });

  test("of a straight drawn as a cubic is the distance of its ends, however its handles lie", () => {
    expect(segmentLength(aCubic([0, 0], [1, 2], [29, 58], [30, 60]))).toBeCloseTo(
      Math.hypot(30, 60),
      10,
    );
    expect(segmentLength(aCubic([0, 0], [0, 0], [30, 60], [30, 60]))).toBeCloseTo(
      Math.hypot(30, 60),
      10,
    );
  });

  test("of a line is the distance of its ends: 3, 4, 5", () => {
    expect(segmentLength(aLine([1, 1], [301, 401]))).toBe(500);
  });

  test("of a curve that is one point is nought", () => {
    expect(segmentLength(aCubic([7, 8], [7, 8], [7, 8], [7, 8]))).toBe(0);
  });
});

describe("the length of a curve against Simpson's rule", () => {
  test.each(HARD_CUBICS)("agrees to a millionth of a millimetre on %s", (_, c) => {
    expect(Math.abs(segmentLength(c) - bySimpson(c))).toBeLessThan(1e-6);
  });

  test("agrees to a ten-millionth on any curve from 1 mm to 3 m", () => {
    holdsFor(1101, someCubicOfAnySize, (c) => {
      expect(Math.abs(segmentLength(c) - bySimpson(c))).toBeLessThan(1e-7);
    });
  });

  test("agrees to a ten-millionth however near to a cusp", () => {
    holdsFor(1102, someNearCusp, (c) => {
      expect(Math.abs(segmentLength(c) - bySimpson(c))).toBeLessThan(1e-7);
    });
  });
});

describe("the length of any curve", () => {
  test("is no less than its chord and no more than the way over its handles", () => {
    holdsFor(1103, someCubic(), (c) => {
      const length = segmentLength(c);
      const over =
        apart(c.start, c.startHandle) +
        apart(c.startHandle, c.endHandle) +
        apart(c.endHandle, c.end);
      expect(length).toBeGreaterThanOrEqual(apart(c.start, c.end) - 1e-9);
      expect(length).toBeLessThanOrEqual(over + 1e-9);
    });
  });

  test("is that of its parts together, wherever it is cut", () => {
    holdsFor(1104, fc.tuple(fc.oneof(someCubic(), someNearCusp), someShare), ([c, t]) => {
      const parts = cubicLength(c, 0, t) + cubicLength(c, t, 1);
      expect(Math.abs(parts - cubicLength(c))).toBeLessThan(1e-8);
    });
  });

  test("is the same walked backwards", () => {
    holdsFor(1105, someCubic(), (c) => {
      expect(Math.abs(segmentLength(reversedSegment(c)) - segmentLength(c))).toBeLessThan(1e-8);
    });
  });

  test("grows as its size grows", () => {
    holdsFor(1106, someCubic(100), (c) => {
      expect(Math.abs(segmentLength(scaled(c, 7)) - 7 * segmentLength(c))).toBeLessThan(1e-8);
    });
  });

  test("adds up along a path", () => {
    expect(lengthOf(aPath("M0 0 L3 4 L3 10 C3 10 3 20 3 20"))).toBeCloseTo(5 + 6 + 10, 10);
  });
});

describe("the parameter at a length", () => {
  const onCurves = fc.tuple(fc.oneof(someCubic(), someCubic(1), someNearCusp), someShare);

  test("is where the curve has run that length", () => {
    holdsFor(1107, onCurves, ([c, share]) => {
      const whole = segmentLength(c);
      const t = parameterAtLength(c, share * whole);
      expect(Math.abs(cubicLength(c, 0, t) - share * whole)).toBeLessThan(1e-8);
    });
  });

  test.each(HARD_CUBICS)("is found on %s", (_, c) => {
    const whole = segmentLength(c);
    for (const share of [0.001, 0.25, 0.5, 0.75, 0.999]) {
      const t = parameterAtLength(c, share * whole);
      expect(Math.abs(cubicLength(c, 0, t) - share * whole)).toBeLessThan(1e-8);
    }
  });

  test("is held to the ends, before the start and beyond the end", () => {
    expect(parameterAtLength(PARABOLA, -1)).toBe(0);
    expect(parameterAtLength(PARABOLA, 1000)).toBe(1);
  });

  test("on a line is the share of its length", () => {
    expect(parameterAtLength(aLine([0, 0], [30, 40]), 20)).toBeCloseTo(0.4, 12);
  });
});
