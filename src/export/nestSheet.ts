import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";

/** How a shape is turned on the sheet, in quarters clockwise. */
export type Quarter = 0 | 1 | 2 | 3;

/** Where a shape stands: turned first, then its upper left corner at `at`. */
export type Nested = { readonly quarter: Quarter; readonly at: Point };

type Sheet = { readonly width: Mm; readonly height: Mm; readonly gap: Mm };

/** A closed run of points, as it is drawn upright. */
export type Outline = readonly Point[];

/** The rows by which shapes are held apart. */
const ROW: Mm = 1.5;

/** Rounding must not push out what just fits. */
const JUST_FITS: Mm = 1e-9;

/** A shape turned: how far it reaches in each row, from its own left edge. */
type Turned = {
  readonly quarter: Quarter;
  readonly width: Mm;
  readonly height: Mm;
  readonly low: Float64Array;
  readonly high: Float64Array;
};

const QUARTERS = [0, 1, 2, 3] as const;

/** A point turned by quarters about the origin, clockwise on the page. */
export const turnedPoint = ({ x, y }: Point, quarter: Quarter): Point => {
  if (quarter === 1) return { x: -y, y: x };
  if (quarter === 2) return { x: -x, y: -y };
  return quarter === 3 ? { x: y, y: -x } : { x, y };
};

/** The reach of a chord in the rows that it crosses. */
const markChord = (a: Point, b: Point, { low, high }: Pick<Turned, "low" | "high">): void => {
  const [top, bottom] = a.y < b.y ? [a, b] : [b, a];
  const first = Math.max(0, Math.floor(top.y / ROW));
  const last = Math.min(low.length - 1, Math.floor(bottom.y / ROW));
  const slope = bottom.y === top.y ? 0 : (bottom.x - top.x) / (bottom.y - top.y);
  for (let row = first; row <= last; row++) {
    const from = Math.max(top.y, row * ROW);
    const to = Math.min(bottom.y, (row + 1) * ROW);
    const ends = [
      top.x + (from - top.y) * slope,
      top.x + (to - top.y) * slope,
      slope === 0 ? bottom.x : top.x + (from - top.y) * slope,
    ];
    for (const x of ends) {
      low[row] = Math.min(low[row] ?? 0, x);
      high[row] = Math.max(high[row] ?? 0, x);
    }
  }
};

const turnedShape = (outline: Outline, quarter: Quarter): Turned => {
  const points = outline.map((p) => turnedPoint(p, quarter));
  const [left, top] = [
    Math.min(...points.map(({ x }) => x)),
    Math.min(...points.map(({ y }) => y)),
  ];
  const moved = points.map(({ x, y }) => ({ x: x - left, y: y - top }));
  const width = Math.max(...moved.map(({ x }) => x));
  const height = Math.max(...moved.map(({ y }) => y));
  const rows = Math.max(1, Math.ceil(height / ROW));
  const reach = {
    low: new Float64Array(rows).fill(Infinity),
    high: new Float64Array(rows).fill(-Infinity),
  };
  moved.forEach((to, i) => {
    markChord(moved[i - 1] ?? moved[moved.length - 1] ?? to, to, reach);
  });
  return { quarter, width, height, ...reach };
};

/** What stands on the sheet already: in each row, what is taken, from left to right as it came. */
type Taken = readonly { readonly low: Mm; readonly high: Mm }[][];

/** The furthest left that a shape may stand when its upper edge is at a row; null: nowhere. */
const leftmostAt = (shape: Turned, top: number, taken: Taken, sheet: Sheet): Mm | null => {
  let x = 0;
  for (let moved = true; moved; ) {
    moved = false;
    for (let row = 0; row < shape.low.length; row++) {
      const [low, high] = [x + (shape.low[row] ?? 0), x + (shape.high[row] ?? 0)];
      for (const span of taken[top + row] ?? []) {
        if (low >= span.high + sheet.gap - JUST_FITS || high <= span.low - sheet.gap + JUST_FITS)
          continue;
        x = span.high + sheet.gap - (shape.low[row] ?? 0);
        moved = true;
        break;
      }
      if (x + shape.width > sheet.width) return null;
    }
  }
  return x;
};

/** Rows that a shape's gap takes above and below it. */
const gapRows = ({ gap }: Sheet): number => Math.ceil(gap / ROW);

const take = (
  shape: Turned,
  at: { readonly x: Mm; readonly top: number },
  taken: Taken,
  sheet: Sheet,
) => {
  const more = gapRows(sheet);
  for (let row = 0; row < shape.low.length; row++) {
    const span = { low: at.x + (shape.low[row] ?? 0), high: at.x + (shape.high[row] ?? 0) };
    for (let near = row - more; near <= row + more; near++) taken[at.top + near]?.push(span);
  }
};

/** Shapes set down in turn, each as far left as it goes; null where one finds no room. */
const setDown = (shapes: readonly Turned[], sheet: Sheet): readonly Nested[] | null => {
  const rows = Math.floor(sheet.height / ROW);
  const taken: Taken = Array.from({ length: rows + 1 }, () => []);
  const nested: Nested[] = [];
  for (const shape of shapes) {
    let best: { x: Mm; top: number } | null = null;
    for (let top = 0; top * ROW + shape.height <= sheet.height; top++) {
      const x = leftmostAt(shape, top, taken, sheet);
      if (x !== null && (best === null || x < best.x - JUST_FITS)) best = { x, top };
    }
    if (!best) return null;
    take(shape, best, taken, sheet);
    nested.push({ quarter: shape.quarter, at: { x: best.x, y: best.top * ROW } });
  }
  return nested;
};

const ordersOf = (count: number): readonly (readonly number[])[] =>
  count === 0
    ? [[]]
    : ordersOf(count - 1).flatMap((order) =>
        Array.from({ length: count }, (_, at) => [
          ...order.slice(0, at),
          count - 1,
          ...order.slice(at),
        ]),
      );

const turnsOf = (count: number): readonly (readonly Quarter[])[] =>
  count === 0
    ? [[]]
    : turnsOf(count - 1).flatMap((turns) => QUARTERS.map((quarter) => [...turns, quarter]));

/**
 * A few shapes on one sheet, none nearer to another than the gap: every order and every way of
 * turning them by quarters is tried, the first that goes on is taken. Null where none does. In mm.
 */
export const nestOn = (outlines: readonly Outline[], sheet: Sheet): readonly Nested[] | null => {
  const ways = outlines.map((outline) => QUARTERS.map((quarter) => turnedShape(outline, quarter)));
  for (const turns of turnsOf(outlines.length)) {
    for (const order of ordersOf(outlines.length)) {
      const shapes = order.flatMap((place) => ways[place]?.[turns[place] ?? 0] ?? []);
      const found = setDown(shapes, sheet);
      if (!found) continue;
      return outlines.flatMap((_, place) => found[order.indexOf(place)] ?? []);
    }
  }
  return null;
};
