import { describe, expect, test } from "vitest";
import { KEPT_IDS, MEASURE_IDS } from "../../src/drafting/measures.ts";
import {
  FIGURE_HIGH,
  FIGURE_LINES,
  FIGURE_WIDE,
  HALF_OUTLINE,
} from "../../src/studio/data/figure.ts";

/** The numbers of a path of absolute M, L and C (H and V apart): across and down in turn. */
const pointsOf = (path: string): readonly (readonly [number, number])[] => {
  const found: [number, number][] = [];
  let [x, y] = [0, 0];
  for (const [, letter, rest] of path.matchAll(/([MLCQHV])([^MLCQHV]*)/gu)) {
    const numbers = [...(rest ?? "").matchAll(/-?\d+/gu)].map(Number);
    for (let i = 0; i < numbers.length; i += letter === "H" || letter === "V" ? 1 : 2) {
      if (letter === "H") x = numbers[i] ?? 0;
      else if (letter === "V") y = numbers[i] ?? 0;
      else [x, y] = [numbers[i] ?? 0, numbers[i + 1] ?? 0];
      found.push([x, y]);
    }
  }
  return found;
};

const ids = [...MEASURE_IDS, ...KEPT_IDS];

describe("the figure", () => {
  test.each(ids)("%s is shown once by name", (id) => {
    expect(FIGURE_LINES.filter((line) => line.id === id && line.label !== null)).toHaveLength(1);
  });

  test.each(ids.filter((id) => id !== "height"))("%s lies on the body", (id) => {
    for (const { path } of FIGURE_LINES.filter((line) => line.id === id)) {
      for (const [x, y] of pointsOf(path)) {
        expect(Math.abs(x)).toBeLessThanOrEqual(FIGURE_WIDE / 2);
        expect(y).toBeGreaterThan(0);
        expect(y).toBeLessThan(FIGURE_HIGH);
      }
    }
  });

  test("height runs from crown to sole, and the outline too", () => {
    const height = FIGURE_LINES.find(({ id }) => id === "height");
    const downs = pointsOf(height?.path ?? "").map(([, y]) => y);
    expect([Math.min(...downs), Math.max(...downs)]).toEqual([0, FIGURE_HIGH]);
    const outline = pointsOf(HALF_OUTLINE).map(([, y]) => y);
    expect([Math.min(...outline), Math.max(...outline)]).toEqual([0, FIGURE_HIGH]);
  });

  test("what goes round the trunk is seen from both sides", () => {
    for (const id of ["chest", "waist", "hip", "neckBase", "head", "torsoGirth"])
      expect(
        new Set(FIGURE_LINES.filter((line) => line.id === id).map(({ side }) => side)),
      ).toEqual(new Set(["front", "back"]));
  });
});
