import type { Mm } from "../geometry/units.ts";
import { EDGE, type Standing } from "./nesting.ts";
import { placesFor } from "./places.ts";
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

/** Pieces set down so far. */
type Table = {
  readonly grid: Grid;
  readonly columns: number;
  /** How far a piece may reach. */
  readonly right: Mm;
  readonly bottom: Mm;
  readonly standing: Standing[];
  cost: number;
};

// The working-place of one arrangement, which is looked at some hundred times: filled and read within
// one call of `arrange`.
/** The sheets that pieces set down so far print on: a bit a column, a number a row. */
const sheets = new Int32Array(MOST_ROWS);
/** The sheets of the one silhouette that is being tried. */
const scratch = new Int32Array(MOST_ROWS);
/** The sheets of the best place found for the piece so far. */
const chosen = new Int32Array(MOST_ROWS);
/** Where the silhouette stands that is being tried: x and y. */
const at = new Float64Array(2);

/** How far the last sheet of a row, or of a column, reaches. */
const reachOf = (count: number, step: Mm, windowSize: Mm): Mm =>
  (count - 1) * step + windowSize - EDGE;

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
 * are held against the sheets. It runs some hundred times a layout, so nothing is made here: its
 * sheets are left in `scratch`, from the row before its first to the one after its last.
 */
const costOf = (table: Table, { points, height }: Silhouette, most: number): number => {
  const { columns, grid } = table;
  const { stepX, stepY } = grid;
  const atX = at[0] ?? 0;
  const atY = at[1] ?? 0;
  const last = columns - 1;
  const shareX = 1 / stepX;
  const shareY = 1 / stepY;
  const backX = grid.windowWidth + HALF_LINE;
  const backY = grid.windowHeight + HALF_LINE;
  const end = lastRow(atY + height, grid);
  for (let r = firstRow(atY, grid); r <= end; r++) scratch[r] = 0;
  let cost = 0;
  for (const first of APART) {
    for (let i = 2 * first; i < points.length; i += 8) {
      const px = (points[i] ?? 0) + atX;
      const py = (points[i + 1] ?? 0) + atY;
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

const firstRow = (top: Mm, { stepY }: Grid): number => Math.max(0, Math.floor(top / stepY) - 1);
const lastRow = (foot: Mm, { stepY }: Grid): number =>
  Math.min(MOST_ROWS - 1, Math.ceil(foot / stepY));

/**
 * What a silhouette at this height costs at the least: in each row of sheets that it reaches it prints
 * on one, which is a new one where the row has none so far.
 */
const leastCost = (top: Mm, foot: Mm, { stepY }: Grid): number => {
  const shareY = 1 / stepY;
  const end = ((foot + HALF_LINE) * shareY) | 0;
  let cost = 0;
  for (let r = ((top + HALF_LINE) * shareY) | 0; r <= end; r++) {
    cost += sheets[r] === 0 ? JOINS_TO_A_SHEET + 1 : 1;
  }
  return cost;
};

/** Sets one piece down where it costs fewest sheets; of equal places the nearest to the corner. */
const setDown = (table: Table, ways: Ways, most: number): boolean => {
  const { right, bottom } = table;
  let best: Standing | null = null;
  let least = most - table.cost;
  let nearest = Infinity;
  for (const shape of ways) {
    const { numbers, count } = placesFor(shape, table);
    for (let i = 0; i < count; i += 2) {
      const x = numbers[i] ?? 0;
      const y = numbers[i + 1] ?? 0;
      const toRight = x + shape.width;
      const toBottom = y + shape.height;
      if (toRight > right || toBottom > bottom) continue;
      // Costs are whole numbers: a place further off must be cheaper by one at the least.
      const worth = toRight + toBottom < nearest ? least : least - 1;
      if (leastCost(y, toBottom, table.grid) > worth) continue;
      at[0] = x;
      at[1] = y;
      const cost = costOf(table, shape, worth);
      if (cost > worth) continue;
      best = { shape, x, y };
      chosen.set(scratch);
      least = cost;
      nearest = toRight + toBottom;
    }
  }
  if (!best) return false;
  table.standing.push(best);
  table.cost += least;
  const end = lastRow(best.y + best.shape.height, table.grid);
  for (let r = firstRow(best.y, table.grid); r <= end; r++) {
    sheets[r] = (sheets[r] ?? 0) | (chosen[r] ?? 0);
  }
  return true;
};

/**
 * Pieces set down one after another in the order given, each where it costs fewest sheets; null
 * where one finds no room, or the cost is more than it may be.
 */
export const arrange = (
  pieces: readonly Ways[],
  { grid, columns, rows, most }: Bench,
): Arrangement | null => {
  sheets.fill(0);
  const table: Table = {
    grid,
    columns,
    right: reachOf(columns, grid.stepX, grid.windowWidth),
    bottom: reachOf(rows, grid.stepY, grid.windowHeight),
    standing: [],
    cost: 0,
  };
  if (!pieces.every((ways) => setDown(table, ways, most))) return null;
  return {
    standing: table.standing,
    cost: table.cost,
    right: Math.max(...table.standing.map(({ x, shape }) => x + shape.width)),
    bottom: Math.max(...table.standing.map(({ y, shape }) => y + shape.height)),
  };
};
