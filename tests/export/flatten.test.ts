import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { flattened } from "../../src/export/flatten.ts";
import { pointAt } from "../../src/geometry/curve.ts";
import { cubic, line } from "../../src/geometry/segment.ts";
import { holdsFor } from "../support/law.ts";

const place = fc.record({
  x: fc.double({ min: -400, max: 400, noNaN: true }),
  y: fc.double({ min: -400, max: 400, noNaN: true }),
});

describe("a path as points", () => {
  test("keeps straights as they are, corner by corner", () => {
    const path = [
      line({ x: 0, y: 0 }, { x: 10, y: 0 }),
      line({ x: 10, y: 0 }, { x: 10, y: 5 }),
    ] as const;
    expect(flattened(path, 0.01)).toEqual([
      { x: 0, y: 0 },
      { x: 10, y: 0 },
      { x: 10, y: 5 },
    ]);
  });

  test("strays from no curve by more than it was allowed", () => {
    const curve = fc.tuple(place, place, place, place).map(([a, b, c, d]) => cubic(a, b, c, d));
    holdsFor(7, curve, (drawn) => {
      const points = flattened([drawn], 0.01);
      const chords = points.length - 1;
      // The middle of a chord against the middle of its share of the curve: the error's own place.
      for (let i = 0; i < chords; i++) {
        const [a, b] = [points[i] ?? drawn.start, points[i + 1] ?? drawn.end];
        const on = pointAt(drawn, (i + 0.5) / chords);
        expect(Math.hypot((a.x + b.x) / 2 - on.x, (a.y + b.y) / 2 - on.y)).toBeLessThan(0.0101);
      }
    });
  });
});
