import { describe, expect, test } from "vitest";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { RULER_START, ruler, rulerLengths } from "../../src/export/rulers.ts";
import { paperGrid } from "../../src/export/tiles.ts";

describe("the scales of a sheet", () => {
  test.each(PAPER_NAMES)(
    "are 150 mm or longer both ways on %s, and end inside the sheet",
    (paper) => {
      const grid = paperGrid(paper);
      const [across, down] = rulerLengths(grid);
      expect(Math.min(across, down)).toBeGreaterThanOrEqual(150);
      expect(RULER_START + across).toBeLessThan(grid.windowWidth - 20);
      expect(RULER_START + down).toBeLessThan(grid.windowHeight - 20);
    },
  );

  test.each(["across", "down"] as const)("have a tick for each millimetre, %s", (way) => {
    const [ticks] = ruler(150, way).shapes;
    const places = ticks?.runs.slice(1).map(({ points }) => {
      const [start] = points;
      return way === "across" ? start?.x : start?.y;
    });
    expect(places).toEqual(Array.from({ length: 151 }, (_, i) => i));
  });

  test("make the ticks of five and ten longer", () => {
    const [ticks] = ruler(150, "across").shapes;
    const long = (mm: number): number => ticks?.runs[mm + 1]?.points[1]?.y ?? NaN;
    expect(long(10)).toBeGreaterThan(long(5));
    expect(long(5)).toBeGreaterThan(long(1));
    expect(long(7)).toBe(long(1));
  });
});
