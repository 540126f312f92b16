import { describe, expect, test } from "vitest";
import { pointAt } from "../../../src/geometry/curve.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import { endOf, pathOf, startOf } from "../../../src/geometry/path.ts";
import { apart, cross, minus, type Point } from "../../../src/geometry/point.ts";
import {
  curved,
  nearestPlace,
  straightened,
  withoutPoint,
  withPoint,
} from "../../../src/trace/pen/mendPen.ts";
import {
  movedHandle,
  movedPoint,
  NO_LINE,
  type PenLine,
  penOfRuns,
  runsOfPen,
  segmentAfter,
  segmentsOf,
  withCorner,
  withRun,
} from "../../../src/trace/pen/pen.ts";
import { drafted, halfRing } from "../edges/shapes.ts";

const ring = halfRing(drafted().front);
const pen = penOfRuns(ring);

const pointOf = (line: PenLine, i: number) => {
  const p = line.points[i];
  if (!p) throw new Error(`no point ${i}`);
  return p;
};

describe("a drafted front as points", () => {
  test("comes back as the same runs, to the last digit", () => {
    expect(runsOfPen(pen)).toEqual(ring);
  });

  test("has a corner where each edge begins, and none between", () => {
    const corners = pen.points.filter(({ isCorner }) => isCorner).map(({ at }) => at);
    expect(corners).toEqual(ring.map(startOf));
  });

  test("begun anywhere has runs that start at its corners", () => {
    const turned = { ...pen, points: [...pen.points.slice(2), ...pen.points.slice(0, 2)] };
    const starts = runsOfPen(turned).map(startOf);
    for (const start of starts) expect(ring.map(startOf)).toContainEqual(start);
    expect(starts).toHaveLength(ring.length);
  });
});

describe("a point", () => {
  test("takes its handles along", () => {
    const i = pen.points.findIndex(({ before, after }) => before || after);
    const was = pointOf(pen, i);
    const now = pointOf(movedPoint(pen, i, { x: was.at.x + 3, y: was.at.y - 4 }), i);
    for (const side of ["before", "after"] as const) {
      const [a, b] = [was[side], now[side]];
      if (a && b) expect(minus(b, a)).toEqual({ x: expect.closeTo(3), y: expect.closeTo(-4) });
    }
  });

  test("added on the line leaves the line as it was", () => {
    const [, second] = segmentsOf(pen);
    const place = second ? nearestPlace(pen, pointAt(second, 0.4), 1) : null;
    if (!place) throw new Error("not on the line");
    const more = withPoint(pen, place);
    expect(more.points).toHaveLength(pen.points.length + 1);
    const whole = (line: PenLine): number =>
      segmentsOf(line).reduce((sum, segment) => sum + lengthOf(pathOf([segment])), 0);
    expect(whole(more)).toBeCloseTo(whole(pen), 6);
    expect(runsOfPen(more)).toHaveLength(ring.length);
  });

  test("added and taken away leaves nearly the line it was", () => {
    const i = pen.points.findIndex((_, k) => segmentAfter(pen, k)?.kind === "cubic");
    const segment = segmentAfter(pen, i);
    const back = withoutPoint(withPoint(pen, { after: i, t: 0.5 }), i + 1);
    const again = segmentAfter(back, i);
    if (!segment || !again) throw new Error("no segment");
    expect(apart(pointAt(again, 0.5), pointAt(segment, 0.5))).toBeLessThan(2);
    expect(back.points).toHaveLength(pen.points.length);
  });

  test("is not taken from a closed line of three", () => {
    const points = [0, 1, 2].map((i) => ({
      at: { x: i % 2, y: i },
      before: null,
      after: null,
      isCorner: true,
    }));
    const three = { points, isClosed: true };
    expect(withoutPoint(three, 0)).toBe(three);
  });

  test("far from the line is no place on it", () => {
    expect(nearestPlace(pen, { x: -500, y: -500 }, 5)).toBeNull();
  });
});

describe("a handle", () => {
  const smooth: PenLine = {
    points: [
      { at: { x: 0, y: 0 }, before: null, after: { x: 10, y: -10 }, isCorner: true },
      { at: { x: 50, y: 0 }, before: { x: 40, y: 0 }, after: { x: 70, y: 0 }, isCorner: false },
      { at: { x: 100, y: 0 }, before: { x: 90, y: 10 }, after: null, isCorner: true },
    ],
    isClosed: false,
  };

  test("turned where the line runs on turns the other, which keeps its length", () => {
    const { before, at, after } = pointOf(movedHandle(smooth, 1, "before", { x: 50, y: 10 }), 1);
    if (!before || !after) throw new Error("no handles");
    expect(apart(after, at)).toBeCloseTo(20);
    expect(cross(minus(after, at), minus(at, before))).toBeCloseTo(0);
    expect(after.y).toBeCloseTo(-20);
  });

  test("turned at a corner leaves the other alone", () => {
    const cornered = withCorner(smooth, 1, true);
    expect(pointOf(movedHandle(cornered, 1, "before", { x: 50, y: 10 }), 1).after).toEqual({
      x: 70,
      y: 0,
    });
  });

  test("of a point made smooth lies on one straight through it", () => {
    const bent = movedHandle(withCorner(smooth, 1, true), 1, "before", { x: 45, y: 30 });
    const { before, at, after } = pointOf(withCorner(bent, 1, false), 1);
    if (!before || !after) throw new Error("no handles");
    expect(cross(minus(after, at), minus(at, before))).toBeCloseTo(0);
  });

  test("is dropped where the line is made straight, and grows again where it is curved", () => {
    const flat = straightened(smooth, 0);
    expect(segmentAfter(flat, 0)?.kind).toBe("line");
    const again = segmentAfter(curved(flat, 0), 0);
    expect(again?.kind).toBe("cubic");
    if (again) expect(pointAt(again, 0.5)).toEqual({ x: expect.closeTo(25), y: expect.closeTo(0) });
  });
});

test("a line grown run by run and closed is the ring that it was grown from", () => {
  const grown = ring.slice(0, -1).reduce((line, run) => withRun(line, run, true), NO_LINE);
  const last = ring[ring.length - 1];
  const first: Point | undefined = ring[0] && startOf(ring[0]);
  if (!last || !first) throw new Error("no ring");
  expect(grown.points[0]?.at).toEqual(first);
  expect(grown.points.at(-1)?.at).toEqual(startOf(last));
  expect(grown.points.at(-1)?.at).not.toEqual(endOf(last));
  // The fold is straight: closing draws it.
  expect(runsOfPen({ ...grown, isClosed: true })).toEqual(ring);
});
