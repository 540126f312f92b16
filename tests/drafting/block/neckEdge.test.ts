import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cornerOf, drawNeckEdge, type NeckEdgeEnds } from "../../../src/drafting/block/neckEdge.ts";
import { endDirection, startDirection } from "../../../src/geometry/curve.ts";
import { apart, dir, minus, point, turn } from "../../../src/geometry/point.ts";
import { degrees, radians } from "../../../src/geometry/units.ts";
import { aPath } from "../../support/curves.ts";
import { near } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";

/** Ends as a sleeve has them: from the back's corner on the left to the front's on the right. */
const endsWith = (backCorner: number, frontCorner: number): NeckEdgeEnds => ({
  back: point(-20, -250),
  front: point(45, -246),
  backRaglan: dir(radians(-55)),
  frontRaglan: dir(radians(54)),
  backCorner: radians(backCorner),
  frontCorner: radians(frontCorner),
});

describe("the corner of two edges", () => {
  test("is 90° where they are square, turning clockwise, and minus 90° the other way", () => {
    near(degrees(cornerOf(aPath("M0 0 L10 0"), aPath("M10 0 L10 10"))), 90, 1e-12);
    near(degrees(cornerOf(aPath("M0 0 L10 0"), aPath("M10 0 L10 -10"))), -90, 1e-12);
    near(degrees(cornerOf(aPath("M0 0 L10 0"), aPath("M10 0 L20 0"))), 0, 1e-12);
  });
});

describe("the sleeve's neck edge", () => {
  // Two pieces joined along a seam run straight on where their corners add to 180° (method 2.6).
  test("makes 180° at both seams with the corners of the body", () => {
    const corners = fc.tuple(fc.integer({ min: 70, max: 130 }), fc.integer({ min: 70, max: 130 }));
    holdsFor(3301, corners, ([backCorner, frontCorner]) => {
      const ends = endsWith(backCorner, frontCorner);
      const edge = drawNeckEdge(ends);
      const atBack = degrees(turn(ends.backRaglan, startDirection(edge)));
      const atFront = degrees(turn(endDirection(edge), ends.frontRaglan));
      const off = degrees(turn(minus(edge.end, edge.start), startDirection(edge)));
      if (Math.abs(off) < 69.9) near(atBack + backCorner, 180, 1e-9);
      const offFront = degrees(turn(minus(edge.end, edge.start), endDirection(edge)));
      if (Math.abs(offFront) < 69.9) near(atFront + frontCorner, 180, 1e-9);
    });
  });

  test("runs between its ends with handles of 0.36 of its chord", () => {
    const edge = drawNeckEdge(endsWith(90, 90));
    const chord = apart(edge.start, edge.end);
    near(apart(edge.start, edge.startHandle), 0.36 * chord, 1e-9);
    near(apart(edge.end, edge.endHandle), 0.36 * chord, 1e-9);
  });

  test("is held to 70° off its chord, on either side", () => {
    const off = (ends: NeckEdgeEnds): number => {
      const edge = drawNeckEdge(ends);
      return degrees(turn(minus(edge.end, edge.start), startDirection(edge)));
    };
    near(off(endsWith(20, 90)), 70, 1e-9);
    near(off({ ...endsWith(170, 90), backRaglan: dir(radians(-120)) }), -70, 1e-9);
  });

  test("takes the short way round where the direction lies beyond half a turn", () => {
    const steep = { ...endsWith(100, 100), frontRaglan: dir(radians(-179)) };
    const edge = drawNeckEdge(steep);
    const off = degrees(turn(minus(edge.end, edge.start), endDirection(edge)));
    expect(Math.abs(off)).toBeLessThanOrEqual(70 + 1e-9);
  });
});
