import { splitSegment } from "../geometry/curve.ts";
import type { Point } from "../geometry/point.ts";
import type { Cubic, Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { crossesBox } from "./clip.ts";
import { flattened } from "./flatten.ts";
import { firstTouched, type Grid, lastTouched, windowOf } from "./tiles.ts";
import { grown } from "./word.ts";

/** How true the chords are by which a line is held against a sheet; far finer than it is wide. */
const WITHIN: Mm = 0.01;

/** Whether a line falls on the sheet in this row and column, counted from 0. */
export type Printed = (row: number, column: number) => boolean;

type Marks = { readonly grid: Grid; readonly found: Set<number> };

/** Rows are told apart from columns in one number. */
const ROW = 4096;

const markChord = ({ grid, found }: Marks, a: Point, b: Point, half: Mm): void => {
  const reach = half + WITHIN;
  const { stepX, stepY, windowWidth, windowHeight } = grid;
  const c0 = firstTouched(Math.min(a.x, b.x) - reach, stepX, windowWidth);
  const c1 = lastTouched(Math.max(a.x, b.x) + reach, stepX);
  const r0 = firstTouched(Math.min(a.y, b.y) - reach, stepY, windowHeight);
  const r1 = lastTouched(Math.max(a.y, b.y) + reach, stepY);
  if (c0 === c1 && r0 === r1) {
    found.add(r0 * ROW + c0);
    return;
  }
  for (let row = r0; row <= r1; row++) {
    for (let column = c0; column <= c1; column++) {
      if (found.has(row * ROW + column)) continue;
      const box = grown(windowOf(grid, row, column), reach);
      if (crossesBox(a, b, box)) found.add(row * ROW + column);
    }
  }
};

/** Whether the handles of a cubic lie on one sheet alone, so that the cubic does. */
const markWhole = ({ grid, found }: Marks, s: Cubic, half: Mm): boolean => {
  const { start: p, startHandle: q, endHandle: r, end: e } = s;
  const c0 = firstTouched(Math.min(p.x, q.x, r.x, e.x) - half, grid.stepX, grid.windowWidth);
  if (c0 !== lastTouched(Math.max(p.x, q.x, r.x, e.x) + half, grid.stepX)) return false;
  const r0 = firstTouched(Math.min(p.y, q.y, r.y, e.y) - half, grid.stepY, grid.windowHeight);
  if (r0 !== lastTouched(Math.max(p.y, q.y, r.y, e.y) + half, grid.stepY)) return false;
  found.add(r0 * ROW + c0);
  return true;
};

/** How often a cubic is halved before its chords are looked at one by one. */
const HALVINGS = 3;

/** Halves that lie on one sheet alone are done at once; only where sheets meet chords are drawn. */
const markCubic = (marks: Marks, s: Cubic, half: Mm, halvings: number): void => {
  if (markWhole(marks, s, half + WITHIN)) return;
  if (halvings > 0) {
    for (const part of splitSegment(s, 0.5)) {
      if (part.kind === "cubic") markCubic(marks, part, half, halvings - 1);
    }
    return;
  }
  let from: Point | null = null;
  for (const to of flattened([s], WITHIN)) {
    if (from) markChord(marks, from, to, half);
    from = to;
  }
};

/** Lines in the layout, and half their printed width. */
export type WideLine = { readonly path: Path; readonly half: Mm };

/** Which sheets the real curves fall on, by their printed width. */
export const printedSheets = (lines: readonly WideLine[], grid: Grid): Printed => {
  const marks: Marks = { grid, found: new Set() };
  for (const { path, half } of lines) {
    for (const segment of path) {
      if (segment.kind === "line") markChord(marks, segment.start, segment.end, half);
      else markCubic(marks, segment, half, HALVINGS);
    }
  }
  return (row, column) => marks.found.has(row * ROW + column);
};
