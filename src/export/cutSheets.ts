import type { Piece } from "../drafting/piece.ts";
import { boundsOf } from "../geometry/outline.ts";
import { straight } from "../geometry/path.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import { LINE_STYLES, type LineKind } from "./data/lineStyles.ts";
import { FRONT_PAGES } from "./data/paper.ts";
import { EDGE } from "./nesting.ts";
import { type PaperChoice, paperOf } from "./paperSize.ts";
import { bandCrease, seamEdges } from "./pieceLines.ts";
import type { Placement } from "./placement.ts";
import { placedPath, placementOf } from "./placing.ts";
import type { PrintChoices } from "./printChoices.ts";
import { printedSheets, type WideLine } from "./printed.ts";
import type { SheetPage, Sheets } from "./sheets.ts";
import { type Grid, gridOf } from "./tiles.ts";
import { isWhole, wantedPages } from "./wanted.ts";

/** Sheets one after another that reach so far: the last one's overlap counts. */
export const sheetsTo = (reach: Mm, step: Mm, overlap: Mm): number =>
  Math.max(1, Math.ceil((reach + EDGE - overlap) / step));

/** Pieces where they stand, and how far they reach. */
type Laid = {
  readonly placements: readonly Placement[];
  readonly right: Mm;
  readonly bottom: Mm;
};

/** Some pieces where the maker would have them, all moved so that none lies off the drawing. */
export const laidByHand = (
  pieces: readonly Piece[],
  found: readonly Placement[],
  placed: readonly Placement[],
): Laid => {
  const wanted = found.map((own) => placed.find(({ piece }) => piece === own.piece) ?? own);
  const boxes = pieces.map((piece) =>
    boundsOf(placedPath(placementOf({ placements: wanted }, piece.name), piece.cutLine)),
  );
  const right = EDGE - Math.min(EDGE, ...boxes.map((box) => box.left));
  const down = EDGE - Math.min(EDGE, ...boxes.map((box) => box.top));
  return {
    placements: wanted.map((own) => ({ ...own, x: own.x + right, y: own.y + down })),
    right: Math.max(...boxes.map((box) => box.right)) + right,
    bottom: Math.max(...boxes.map((box) => box.bottom)) + down,
  };
};

/**
 * The lines for which paper is needed, and where they stand. Notches and arrow heads are left out: they
 * stand between or on lines that are here.
 */
export const pieceSheetLines = (piece: Piece, placement: Placement): readonly WideLine[] => {
  const lines: WideLine[] = [];
  const add = (kind: LineKind, path: Path): void => {
    lines.push({ path, half: LINE_STYLES[kind].width / 2, placement });
  };
  add("cut", piece.cutLine);
  for (const { path } of seamEdges(piece)) add("sew", path);
  for (const { kind, path } of bandCrease(piece)) add(kind, path);
  add("grain", straight(piece.grain.from, piece.grain.to));
  return lines;
};

type Whole = Laid & {
  readonly paper: PaperChoice;
  readonly print: PrintChoices;
  readonly lying: boolean;
  readonly grid: Grid;
};

type Cut = { readonly grid: Grid; readonly width: Mm; readonly height: Mm };

/** A roll is cut where the drawing ends, to the whole millimetre; other sheets are as they are. */
const cutToLength = ({ paper, print, lying, grid, bottom }: Whole): Cut => {
  const { width, height } = paperOf(paper);
  if (height !== null)
    return lying ? { grid, width: height, height: width } : { grid, width, height };
  const { top, bottom: foot } = print.margins;
  const reach = Math.min(bottom + EDGE, grid.windowHeight) * Math.max(1, grid.drawnY);
  const long = Math.ceil(reach) + top + foot;
  return { grid: gridOf(width, long, print), width, height: long };
};

/** Cuts a layout into sheets; those that no line of the pattern falls on are left out. */
export const cutIntoSheets = (pieces: readonly Piece[], whole: Whole): Sheets => {
  const { paper, print, lying, placements } = whole;
  const { grid, width, height } = cutToLength(whole);
  const lines = pieces.flatMap((piece) => pieceSheetLines(piece, placementOf(whole, piece.name)));
  const isPrinted = printedSheets(lines, grid);
  const rows = sheetsTo(whole.bottom, grid.stepY, grid.overlap);
  const columns = sheetsTo(whole.right, grid.stepX, grid.overlap);
  const pages: SheetPage[] = [];
  for (let row = 0; row < rows; row++) {
    for (let column = 0; column < columns; column++) {
      if (!isPrinted(row, column)) continue;
      const [x, y] = [column * grid.stepX - grid.left, row * grid.stepY - grid.top];
      pages.push({ page: FRONT_PAGES + pages.length + 1, x, y, row, column });
    }
  }
  return {
    paper,
    print,
    count: isWhole({ print }) ? FRONT_PAGES + pages.length : wantedPages({ pages, print }).length,
    width,
    height,
    lying,
    grid,
    pages,
    placements,
    rows,
    columns,
  };
};
