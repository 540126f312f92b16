import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";

/** The layout is looked at in squares of this size. */
const CELL: Mm = 2;
/** Lines are walked in steps short enough that they miss no square they run through by much. */
const STEP: Mm = 1;

/** Where lines run in a layout: how many squares with ink lie above and left of each corner. */
export type Ink = { readonly across: number; readonly down: number; readonly sums: Int32Array };

const inkAt = ({ across, down, sums }: Ink, column: number, row: number): number => {
  const c = Math.min(across, Math.max(0, column));
  const r = Math.min(down, Math.max(0, row));
  return sums[r * (across + 1) + c] ?? 0;
};

/** How many squares with ink a rectangle touches. */
export const inkIn = (ink: Ink, { left, top, right, bottom }: Box): number => {
  const c0 = Math.floor(left / CELL);
  const r0 = Math.floor(top / CELL);
  const c1 = Math.floor(right / CELL) + 1;
  const r1 = Math.floor(bottom / CELL) + 1;
  return inkAt(ink, c1, r1) - inkAt(ink, c0, r1) - inkAt(ink, c1, r0) + inkAt(ink, c0, r0);
};

/** Puts a 1 in every square that a run of points goes through. The layout has no point below 0. */
const blot = (sums: Int32Array, row: number, points: readonly Point[]): void => {
  let from: Point | null = null;
  for (const to of points) {
    const start = from ?? to;
    const [dx, dy] = [to.x - start.x, to.y - start.y];
    const steps = Math.max(1, Math.ceil(Math.sqrt(dx * dx + dy * dy) / STEP));
    for (let i = 0; i <= steps; i++) {
      const column = Math.floor((start.x + (dx * i) / steps) / CELL) + 1;
      sums[(Math.floor((start.y + (dy * i) / steps) / CELL) + 1) * row + column] = 1;
    }
    from = to;
  }
};

/** Looks where lines, given as points, run. The layout reaches from (0, 0) to (width, height). */
export const inkOf = (lines: readonly (readonly Point[])[], width: Mm, height: Mm): Ink => {
  const [across, down] = [Math.ceil(width / CELL) + 1, Math.ceil(height / CELL) + 1];
  const row = across + 1;
  const sums = new Int32Array(row * (down + 1));
  for (const points of lines) blot(sums, row, points);
  for (let r = 1; r <= down; r++) {
    let inRow = 0;
    for (let at = r * row + 1; at <= r * row + across; at++) {
      inRow += sums[at] ?? 0;
      sums[at] = inRow + (sums[at - row] ?? 0);
    }
  }
  return { across, down, sums };
};
