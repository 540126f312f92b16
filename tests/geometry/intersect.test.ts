import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pointAt } from "../../src/geometry/curve.ts";
import { crossingNearest, meeting, sharesOfCrossing } from "../../src/geometry/intersect.ts";
import { pathOf } from "../../src/geometry/path.ts";
import { along, apart, type Point, point } from "../../src/geometry/point.ts";
import { cubic } from "../../src/geometry/segment.ts";
import { aLine, aPath, somePath, somePoint } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const chord = (from: readonly [number, number], to: readonly [number, number]) => ({
  from: point(...from),
  to: point(...to),
});

describe("where two straights cross", () => {
  test("is told in shares of both", () => {
    expect(sharesOfCrossing(chord([0, 0], [10, 0]), chord([4, -5], [4, 15]))).toEqual([0.4, 0.25]);
  });

  test("is nowhere where they are parallel or miss", () => {
    expect(sharesOfCrossing(chord([0, 0], [10, 0]), chord([0, 1], [10, 1]))).toBeNull();
    expect(sharesOfCrossing(chord([0, 0], [10, 0]), chord([11, -1], [11, 1]))).toBeNull();
  });

  test("made longer both ways is told as a point, however far", () => {
    expect(meeting(point(0, 0), point(1, 0), point(100, 50), point(0, 1))).toEqual({
      x: 100,
      y: 0,
    });
    expect(meeting(point(0, 0), point(1, 0), point(5, 5), point(2, 0))).toBeNull();
  });
});

describe("the crossing of two paths", () => {
  // The parabola y = x²/100 and the level y = 25 meet at x = ±50.
  const parabola = aPath(
    "M-100 100 C-33.333333333 -33.333333333 33.333333333 -33.333333333 100 100",
  );
  const level = aPath("M-200 25 L200 25");

  test("is the one nearest the named point", () => {
    const right = crossingNearest(parabola, level, point(90, 0));
    const left = crossingNearest(parabola, level, point(-90, 0));
    expect(apart(right?.point ?? point(0, 0), point(50, 25))).toBeLessThan(1e-6);
    expect(apart(left?.point ?? point(0, 0), point(-50, 25))).toBeLessThan(1e-6);
  });

  test("is none where they do not meet", () => {
    expect(crossingNearest(parabola, aPath("M-200 -1 L200 -1"), point(0, 0))).toBeNull();
  });

  test("tells which segment of each it lies on, and where", () => {
    const bent = aPath("M0 -50 L0 0 L100 100");
    const found = crossingNearest(bent, aPath("M0 60 L50 60 L50 40 L200 40"), point(40, 40));
    expect(found?.on.index).toBe(1);
    expect(found?.other.index).toBe(1);
    expect(found?.on.t).toBeCloseTo(0.5, 12);
    expect(found?.other.t).toBeCloseTo(0.5, 12);
  });

  // An edge traced in five hundred parts is 32,000 chords: each held against each took seconds.
  test("of two edges in many short parts is found at once", () => {
    const inParts = (from: Point, to: Point) =>
      pathOf(
        Array.from({ length: 500 }, (_, i) => {
          const at = (n: number) => along(from, to, n / 1500);
          return cubic(at(3 * i), at(3 * i + 1), at(3 * i + 2), at(3 * i + 3));
        }),
      );
    const down = inParts(point(0, 0), point(300, 400));
    const across = inParts(point(0, 300), point(301, 301));
    const began = performance.now();
    const found = crossingNearest(down, across, point(225, 300));
    expect(performance.now() - began).toBeLessThan(2000);
    // y = 4x/3 and y = 300 + x/301.
    const x = 300 / (4 / 3 - 1 / 301);
    expect(found?.point.x).toBeCloseTo(x, 9);
    expect(found?.point.y).toBeCloseTo((4 / 3) * x, 9);
  });

  test("lies on both paths, wherever one is found", () => {
    holdsFor(2101, fc.tuple(somePath(), somePath(), somePoint()), ([one, other, near]) => {
      const found = crossingNearest(one, other, near);
      if (!found) return;
      const onOne = pointAt(one[found.on.index] ?? one[0], found.on.t);
      const onOther = pointAt(other[found.other.index] ?? other[0], found.other.t);
      expect(apart(onOne, onOther)).toBeLessThan(1e-6);
    });
  });

  test("is found wherever a curve is crossed by a straight through a point of it", () => {
    holdsFor(
      2102,
      fc.tuple(somePath(), fc.double({ min: 0.1, max: 0.9, noNaN: true })),
      (drawn) => {
        const [path, t] = drawn;
        const on = pointAt(path[0], t);
        const across = pathOf([aLine([on.x - 17, on.y - 900], [on.x + 17, on.y + 900])]);
        const found = crossingNearest(path, across, on);
        expect(apart(found?.point ?? point(NaN, NaN), on)).toBeLessThan(1);
      },
    );
  });
});
