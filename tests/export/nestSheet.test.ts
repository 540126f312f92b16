import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { nestOn, type Outline, turnedPoint } from "../../src/export/nestSheet.ts";

const triangle = (wide: number, high: number): Outline => [
  { x: 0, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];
const box = (wide: number, high: number): Outline => [
  { x: 0, y: 0 },
  { x: wide, y: 0 },
  { x: wide, y: high },
  { x: 0, y: high },
];

type Sheet = { width: number; height: number; gap: number };

/** The shapes where they come to stand. */
const standing = (outlines: readonly Outline[], sheet: Sheet): readonly Outline[] | null =>
  nestOn(outlines, sheet)?.map(({ quarter, at }, i) => {
    const turned = (outlines[i] ?? []).map((p) => turnedPoint(p, quarter));
    const left = Math.min(...turned.map(({ x }) => x));
    const top = Math.min(...turned.map(({ y }) => y));
    return turned.map(({ x, y }) => ({ x: x - left + at.x, y: y - top + at.y }));
  }) ?? null;

const distanceToChord = (
  p: { x: number; y: number },
  a: { x: number; y: number },
  b: { x: number; y: number },
): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const size = dx * dx + dy * dy;
  const t = size > 0 ? Math.max(0, Math.min(1, ((p.x - a.x) * dx + (p.y - a.y) * dy) / size)) : 0;
  return Math.hypot(p.x - a.x - t * dx, p.y - a.y - t * dy);
};

/** The least distance of any corner of one shape from the line of the other. */
const clearance = (one: Outline, other: Outline): number =>
  Math.min(
    ...[
      [one, other],
      [other, one],
    ].flatMap(([a = [], b = []]) =>
      a.flatMap((p) => b.map((q, i) => distanceToChord(p, b[i - 1] ?? b[b.length - 1] ?? q, q))),
    ),
  );

describe("shapes nested on a sheet", () => {
  test("two triangles that make a square go on little more than the square", () => {
    const sheet = { width: 103, height: 106, gap: 2 };
    expect(nestOn([triangle(100, 100), triangle(100, 100)], sheet)).not.toBeNull();
    // Side by side by their boxes they would take 202.
  });

  test("a shape that is turned to fit is turned", () => {
    expect(nestOn([box(100, 20)], { width: 30, height: 110, gap: 2 })).not.toBeNull();
  });

  test("what is larger than the sheet is not set down", () => {
    expect(nestOn([box(100, 100)], { width: 90, height: 300, gap: 2 })).toBeNull();
    expect(nestOn([box(60, 60), box(60, 60)], { width: 100, height: 100, gap: 2 })).toBeNull();
  });

  test("lie on the sheet and at least the gap apart", () => {
    const side = fc.integer({ min: 8, max: 60 });
    const shape = fc
      .tuple(side, side, fc.boolean())
      .map(([wide, high, isBox]) => (isBox ? box(wide, high) : triangle(wide, high)));
    fc.assert(
      fc.property(fc.array(shape, { minLength: 1, maxLength: 3 }), (shapes) => {
        const sheet = { width: 100, height: 120, gap: 4 };
        const found = standing(shapes, sheet);
        if (!found) return;
        for (const p of found.flat()) {
          expect(p.x).toBeGreaterThanOrEqual(-1e-9);
          expect(p.x).toBeLessThanOrEqual(sheet.width + 1e-9);
          expect(p.y).toBeGreaterThanOrEqual(-1e-9);
          expect(p.y).toBeLessThanOrEqual(sheet.height + 1e-9);
        }
        for (const [i, one] of found.entries()) {
          // Level or square to each other they are the whole gap apart; on a slant somewhat less.
          for (const other of found.slice(i + 1)) {
            expect(clearance(one, other)).toBeGreaterThan(0.4 * sheet.gap);
          }
        }
      }),
      { numRuns: 100 },
    );
  });
});
