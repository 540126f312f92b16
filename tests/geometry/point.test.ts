import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  along,
  ang,
  apart,
  cross,
  dir,
  dot,
  minus,
  mirrored,
  norm,
  out,
  plus,
  point,
  stepped,
  times,
  turn,
  unit,
} from "../../src/geometry/point.ts";
import { somePoint } from "../support/curves.ts";
import { holdsFor } from "../support/law.ts";

const RIGHT = point(1, 0);
const DOWN = point(0, 1);
const someAngle = fc.double({ min: -3.14, max: 3.14, noNaN: true });

describe("the sums of points", () => {
  test("add, take away and stretch by the coordinate", () => {
    expect(plus(point(1, 2), point(10, 20))).toEqual({ x: 11, y: 22 });
    expect(minus(point(1, 2), point(10, 20))).toEqual({ x: -9, y: -18 });
    expect(times(point(1, 2), 3)).toEqual({ x: 3, y: 6 });
    expect(along(point(0, 0), point(10, 20), 0.3)).toEqual({ x: 3, y: 6 });
    expect(mirrored(point(3, 4))).toEqual({ x: -3, y: 4 });
  });

  test("measure by Pythagoras: 3, 4, 5", () => {
    expect(norm(point(3, 4))).toBe(5);
    expect(apart(point(1, 1), point(4, 5))).toBe(5);
    expect(unit(point(3, 4))).toEqual({ x: 0.6000000000000001, y: 0.8 });
  });

  test("step along a direction by a distance", () => {
    expect(stepped(point(1, 1), DOWN, 5)).toEqual({ x: 1, y: 6 });
    expect(stepped(point(1, 1), DOWN, -5)).toEqual({ x: 1, y: -4 });
  });
});

describe("angles with y pointing down", () => {
  test("a quarter turn clockwise on the page goes from right to down, and is positive", () => {
    expect(turn(RIGHT, DOWN)).toBeCloseTo(Math.PI / 2, 15);
    expect(turn(DOWN, RIGHT)).toBeCloseTo(-Math.PI / 2, 15);
    expect(ang(DOWN)).toBeCloseTo(Math.PI / 2, 15);
  });

  test("turning right round is π, never minus π", () => {
    expect(turn(RIGHT, point(-1, 0))).toBe(Math.PI);
  });

  test("outward is to the left of travel: up, where an edge runs to the right", () => {
    expect(out(RIGHT)).toEqual({ x: 0, y: -1 });
  });

  test("the direction at an angle has that angle and is one long", () => {
    holdsFor(1201, someAngle, (a) => {
      expect(ang(dir(a))).toBeCloseTo(a, 12);
      expect(norm(dir(a))).toBeCloseTo(1, 12);
    });
  });

  test("turning from one direction to another brings the one onto the other", () => {
    holdsFor(1202, fc.tuple(someAngle, someAngle), ([a, b]) => {
      const reached = dir(a + turn(dir(a), dir(b)));
      expect(apart(reached, dir(b))).toBeLessThan(1e-12);
    });
  });

  test("outward is square to travel and as long", () => {
    holdsFor(1203, somePoint(), (p) => {
      expect(dot(out(p), p)).toBeCloseTo(0, 9);
      expect(norm(out(p))).toBe(norm(p));
      expect(cross(p, out(p))).toBeLessThanOrEqual(0);
    });
  });
});
