import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { drawRaglan } from "../../../src/drafting/block/raglanLine.ts";
import { endDirection, startDirection } from "../../../src/geometry/curve.ts";
import { apart, dir, minus, point, turn } from "../../../src/geometry/point.ts";
import { degrees } from "../../../src/geometry/units.ts";
import { near, nearPoint } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";

const BODY = { bow: 4, start: 0.36, end: 0.24 };
const someEnds = fc.record({
  x: fc.integer({ min: 120, max: 400 }),
  y: fc.integer({ min: 120, max: 400 }),
  slope: fc.integer({ min: -40, max: 40 }),
});

describe("a raglan line", () => {
  // Method 8, 12–13: e = (0.999989, 0.004615).
  test("from RF to U has the handles of the worked example", () => {
    const e = point(0.999989, 0.004615);
    const line = drawRaglan(point(73.274325, 30.795276), point(275, 247), e, BODY);
    nearPoint(line.startHandle, [151.148, 103.374], 1e-3);
    nearPoint(line.endHandle, [204.033, 246.672], 1e-3);
  });

  test("leaves the neck 4° above the straight way, and arrives along the way it is told", () => {
    holdsFor(3201, someEnds, ({ x, y, slope }) => {
      const e = dir((slope * Math.PI) / 180);
      const line = drawRaglan(point(0, 0), point(x, y), e, BODY);
      const chord = minus(line.end, line.start);
      near(degrees(turn(chord, startDirection(line))), -4, 1e-9);
      expect(apart(endDirection(line), e)).toBeLessThan(1e-9);
    });
  });

  test("has handles of 0.36 and 0.24 of the straight way", () => {
    holdsFor(3202, someEnds, ({ x, y }) => {
      const line = drawRaglan(point(0, 0), point(x, y), point(1, 0), BODY);
      const way = apart(line.start, line.end);
      near(apart(line.start, line.startHandle), 0.36 * way, 1e-9);
      near(apart(line.end, line.endHandle), 0.24 * way, 1e-9);
    });
  });

  test("is the same moved and turned with its ends", () => {
    const line = drawRaglan(point(0, 0), point(200, 220), point(1, 0), BODY);
    const moved = drawRaglan(point(7, -9), point(207, 211), point(1, 0), BODY);
    nearPoint(moved.startHandle, [line.startHandle.x + 7, line.startHandle.y - 9], 1e-9);
  });
});
