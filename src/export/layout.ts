import type { Piece, PieceName } from "../drafting/piece.ts";
import { straight } from "../geometry/path.ts";
import type { Mm } from "../geometry/units.ts";
import { type Arrangement, arrange, type Ways } from "./arrange.ts";
import { LINE_STYLES } from "./data/lineStyles.ts";
import { FRONT_PAGES, MARGIN, OVERLAP, PAPERS, type PaperName } from "./data/paper.ts";
import { EDGE } from "./nesting.ts";
import { bandCrease, isBand, seamEdges } from "./pieceLines.ts";
import { placedPath, placementOf } from "./placing.ts";
import { printedSheets, type WideLine } from "./printed.ts";
import type { Placement, SheetPage, Sheets } from "./sheets.ts";
import { silhouetteOf } from "./silhouette.ts";
import { type Grid, gridOf, paperGrid } from "./tiles.ts";

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

/** Sheets one after another that reach so far: the last one's overlap counts. */
const sheetsTo = (reach: Mm, step: Mm): number =>
  Math.max(1, Math.ceil((reach + EDGE - OVERLAP) / step));

/** Sheets that a map of the arrangement has room for, printed or not. */
const cellsOf = ({ right, bottom }: Arrangement, { stepX, stepY }: Grid): number =>
  sheetsTo(right, stepX) * sheetsTo(bottom, stepY);

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

/**
 * The lines for which paper is needed, in the layout. Notches and arrow heads are left out: they
 * stand between or on lines that are here.
 */
const linesOf = (piece: Piece, placement: Placement): readonly WideLine[] => {
  const { grain } = piece;
  const drawn = [
    { kind: "cut" as const, path: piece.cutLine },
    ...seamEdges(piece).map(({ path }) => ({ kind: "sew" as const, path })),
    ...bandCrease(piece),
    { kind: "grain" as const, path: straight(grain.from, grain.to) },
  ];
  return drawn.map(({ kind, path }) => ({
    path: placedPath(placement, path),
    half: LINE_STYLES[kind].width / 2,
  }));
};

/** A roll is cut where the drawing ends, to the whole millimetre; other sheets are as they are. */
const cutToLength = (paper: PaperName, grid: Grid, bottom: Mm): Grid => {
  if (PAPERS[paper].height !== null || bottom + EDGE > grid.windowHeight) return grid;
  return gridOf(grid.sheetWidth, Math.ceil(bottom + EDGE) + 2 * MARGIN);
};

/**
 * Lays all pieces out on one drawing and cuts it into sheets. Of several arrangements the one with
 * fewest sheets is taken; sheets without a line of the pattern are left out.
 */
export const layOut = (pieces: readonly Piece[], paper: PaperName): Sheets => {
  const whole = paperGrid(paper);
  const arrangement = bestOf(pieces, whole);
  const grid = cutToLength(paper, whole, arrangement.bottom);
  const placements = placementsOf(pieces, arrangement);
  const places = { placements };
  const lines = pieces.flatMap((piece) => linesOf(piece, placementOf(places, piece.name)));
  const isPrinted = printedSheets(lines, grid);
  const rows = sheetsTo(arrangement.bottom, grid.stepY);
  const columns = sheetsTo(arrangement.right, grid.stepX);
  const pages: SheetPage[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (!isPrinted(row, column)) continue;
      const [x, y] = [column * grid.stepX - MARGIN, row * grid.stepY - MARGIN];
      pages.push({ page: FRONT_PAGES + pages.length + 1, x, y, row, column });
    }
  }
  return {
    paper,
    count: FRONT_PAGES + pages.length,
    width: grid.sheetWidth,
    height: grid.sheetHeight,
    pages,
    placements,
    rows,
    columns,
  };
};
