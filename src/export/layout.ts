import type { Piece, PieceName } from "../drafting/piece.ts";
import type { Mm } from "../geometry/units.ts";
import { type Arrangement, arrange, type Ways } from "./arrange.ts";
import { cutIntoSheets, laidByHand, sheetsTo } from "./cutSheets.ts";
import { EDGE } from "./nesting.ts";
import { type PaperChoice, paperOf } from "./paperSize.ts";
import { isBand } from "./pieceLines.ts";
import type { Placement } from "./placement.ts";
import { placementOf } from "./placing.ts";
import { plainRows } from "./plainRows.ts";
import { DEFAULT_PRINT, type PrintChoices } from "./printChoices.ts";
import type { Sheets } from "./sheets.ts";
import { silhouetteOf } from "./silhouette.ts";
import { type Grid, paperGrid } from "./tiles.ts";

type Order = readonly PieceName[];

/**
 * Orders in which the pieces are set down. Each is tried, and the arrangement with fewest sheets
 * taken. Chosen from 48 orders as those that together need fewest sheets of A4, Letter and A3, for
 * the forty bodies that stand in the tests.
 */
const ORDERS: readonly Order[] = [
  ["back", "hemBand", "sleeve", "front", "neckband", "cuff", "vInsert"],
  ["sleeve", "hemBand", "back", "front", "cuff", "neckband", "vInsert"],
  ["hemBand", "sleeve", "back", "front", "neckband", "cuff", "vInsert"],
];
/** The same for A0 and the shortest roll. */
const WIDE_ORDERS: readonly Order[] = [
  ["back", "front", "sleeve", "hemBand", "cuff", "neckband", "vInsert"],
  ["hemBand", "sleeve", "back", "front", "cuff", "neckband", "vInsert"],
  ["hemBand", "front", "sleeve", "back", "neckband", "cuff", "vInsert"],
];
/** The most sheets side by side, and one below the other, where so many are enough. */
const TABLE = 7;

/** Sheets wider than this make one column, and body pieces may be turned to fit on it. */
const WIDE: Mm = 500;

/** Bands lie either way. Body pieces stand, so that their grain runs up the sheet. */
const waysOf = (piece: Piece, { windowWidth }: Grid): Ways => {
  const upright = silhouetteOf(piece, 0);
  const tooWide = windowWidth > WIDE && upright.width > windowWidth - 2 * EDGE;
  return isBand(piece) || tooWide ? [upright, silhouetteOf(piece, 90)] : [upright];
};

/** What the widest piece needs, upright or turned. */
const columnsNeeded = ({ windowWidth, stepX }: Grid, ways: readonly Ways[]): number => {
  const widest = Math.max(...ways.map((way) => Math.min(...way.map(({ width }) => width))));
  return 1 + Math.max(0, Math.ceil((widest + 2 * EDGE - windowWidth) / stepX));
};

/** Sheets that a map of the arrangement has room for, printed or not. */
const cellsOf = ({ right, bottom }: Arrangement, { stepX, stepY, overlap }: Grid): number =>
  sheetsTo(right, stepX, overlap) * sheetsTo(bottom, stepY, overlap);

/** An empty place on the map weighs as much as three joins, and far less than a sheet. */
const CELL_WEIGHT = 3;

const weightOf = (arrangement: Arrangement, grid: Grid): number =>
  arrangement.cost + CELL_WEIGHT * cellsOf(arrangement, grid);

/** The one that needs fewer sheets; of equal ones the one easier to join, then the shorter one. */
const better = (a: Arrangement | null, b: Arrangement | null, grid: Grid): Arrangement | null => {
  if (!a || !b) return a ?? b;
  return (weightOf(b, grid) - weightOf(a, grid) || b.bottom - a.bottom) >= 0 ? a : b;
};

/** The best of all orders; where the table is too small, on one that has no end. */
const bestOf = (pieces: readonly Piece[], grid: Grid): Arrangement => {
  const ways = pieces.map((piece) => waysOf(piece, grid));
  const needed = columnsNeeded(grid, ways);
  const isWide = grid.windowWidth > WIDE;
  const columns = isWide ? needed : Math.max(TABLE, needed);
  const rows = isWide ? Infinity : TABLE;
  const found = (isWide ? WIDE_ORDERS : ORDERS)
    .map((order) => order.flatMap((name) => ways.filter(([first]) => first?.piece === name)))
    .reduce<Arrangement | null>((best, inOrder) => {
      const most = best?.cost ?? Infinity;
      return better(best, arrange(inOrder, { grid, columns, rows, most }), grid);
    }, null);
  const endless = found ?? arrange(ways, { grid, columns, rows: Infinity, most: Infinity });
  if (!endless) throw new Error("A piece found no room on an endless table.");
  return endless;
};

/** Hundredths of a millimetre are enough for a place, and short to write. */
const rounded = (value: Mm): Mm => Math.round(value * 100) / 100;

const placementsOf = (pieces: readonly Piece[], { standing }: Arrangement): readonly Placement[] =>
  pieces.flatMap(({ name }) =>
    standing
      .filter(({ shape }) => shape.piece === name)
      .map(({ shape, x, y }) => ({
        piece: name,
        x: rounded(x + shape.origin.x),
        y: rounded(y + shape.origin.y),
        turn: shape.turn,
      })),
  );

/** Where every piece is laid by hand nothing is left to be packed: a drag is followed at once. */
const isAllByHand = (pieces: readonly Piece[], { placed }: PrintChoices): boolean =>
  pieces.every(({ name }) => placed.some(({ piece }) => piece === name));

/** Pieces to find room for; and those of which lines are drawn, more where several lie in one place. */
type Pieces = { readonly pieces: readonly Piece[]; readonly drawn: readonly Piece[] };

/** The sheets of one way round: laid by the program, then as the maker would have it. */
const laidOut = (
  { pieces, drawn }: Pieces,
  paper: PaperChoice,
  print: PrintChoices,
  lying: boolean,
): Sheets => {
  const whole = paperGrid(paper, print, lying);
  if (isAllByHand(pieces, print)) {
    const byHand = pieces.map(({ name }) => placementOf({ placements: print.placed }, name));
    const laid = laidByHand(pieces, byHand, []);
    return cutIntoSheets(drawn, { paper, print, lying, grid: whole, ...laid });
  }
  const arrangement = bestOf(pieces, whole);
  const found = { ...arrangement, placements: placementsOf(pieces, arrangement) };
  const laid = print.placed.length > 0 ? laidByHand(pieces, found.placements, print.placed) : found;
  return cutIntoSheets(drawn, { paper, print, lying, grid: whole, ...laid });
};

/**
 * Sheets that lie: orders were chosen for sheets that stand, so plain rows are looked at too, and
 * taken where they need fewer.
 */
const lyingOut = (all: Pieces, paper: PaperChoice, print: PrintChoices): Sheets => {
  const ours = laidOut(all, paper, print, true);
  if (print.placed.length > 0) return ours;
  const grid = paperGrid(paper, print, true);
  const rows = plainRows(all.pieces, grid);
  return rows.sheets < ours.pages.length
    ? cutIntoSheets(all.drawn, { paper, print, lying: true, grid, ...rows })
    : ours;
};

const cellCount = ({ rows, columns }: Sheets): number => rows * columns;

/**
 * Lays all pieces out on one drawing and cuts it into sheets. Of several arrangements the one with
 * fewest sheets is taken; sheets without a line of the pattern are left out.
 */
export const layOut = (
  pieces: readonly Piece[],
  paper: PaperChoice,
  print: PrintChoices = DEFAULT_PRINT,
  drawn: readonly Piece[] = pieces,
): Sheets => {
  const all: Pieces = { pieces, drawn };
  const isRoll = paperOf(paper).height === null;
  if (isRoll || print.turn === "portrait") return laidOut(all, paper, print, false);
  const lying = lyingOut(all, paper, print);
  if (print.turn === "landscape") return lying;
  const upright = laidOut(all, paper, print, false);
  const more = upright.pages.length - lying.pages.length || cellCount(upright) - cellCount(lying);
  return more > 0 ? lying : upright;
};
