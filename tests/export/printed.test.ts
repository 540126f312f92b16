import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { printedSheets } from "../../src/export/printed.ts";
import { gridOf, windowOf } from "../../src/export/tiles.ts";
import { straight } from "../../src/geometry/path.ts";
import { cubic } from "../../src/geometry/segment.ts";
import { holdsFor } from "../support/law.ts";
import { pointsAlong } from "../support/samples.ts";

const grid = gridOf(210, 297);
const place = fc.record({
  x: fc.double({ min: 1, max: 900, noNaN: true }),
  y: fc.double({ min: 1, max: 1200, noNaN: true }),
});

describe("the sheets that a line falls on", () => {
  test("are all those in whose window a point of the curve lies", () => {
    const curve = fc.tuple(place, place, place, place).map(([a, b, c, d]) => cubic(a, b, c, d));
    holdsFor(41, curve, (drawn) => {
      const isOn = printedSheets([{ path: [drawn], half: 0 }], grid);
      const points = pointsAlong([drawn], 400);
      for (let row = 0; row < 5; row++) {
        for (let column = 0; column < 6; column++) {
          const { left, top, right, bottom } = windowOf(grid, row, column);
          const seen = points.some(
            ({ x, y }) => x >= left && x <= right && y >= top && y <= bottom,
          );
          if (seen) expect(isOn(row, column)).toBe(true);
        }
      }
    });
  });

  test("do not count a slanted line whose box, but not itself, reaches into a window", () => {
    const slanted = straight({ x: 150, y: 600 }, { x: 400, y: 240 });
    const isOn = printedSheets([{ path: slanted, half: 0.25 }], grid);
    expect(isOn(0, 0)).toBe(false);
    expect(isOn(0, 2)).toBe(true);
  });

  test("count a line that lies outside a window by less than half its width", () => {
    const beside = (x: number) => straight({ x, y: 20 }, { x, y: 40 });
    const onFirst = (x: number) => printedSheets([{ path: beside(x), half: 0.25 }], grid)(0, 0);
    expect(onFirst(190.2)).toBe(true);
    expect(onFirst(190.3)).toBe(false);
  });
});
