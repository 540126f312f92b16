import type { Piece } from "../drafting/piece.ts";
import { boundsOf } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { pieceSheetLines, sheetsTo } from "./cutSheets.ts";
import { EDGE, GAP } from "./nesting.ts";
import type { Placement } from "./placement.ts";
import { printedSheets } from "./printed.ts";
import type { Sheets } from "./sheets.ts";
import { type Grid, lastTouched, paperGrid } from "./tiles.ts";

type Rows = { readonly placements: readonly Placement[]; readonly bottom: Mm };

/** Pieces upright, one beside the other in the order in which they are cut; a new row when one is full. */
const inRows = (pieces: readonly Piece[], right: Mm): Rows => {
  const placements: Placement[] = [];
  let [x, y, next]: [Mm, Mm, Mm] = [EDGE, EDGE, EDGE];
  for (const piece of pieces) {
    const box = boundsOf(piece.cutLine);
    const [width, height] = [box.right - box.left, box.bottom - box.top];
    if (x > EDGE && x + width > right) [x, y] = [EDGE, next + GAP];
    placements.push({ piece: piece.name, x: x - box.left, y: y - box.top, turn: 0 });
    x += width + GAP;
    next = Math.max(next, y + height);
  }
  return { placements, bottom: next };
};

/** Sheets on which a line of the rows falls. */
const sheetsUnder = (
  pieces: readonly Piece[],
  { placements, bottom }: Rows,
  grid: Grid,
  columns: number,
): number => {
  const lines = pieces.flatMap((piece) => {
    const own = placements.find(({ piece: name }) => name === piece.name);
    return own ? pieceSheetLines(piece, own) : [];
  });
  const isPrinted = printedSheets(lines, grid);
  let count = 0;
  for (let row = 0; row <= lastTouched(bottom + EDGE, grid.stepY); row++)
    for (let column = 0; column < columns; column++) if (isPrinted(row, column)) count++;
  return count;
};

/** Rows are tried up to so many sheets wide, and as wide as the widest piece in any case. */
const WIDEST = 7;

type PlainRows = Rows & { readonly sheets: number; readonly right: Mm };

/**
 * The same pieces in plain rows, as one lays them without thinking: in the order of cutting, upright,
 * each row as wide as so many sheets; sheets without a line are left out here as well. Of all widths
 * that hold the widest piece the one that needs fewest sheets.
 */
export const plainRows = (pieces: readonly Piece[], grid: Grid): PlainRows => {
  const widest = Math.max(
    ...pieces.map(({ cutLine }) => boundsOf(cutLine).right - boundsOf(cutLine).left),
  );
  const least = sheetsTo(EDGE + widest, grid.stepX, grid.overlap);
  const tried = Array.from({ length: Math.max(1, WIDEST - least + 1) }, (_, i) => {
    const right = (least + i - 1) * grid.stepX + grid.windowWidth - EDGE;
    const rows = inRows(pieces, right);
    return { ...rows, right, sheets: sheetsUnder(pieces, rows, grid, least + i) };
  });
  return tried.reduce((best, one) => (one.sheets < best.sheets ? one : best));
};

/** How many sheets plain rows would need on this paper, lying as it may lie. */
export const plainCount = (pieces: readonly Piece[], { paper, print, lying }: Sheets): number => {
  const ways = print.turn === "fewest" ? [false, true] : [lying];
  const grids = ways.map((way) => paperGrid(paper, print, way));
  return Math.min(...grids.map((grid) => plainRows(pieces, grid).sheets));
};
