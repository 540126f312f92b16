import type { Mm } from "../geometry/units.ts";
import { beside, EDGE, type Standing, slidLeft, slidUp } from "./nesting.ts";
import type { Silhouette } from "./silhouette.ts";
import type { Grid } from "./tiles.ts";

/** Half the width of the broadest line: a chord this near to a sheet prints on it. */
const HALF_LINE: Mm = 0.3;
/** Rows that an arrangement may grow to; no garment comes near it. */
const MOST_ROWS = 64;

/** The ways a piece may lie: body pieces upright only, bands also turned. */
export type Ways = readonly Silhouette[];

export type Bench = {
  readonly grid: Grid;
  /** Sheets side by side. No piece reaches past the last. */
  readonly columns: number;
  /** Sheets one below the other; Infinity: as many as it takes. */
  readonly rows: number;
  /** An arrangement that costs more is of no use and is given up. */
  readonly most: number;
};

/** Pieces set down so far, and the sheets that they print on: a bit a column, a number a row. */
type Table = {
  readonly standing: Standing[];
  readonly sheets: Int32Array;
  /** The sheets of the one silhouette that is being tried. */
  readonly scratch: Int32Array;
  cost: number;
};

/** How far the last sheet of a row, or of a column, reaches. */
const reachOf = (sheets: number, step: Mm, windowSize: Mm): Mm =>
  (sheets - 1) * step + windowSize - EDGE;

export type Arrangement = {
  readonly standing: readonly Standing[];
  /** Sheets printed, and joins within them: see JOINS_TO_A_SHEET. */
  readonly cost: number;
  readonly right: Mm;
  readonly bottom: Mm;
};

const bitCount = (bits: number): number => {
  let n = 0;
  for (let b = bits; b !== 0; b &= b - 1) n++;
  return n;
};

/** A sheet more weighs as much as this many joins. */
const JOINS_TO_A_SHEET = 1000;

/** The order in which a look at few points sees most of a shape: every fourth, from each of these on. */
const APART = [0, 2, 1, 3] as const;

/**
 * What setting a silhouette down would cost: sheets not printed so far, then sheets to be joined.
 * Left off as soon as it is more than `most`. By points close together on its lines: a window is
 * wider than they are apart, and the few corners that this passes over are found when the real lines
 * are held against the sheets. It runs some thousand times a layout, so nothing is made here: its
 * sheets are left in `scratch`, from the row before its first to the one after its last.
 */
const costOf = (table: Table, at: Standing, { grid, columns }: Bench, most: number): number => {
  const { scratch, sheets } = table;
  const { points } = at.shape;
  const { stepX, stepY } = grid;
  const last = columns - 1;
  const [shareX, shareY] = [1 / stepX, 1 / stepY];
  const [backX, backY] = [grid.windowWidth + HALF_LINE, grid.windowHeight + HALF_LINE];
  const end = lastRow(at, grid);
  for (let r = firstRow(at, grid); r <= end; r++) scratch[r] = 0;
  let cost = 0;
  for (const first of APART) {
    for (let i = 2 * first; i < points.length; i += 8) {
      const px = (points[i] ?? 0) + at.x;
      const py = (points[i + 1] ?? 0) + at.y;
      const column = Math.min(last, ((px + HALF_LINE) * shareX) | 0);
      const row = ((py + HALF_LINE) * shareY) | 0;
      // In the overlap a point prints on the sheet before as well.
      const bits =
        column > 0 && px < column * stepX - stepX + backX ? 3 << (column - 1) : 1 << column;
      const above = row > 0 && py < row * stepY - stepY + backY ? row - 1 : row;
      for (let r = above; r <= row; r++) {
        const known = scratch[r] ?? 0;
        const more = bits & ~known;
        if (more === 0) continue;
        scratch[r] = known | more;
        cost += JOINS_TO_A_SHEET * bitCount(more & ~(sheets[r] ?? 0)) + bitCount(more);
      }
      if (cost > most) return cost;
    }
  }
  return cost;
};

const firstRow = ({ y }: Standing, { stepY }: Grid): number =>
  Math.max(0, Math.floor(y / stepY) - 1);
const lastRow = ({ y, shape }: Standing, { stepY }: Grid): number =>
  Math.min(MOST_ROWS - 1, Math.ceil((y + shape.height) / stepY));

/** The start of the next sheet at or after `at`, or `at` itself where it is on the first. */
const onNextSheet = (at: Mm, step: Mm): Mm =>
  Math.ceil(Math.max(0, at - EDGE) / step) * step + EDGE;

/** Places worth trying for one silhouette: slid up or left against what stands, or on a new sheet. */
const places = (shape: Silhouette, { standing }: Table, { grid }: Bench): readonly Standing[] => {
  const found: Standing[] = [];
  // Many pieces stand level: what was slid from a place once need not be slid again.
  const triedAlong: Mm[] = [];
  const triedDown: Mm[] = [];
  const add = (x: Mm, y: Mm): void => {
    for (const known of found) if (known.x === x && known.y === y) return;
    found.push({ shape, x, y });
  };
  const along = (y: Mm): void => {
    if (triedAlong.includes(y)) return;
    triedAlong.push(y);
    const x = slidLeft(shape, y, standing);
    add(x, y);
    add(onNextSheet(x, grid.stepX), y);
  };
  const down = (x: Mm): void => {
    if (triedDown.includes(x)) return;
    triedDown.push(x);
    const y = slidUp(shape, x, standing);
    add(x, y);
    add(x, onNextSheet(y, grid.stepY));
  };
  along(EDGE);
  down(EDGE);
  for (const { x, y, shape: other } of standing) {
    along(y);
    along(beside(y, other.height));
    down(x);
    down(beside(x, other.width));
  }
  return found;
};

/** Sets one piece down where it costs fewest sheets; of equal places the nearest to the corner. */
const setDown = (table: Table, ways: Ways, bench: Bench): boolean => {
  const { stepX, stepY, windowWidth, windowHeight } = bench.grid;
  const right = reachOf(bench.columns, stepX, windowWidth);
  const bottom = reachOf(bench.rows, stepY, windowHeight);
  let best: Standing | null = null;
  let [least, nearest] = [bench.most - table.cost, Infinity];
  for (const shape of ways) {
    for (const at of places(shape, table, bench)) {
      const [toRight, toBottom] = [at.x + shape.width, at.y + shape.height];
      if (toRight > right || toBottom > bottom) continue;
      // Costs are whole numbers: a place further off must be cheaper by one at the least.
      const most = toRight + toBottom < nearest ? least : least - 1;
      const cost = costOf(table, at, bench, most);
      if (cost > most) continue;
      best = at;
      least = cost;
      nearest = toRight + toBottom;
    }
  }
  if (!best) return false;
  table.standing.push(best);
  table.cost += costOf(table, best, bench, Infinity);
  const { scratch, sheets } = table;
  for (let r = firstRow(best, bench.grid); r <= lastRow(best, bench.grid); r++) {
    sheets[r] = (sheets[r] ?? 0) | (scratch[r] ?? 0);
  }
  return true;
};

/**
 * Pieces set down one after another in the order given, each where it costs fewest sheets; null
 * where one finds no room, or the cost is more than it may be.
 */
export const arrange = (pieces: readonly Ways[], bench: Bench): Arrangement | null => {
  const table: Table = {
    standing: [],
    sheets: new Int32Array(MOST_ROWS),
    scratch: new Int32Array(MOST_ROWS),
    cost: 0,
  };
  if (!pieces.every((ways) => setDown(table, ways, bench))) return null;
  return {
    standing: table.standing,
    cost: table.cost,
    right: Math.max(...table.standing.map(({ x, shape }) => x + shape.width)),
    bottom: Math.max(...table.standing.map(({ y, shape }) => y + shape.height)),
  };
};
