import type { Point } from "../geometry/point.ts";
import type { Path, Segment } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { crossesBox } from "./clip.ts";
import { flattened } from "./flatten.ts";
import { type Grid, touched, windowOf } from "./tiles.ts";
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
  const [x0, x1] = [Math.min(a.x, b.x) - reach, Math.max(a.x, b.x) + reach];
  const [y0, y1] = [Math.min(a.y, b.y) - reach, Math.max(a.y, b.y) + reach];
  const [c0, c1] = touched(x0, x1, stepX, windowWidth);
  const [r0, r1] = touched(y0, y1, stepY, windowHeight);
  const surely = c0 === c1 && r0 === r1;
  for (let row = r0; row <= r1; row++) {
    for (let column = c0; column <= c1; column++) {
      if (found.has(row * ROW + column)) continue;
      const box = grown(windowOf(grid, row, column), reach);
      if (surely || crossesBox(a, b, box)) found.add(row * ROW + column);
    }
  }
};

/** Whether the handles of a cubic lie on one sheet alone, so that the cubic does. */
const markWhole = (marks: Marks, s: Segment, half: Mm): boolean => {
  if (s.kind === "line") return false;
  const { grid, found } = marks;
  const xs = [s.start.x, s.startHandle.x, s.endHandle.x, s.end.x];
  const ys = [s.start.y, s.startHandle.y, s.endHandle.y, s.end.y];
  const [left, right] = [Math.min(...xs) - half, Math.max(...xs) + half];
  const [top, bottom] = [Math.min(...ys) - half, Math.max(...ys) + half];
  const [c0, c1] = touched(left, right, grid.stepX, grid.windowWidth);
  const [r0, r1] = touched(top, bottom, grid.stepY, grid.windowHeight);
  if (c0 !== c1 || r0 !== r1) return false;
  found.add(r0 * ROW + c0);
  return true;
};

/** Lines in the layout, and half their printed width. */
export type WideLine = { readonly path: Path; readonly half: Mm };

/** Which sheets the real curves fall on, by their printed width. */
export const printedSheets = (lines: readonly WideLine[], grid: Grid): Printed => {
  const marks: Marks = { grid, found: new Set() };
  for (const { path, half } of lines) {
    for (const segment of path) {
      if (markWhole(marks, segment, half)) continue;
      let from: Point | null = null;
      for (const to of flattened([segment], WITHIN)) {
        if (from) markChord(marks, from, to, half);
        from = to;
      }
    }
  }
  return (row, column) => marks.found.has(row * ROW + column);
};
