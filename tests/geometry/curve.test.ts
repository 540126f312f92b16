import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  asCubic,
  chordOf,
  derivativeAt,
  directionAt,
  endDirection,
  endingAt,
  mapSegment,
  pointAt,
  reversedSegment,
  secondDerivativeAt,
  splitSegment,
  startDirection,
  startingAt,
  thirdDerivative,
} from "../../src/geometry/curve.ts";
import { segmentLength } from "../../src/geometry/length.ts";
import { apart, minus, norm, point, times } from "../../src/geometry/point.ts";
import {
  aCubic,
  aLine,
  HARD_CUBICS,
  innerShare,
  someCubic,
  someNearCusp,
  someShare,
} from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

/** y = x² from 0 to 1. */
const PARABOLA = aCubic([0, 0], [1 / 3, 0], [2 / 3, 1 / 3], [1, 1]);
const onCurve = fc.tuple(someCubic(), someShare);

describe("a point of a cubic", () => {
  test("of y = x² lies at (t, t²)", () => {
    for (const t of [0, 0.2, 0.5, 1]) {
      expect(pointAt(PARABOLA, t).x).toBeCloseTo(t, 15);
      expect(pointAt(PARABOLA, t).y).toBeCloseTo(t * t, 15);
    }
  });

  test("is its start at 0 and its end at 1, to the last place", () => {
    holdsFor(1001, someCubic(), (c) => {
      expect(pointAt(c, 0)).toEqual(c.start);
      expect(pointAt(c, 1)).toEqual(c.end);
    });
  });

  test("of a line drawn as a cubic lies where it lies on the line", () => {
    const straight = aLine([10, 20], [400, -70]);
    for (const t of [0.1, 0.5, 0.83]) {
      expect(apart(pointAt(asCubic(straight), t), pointAt(straight, t))).toBeLessThan(1e-12);
    }
  });
});

describe("the derivatives of a cubic", () => {
  test("of y = x² are (1, 2t), (0, 2) and nought", () => {
    expect(derivativeAt(PARABOLA, 0.3).x).toBeCloseTo(1, 14);
    expect(derivativeAt(PARABOLA, 0.3).y).toBeCloseTo(0.6, 14);
    expect(secondDerivativeAt(PARABOLA, 0.3).y).toBeCloseTo(2, 14);
    expect(norm(thirdDerivative(PARABOLA))).toBeCloseTo(0, 13);
  });

  // Central differences: out by h²/6 of the next but one, which of a cubic is a constant.
  test("are what differences of its points come to", () => {
    const h = 1e-4;
    holdsFor(1002, fc.tuple(someCubic(), innerShare), ([c, t]) => {
      const first = times(minus(pointAt(c, t + h), pointAt(c, t - h)), 1 / (2 * h));
      const second = times(minus(derivativeAt(c, t + h), derivativeAt(c, t - h)), 1 / (2 * h));
      const third = times(
        minus(secondDerivativeAt(c, t + h), secondDerivativeAt(c, t - h)),
        1 / (2 * h),
      );
      expect(apart(first, derivativeAt(c, t))).toBeLessThan(1e-3);
      expect(apart(second, secondDerivativeAt(c, t))).toBeLessThan(1e-3);
      expect(apart(third, thirdDerivative(c))).toBeLessThan(1e-3);
    });
  });

  test("of a line are its chord, and nought", () => {
    expect(derivativeAt(aLine([1, 1], [4, 5]), 0.7)).toEqual({ x: 3, y: 4 });
    expect(secondDerivativeAt(aLine([1, 1], [4, 5]), 0.7)).toEqual({ x: 0, y: 0 });
    expect(chordOf(PARABOLA)).toEqual({ x: 1, y: 1 });
  });
});

describe("the direction of a segment at its ends", () => {
  const along = (x: number, y: number) => ({
    x: expect.closeTo(x / Math.hypot(x, y), 12),
    y: expect.closeTo(y / Math.hypot(x, y), 12),
  });

  test("is that of the handle", () => {
    const c = aCubic([0, 0], [30, 40], [100, 0], [100, 50]);
    expect(startDirection(c)).toEqual(along(30, 40));
    expect(endDirection(c)).toEqual(along(0, 1));
  });

  test("is to the other handle where its own has no length", () => {
    const c = aCubic([0, 0], [0, 0], [40, 30], [40, 30]);
    expect(startDirection(c)).toEqual(along(4, 3));
    expect(endDirection(c)).toEqual(along(4, 3));
    expect(startDirection(aCubic([0, 0], [0, 0], [10, 0], [10, 10]))).toEqual(along(1, 0));
    expect(endDirection(aCubic([0, 0], [10, 0], [10, 10], [10, 10]))).toEqual(along(0, 1));
  });

  test("is that of the chord where both handles lie on the one end", () => {
    const c = aCubic([0, 0], [0, 0], [0, 0], [30, -40]);
    expect(startDirection(c)).toEqual(along(3, -4));
    expect(endDirection(aCubic([0, 0], [30, -40], [30, -40], [30, -40]))).toEqual(along(3, -4));
  });

  test("of a line is its own", () => {
    expect(startDirection(aLine([1, 1], [4, 5]))).toEqual(along(3, 4));
    expect(endDirection(aLine([1, 1], [4, 5]))).toEqual(along(3, 4));
    expect(directionAt(aLine([1, 1], [4, 5]), 0.5)).toEqual(along(3, 4));
  });

  // A handle of a ten-millionth is a direction still; of a hundred-millionth of that it is none.
  test("still follows a handle of a ten-millionth, but not one below a thousand-millionth", () => {
    expect(startDirection(aCubic([0, 0], [1e-7, 0], [0, 9], [9, 9]))).toEqual(along(1, 0));
    expect(startDirection(aCubic([0, 0], [1e-10, 0], [0, 9], [9, 9]))).toEqual(along(0, 1));
  });

  test("is where its points near the end lie, handles of no length too", () => {
    for (const [name, c] of HARD_CUBICS) {
      if (name === "one point") continue;
      if (name === "a handle of a ten-millionth") continue;
      const near = minus(pointAt(c, 1e-5), c.start);
      expect(apart(times(near, 1 / norm(near)), startDirection(c)), name).toBeLessThan(0.02);
    }
  });
});

describe("the direction of a segment in the middle", () => {
  test("is one long and along its derivative", () => {
    holdsFor(1003, onCurve, ([c, t]) => {
      const direction = directionAt(c, t);
      expect(norm(direction)).toBeCloseTo(1, 9);
      const pace = derivativeAt(c, t);
      if (t > 0 && t < 1 && norm(pace) > 1) {
        expect(apart(direction, times(pace, 1 / norm(pace)))).toBeLessThan(1e-9);
      }
    });
  });
});

describe("splitting a segment", () => {
  test("leaves both parts on the curve", () => {
    holdsFor(1004, fc.tuple(someCubic(), innerShare, someShare), ([c, t, u]) => {
      const [first, second] = splitSegment(c, t);
      expect(apart(pointAt(first, u), pointAt(c, t * u))).toBeLessThan(1e-9);
      expect(apart(pointAt(second, u), pointAt(c, t + (1 - t) * u))).toBeLessThan(1e-9);
    });
  });

  test("keeps its length and its direction at the cut, cusps too", () => {
    holdsFor(1005, fc.tuple(fc.oneof(someCubic(), someNearCusp), innerShare), ([c, t]) => {
      const [first, second] = splitSegment(c, t);
      expect(segmentLength(first) + segmentLength(second)).toBeCloseTo(segmentLength(c), 7);
      expect(first.end).toEqual(second.start);
    });
  });

  test("of a line gives two lines", () => {
    const [first, second] = splitSegment(aLine([0, 0], [10, 20]), 0.3);
    expect([first.kind, second.kind, first.end]).toEqual(["line", "line", { x: 3, y: 6 }]);
  });
});

describe("a segment drawn otherwise", () => {
  test("backwards is the same points from the other end", () => {
    holdsFor(1006, onCurve, ([c, t]) => {
      expect(apart(pointAt(reversedSegment(c), t), pointAt(c, 1 - t))).toBeLessThan(1e-9);
    });
    expect(reversedSegment(aLine([0, 0], [1, 2]))).toEqual(aLine([1, 2], [0, 0]));
  });

  test("by an affine move is moved point by point", () => {
    const move = ({ x, y }: { x: number; y: number }) => point(2 * x - y + 3, 0.5 * y + x - 7);
    holdsFor(1007, onCurve, ([c, t]) => {
      expect(apart(pointAt(mapSegment(c, move), t), move(pointAt(c, t)))).toBeLessThan(1e-9);
    });
  });

  test("from another start or to another end keeps the rest", () => {
    const c = aCubic([0, 0], [1, 0], [2, 3], [3, 3]);
    expect(startingAt(c, point(-1, 0))).toEqual(aCubic([-1, 0], [1, 0], [2, 3], [3, 3]));
    expect(endingAt(c, point(9, 3))).toEqual(aCubic([0, 0], [1, 0], [2, 3], [9, 3]));
  });

  test("as a cubic is itself where it is one", () => {
    expect(asCubic(PARABOLA)).toBe(PARABOLA);
  });
});
