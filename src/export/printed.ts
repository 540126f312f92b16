import type { Point } from "../geometry/point.ts";
import type { Cubic, Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { crossesBox } from "./clip.ts";
import { flattened } from "./flatten.ts";
import type { Placement } from "./placement.ts";
import { cosSin } from "./placing.ts";
import { firstTouched, type Grid, lastTouched, windowOf } from "./tiles.ts";
import { grown } from "./word.ts";

/** How true the chords are by which a line is held against a sheet; far finer than it is wide. */
const WITHIN: Mm = 0.01;
/** How often a cubic is halved before its chords are looked at one by one. */
const HALVINGS = 3;

/** Whether a line falls on the sheet in this row and column, counted from 0. */
export type Printed = (row: number, column: number) => boolean;

/** The sheets found so far, and how far a line reaches to both sides while it is looked at. */
type Marks = { readonly grid: Grid; readonly found: Set<number>; reach: Mm };

/** Rows are told apart from columns in one number. */
const ROW = 4096;

/** How many numbers a cubic takes in `held`: x and y of its four points, in the layout. */
const CUBIC = 8;
/**
 * The lines that are being looked at, where they stand in the layout: a cubic, then the two halves of
 * each that is halved. One place for all, filled and read within one call of this file: a layout looks
 * at some three hundred lines, nearly all of which lie on sheets that are known.
 */
const held = new Float64Array(CUBIC * (2 * HALVINGS + 1));

/** Marks the sheets that the straight between two points of `held` falls on. */
const markChord = ({ grid, found, reach }: Marks, from: number, to: number): void => {
  const { stepX, stepY, windowWidth, windowHeight } = grid;
  const ax = held[from] ?? 0;
  const ay = held[from + 1] ?? 0;
  const bx = held[to] ?? 0;
  const by = held[to + 1] ?? 0;
  const c0 = firstTouched(Math.min(ax, bx) - reach, stepX, windowWidth);
  const c1 = lastTouched(Math.max(ax, bx) + reach, stepX);
  const r0 = firstTouched(Math.min(ay, by) - reach, stepY, windowHeight);
  const r1 = lastTouched(Math.max(ay, by) + reach, stepY);
  if (c0 === c1 && r0 === r1) {
    found.add(r0 * ROW + c0);
    return;
  }
  for (let row = r0; row <= r1; row++) {
    for (let column = c0; column <= c1; column++) {
      if (found.has(row * ROW + column)) continue;
      const box = grown(windowOf(grid, row, column), reach);
      if (crossesBox({ x: ax, y: ay }, { x: bx, y: by }, box)) found.add(row * ROW + column);
    }
  }
};

/** Whether the handles of a cubic lie on known sheets, or on one alone: then it does so itself. */
const isMarkedWhole = ({ grid, found, reach }: Marks, at: number): boolean => {
  let left = Infinity;
  let top = Infinity;
  let right = -Infinity;
  let bottom = -Infinity;
  for (let i = at; i < at + CUBIC; i += 2) {
    const x = held[i] ?? 0;
    const y = held[i + 1] ?? 0;
    if (x < left) left = x;
    if (x > right) right = x;
    if (y < top) top = y;
    if (y > bottom) bottom = y;
  }
  const c0 = firstTouched(left - reach, grid.stepX, grid.windowWidth);
  const c1 = lastTouched(right + reach, grid.stepX);
  const r0 = firstTouched(top - reach, grid.stepY, grid.windowHeight);
  const r1 = lastTouched(bottom + reach, grid.stepY);
  if (c0 === c1 && r0 === r1) {
    found.add(r0 * ROW + c0);
    return true;
  }
  for (let row = r0; row <= r1; row++)
    for (let column = c0; column <= c1; column++) if (!found.has(row * ROW + column)) return false;
  return true;
};

/** One coordinate of both halves of a cubic: de Casteljau's steps. */
const halve = (at: number, first: number, second: number): void => {
  const p = held[at] ?? 0;
  const q = held[at + 2] ?? 0;
  const r = held[at + 4] ?? 0;
  const e = held[at + 6] ?? 0;
  const a = p + (q - p) * 0.5;
  const b = q + (r - q) * 0.5;
  const c = r + (e - r) * 0.5;
  const ab = a + (b - a) * 0.5;
  const bc = b + (c - b) * 0.5;
  const mid = ab + (bc - ab) * 0.5;
  held[first] = p;
  held[first + 2] = a;
  held[first + 4] = ab;
  held[first + 6] = mid;
  held[second] = mid;
  held[second + 2] = bc;
  held[second + 4] = c;
  held[second + 6] = e;
};

const heldPoint = (at: number) => ({ x: held[at] ?? 0, y: held[at + 1] ?? 0 });

const heldCubic = (at: number): Cubic => ({
  kind: "cubic",
  start: heldPoint(at),
  startHandle: heldPoint(at + 2),
  endHandle: heldPoint(at + 4),
  end: heldPoint(at + 6),
});

/** Chord by chord, put where the cubic stood that is drawn by them. */
const markChords = (marks: Marks, at: number): void => {
  const points = flattened([heldCubic(at)], WITHIN);
  for (const [i, { x, y }] of points.entries()) {
    held[at + 2] = x;
    held[at + 3] = y;
    if (i > 0) markChord(marks, at, at + 2);
    held[at] = x;
    held[at + 1] = y;
  }
};

/** Halves that lie on one sheet alone are done at once; only where sheets meet chords are drawn. */
const markCubic = (marks: Marks, at: number, halvings: number): void => {
  if (isMarkedWhole(marks, at)) return;
  if (halvings === 0) {
    markChords(marks, at);
    return;
  }
  const first = CUBIC * (2 * halvings - 1);
  const second = first + CUBIC;
  halve(at, first, second);
  halve(at + 1, first + 1, second + 1);
  markCubic(marks, first, halvings - 1);
  markCubic(marks, second, halvings - 1);
};

/** Lines of a piece, where it stands (none: in the layout as they are), and half their printed width. */
export type WideLine = {
  readonly path: Path;
  readonly half: Mm;
  readonly placement?: Placement;
};

const IN_THE_LAYOUT = { x: 0, y: 0, turn: 0 };

/** Where a piece stands: its placement, the turn as cosine and sine. */
type Stand = { readonly x: Mm; readonly y: Mm; readonly cos: number; readonly sin: number };

const standOf = ({ x, y, turn }: Omit<Placement, "piece">): Stand => {
  const [cos, sin] = cosSin(turn);
  return { x, y, cos, sin };
};

/** Puts a point into `held`, turned and moved to where it stands in the layout. */
const hold = (at: number, p: Point, { x, y, cos, sin }: Stand): void => {
  held[at] = x + p.x * cos - p.y * sin;
  held[at + 1] = y + p.x * sin + p.y * cos;
};

/** Which sheets the real curves fall on, by their printed width. */
export const printedSheets = (lines: readonly WideLine[], grid: Grid): Printed => {
  const marks: Marks = { grid, found: new Set(), reach: 0 };
  let last: WideLine["placement"];
  let stand = standOf(IN_THE_LAYOUT);
  for (const { path, half, placement } of lines) {
    if (placement !== last) stand = standOf(placement ?? IN_THE_LAYOUT);
    last = placement;
    marks.reach = half + WITHIN;
    for (const s of path) {
      hold(0, s.start, stand);
      if (s.kind === "line") {
        hold(2, s.end, stand);
        markChord(marks, 0, 2);
      } else {
        hold(2, s.startHandle, stand);
        hold(4, s.endHandle, stand);
        hold(6, s.end, stand);
        markCubic(marks, 0, HALVINGS);
      }
    }
  }
  return (row, column) => marks.found.has(row * ROW + column);
};
