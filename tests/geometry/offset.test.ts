import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { directionAt, pointAt } from "../../src/geometry/curve.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { foldsAt, offsetPath } from "../../src/geometry/offset.ts";
import { endOf, reversed, startOf } from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import { apart, norm, out, type Point, point, stepped } from "../../src/geometry/point.ts";
import type { Cubic, Path, Segment } from "../../src/geometry/segment.ts";
import { turningOf } from "../../src/geometry/turning.ts";
import { ellipse } from "../reference/worked/fineCurves.ts";
import { aCubic, aPath, someGentleCubic } from "../support/curves.ts";
import {
  distanceTo,
  type Polyline,
  polylineOf,
  samplesOf,
  stretchesOf,
} from "../support/independent/lines.ts";
import { holdsFor } from "../support/law.ts";

/** The method's bound: 0.005 mm where it is tried, less than twice that between. */
const BOUND = 0.01;

const finely = (path: Path): Polyline => polylineOf(stretchesOf(toPathData(path)), 0.3);
const spotsOf = (path: Path) => samplesOf(stretchesOf(toPathData(path)), 2);

/** Where the point at t goes when it is moved outward by a, by the definition. */
const movedOut = (s: Segment, t: number, a: number): Point =>
  stepped(pointAt(s, t), out(directionAt(s, t)), a);

const TRIED = Array.from({ length: 61 }, (_, i) => i / 60);

/** Both ways: every moved point lies on the offset, every point of the offset at the distance. */
const expectOffset = (c: Cubic, a: number, within = BOUND): void => {
  const offset = offsetPath([c], a);
  const drawn = finely(offset);
  for (const t of TRIED) {
    const { x, y } = movedOut(c, t, a);
    expect(distanceTo(drawn, [x, y]), `t = ${t}, a = ${a}`).toBeLessThan(within);
  }
  if (foldsAt([c], a) !== null) return;
  const edge = finely([c]);
  for (const { spot } of spotsOf(offset)) {
    expect(distanceTo(edge, spot)).toBeLessThan(Math.abs(a) + within);
  }
};

describe("the offset of a straight", () => {
  test("lies outward: up, where the edge runs to the right, as far as it is moved", () => {
    expect(offsetPath(aPath("M0 0 L100 0"), 10)).toEqual(aPath("M0 -10 L100 -10"));
    expect(offsetPath(aPath("M0 0 L100 0"), -10)).toEqual(aPath("M0 10 L100 10"));
  });

  test("by nothing is itself", () => {
    const path = aPath("M0 0 L100 0");
    expect(offsetPath(path, 0)).toBe(path);
  });
});

describe("the offset of a curve", () => {
  test("of a circle is a circle, as much larger", () => {
    for (const by of [9.525, -9.525, 40]) {
      const moved = offsetPath(ellipse(100, 100), by);
      for (const s of moved) expect(norm(s.start)).toBeCloseTo(100 + by, 2);
    }
  });

  // do Carmo, exercise on parallel curves: the length grows by the turning times the distance.
  test("of an oval is longer by a whole turn times the distance", () => {
    const oval = ellipse(120, 70);
    const grown = lengthOf(offsetPath(oval, 6.35)) - lengthOf(oval);
    expect(grown).toBeCloseTo(2 * Math.PI * 6.35, 3);
  });

  test("is longer by the turning times the distance, on any gentle curve", () => {
    holdsFor(2401, fc.tuple(someGentleCubic, fc.integer({ min: 1, max: 12 })), ([c, a]) => {
      if (foldsAt([c], a) !== null) return;
      const wanted = lengthOf([c]) + a * turningOf([c]);
      expect(Math.abs(lengthOf(offsetPath([c], a)) - wanted)).toBeLessThan(0.05);
    });
  });

  test("strays by no more than a hundredth of a millimetre from the true one, both ways", () => {
    const by = fc.constantFrom(6.35, 9.525, -9.525, 15, -25.4);
    holdsFor(2402, fc.tuple(someGentleCubic, by), ([c, a]) => expectOffset(c, a), 30);
  });

  test.each([
    ["with no handle at the start", aCubic([0, 0], [0, 0], [40, 90], [100, 100])],
    ["with no handle at the end", aCubic([0, 0], [60, -10], [100, 100], [100, 100])],
    ["with no handles", aCubic([0, 0], [0, 0], [100, 50], [100, 50])],
    ["of a millimetre", aCubic([0, 0], [0.2, 0.1], [0.6, 0.1], [1, 0])],
    ["of three metres", aCubic([0, 0], [1200, 300], [1700, -300], [3000, 40])],
    ["that bends sharply", aCubic([0, 0], [60, 0], [60, 0], [60, 60])],
  ])("is true on a curve %s", (_, c) => {
    expectOffset(c, 9.525);
    expectOffset(c, -6.35);
  });

  test("out and back again is the curve itself within 0.02 mm, where it does not fold", () => {
    holdsFor(
      2403,
      someGentleCubic,
      (c) => {
        if (foldsAt([c], 9.525) !== null) return;
        const back = finely(offsetPath(offsetPath([c], 9.525), -9.525));
        for (const t of TRIED) {
          const { x, y } = pointAt(c, t);
          expect(distanceTo(back, [x, y])).toBeLessThan(2 * BOUND);
        }
      },
      30,
    );
  });

  // Slopes that are right leave little to mend: a quarter circle takes eight at most.
  test("takes no more than eight curves for a quarter circle, moved out or in", () => {
    const quarter = aCubic([100, 0], [100, 55.2285], [55.2285, 100], [0, 100]);
    for (const a of [9.525, -9.525, 25.4]) {
      expect(offsetPath([quarter], a).length).toBeLessThanOrEqual(8);
    }
  });

  test("takes no more than eight curves where a handle has no length", () => {
    for (const a of [9.525, -9.525]) {
      expect(
        offsetPath([aCubic([0, 0], [0, 0], [40, 90], [100, 100])], a).length,
      ).toBeLessThanOrEqual(8);
      expect(
        offsetPath([aCubic([0, 0], [0, 0], [80, 10], [200, 60])], a).length,
      ).toBeLessThanOrEqual(8);
    }
  });

  test("begins and ends square to the ends of the curve", () => {
    holdsFor(2404, someGentleCubic, (c) => {
      const moved = offsetPath([c], 9.525);
      expect(apart(startOf(moved), movedOut(c, 0, 9.525))).toBeLessThan(1e-9);
      expect(apart(endOf(moved), movedOut(c, 1, 9.525))).toBeLessThan(1e-9);
    });
  });
});

describe("the offset of a path with corners", () => {
  test("runs to a mitre where the offsets part: 10 across and 10 down of a square corner", () => {
    expect(offsetPath(aPath("M0 0 L100 0 L100 100"), 10)).toEqual(
      aPath("M0 -10 L100 -10 L110 -10 L110 0 L110 100"),
    );
  });

  test("is cut where the offsets overlap", () => {
    const inward = offsetPath(aPath("M0 0 L100 0 L100 100"), -10);
    expect(inward.map(({ end }) => end)).toEqual([
      { x: 90, y: 10 },
      { x: 90, y: 100 },
    ]);
  });

  // A mitre of an inside angle θ reaches a/sin(θ/2), which is 4a at θ = 2·asin(1/4) = 28.96°.
  test("is joined straight where the mitre would be longer than four allowances", () => {
    const spike = (inside: number) => {
      const half = (inside * Math.PI) / 360;
      const [x, y] = [100 * Math.cos(half), 100 * Math.sin(half)];
      return offsetPath(aPath(`M${100 - x} ${-y} L100 0 L${100 - x} ${y}`), 10);
    };
    expect(spike(29.1)).toHaveLength(4);
    expect(Math.max(...spike(29.1).map(({ end }) => end.x))).toBeGreaterThan(139);
    expect(spike(28.8)).toHaveLength(3);
    expect(Math.max(...spike(28.8).map(({ end }) => end.x))).toBeLessThan(104);
  });

  test("is joined straight where inward offsets are too short to meet", () => {
    const notch = offsetPath(aPath("M0 0 L100 0 L100 5"), -10);
    expect(notch.map(({ kind }) => kind)).toEqual(["line", "line", "line"]);
  });

  test("has no corner put in where two segments run on, out by no more than 0.05°", () => {
    const nearly = offsetPath(aPath("M0 0 L100 0 L200 0.08"), 10);
    expect(nearly).toHaveLength(2);
    const corner = offsetPath(aPath("M0 0 L100 0 L200 0.2"), 10);
    expect(corner).toHaveLength(4);
  });

  test("keeps its ends together all along", () => {
    const bent = aPath("M0 0 L60 0 C90 0 100 30 100 60 L140 60 C160 60 160 100 130 120");
    for (const a of [9.525, -9.525]) {
      const moved = offsetPath(bent, a);
      moved.slice(1).forEach((s, i) => {
        expect(apart(s.start, moved[i]?.end ?? point(NaN, NaN))).toBeLessThan(1e-9);
      });
    }
  });
});

describe("where an allowance folds on itself", () => {
  // y = x²/40 has a radius of 20 at its foot, (1 + y'²)^1.5 / |y''|.
  const hollow = aPath("M40 40 C13.3333333333 -13.3333333333 -13.3333333333 -13.3333333333 -40 40");

  test("is told with the tightest radius, where the allowance is as wide or wider", () => {
    expect(foldsAt(hollow, 21)).toBeCloseTo(20, 6);
    expect(foldsAt(hollow, 19)).toBeNull();
    expect(foldsAt(hollow, -21)).toBeNull();
    expect(foldsAt(reversed(hollow), -21)).toBeCloseTo(20, 6);
  });

  test("is nowhere on a straight or on the outer side of a bend", () => {
    expect(foldsAt(aPath("M0 0 L100 0"), 30)).toBeNull();
    expect(foldsAt(ellipse(10, 10), 30)).toBeNull();
    expect(foldsAt(ellipse(10, 10), -9)).toBeNull();
    expect(foldsAt(ellipse(10, 10), -11)).toBeCloseTo(10, 3);
  });

  test("on a curve with no handle is found beside its end", () => {
    expect(foldsAt(aPath("M0 0 C0 0 0 50 50 50"), 40)).not.toBeNull();
  });
});
