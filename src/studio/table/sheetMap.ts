import type { Piece } from "../../drafting/piece.ts";
import type { Placement } from "../../export/placement.ts";
import type { SheetPage, Sheets } from "../../export/sheets.ts";
import { sheetName } from "../../export/tiles.ts";
import { placedBox } from "./laying.ts";

type Cell = {
  readonly row: number;
  readonly column: number;
  readonly x: number;
  readonly y: number;
  readonly page: SheetPage | null;
};

export type SheetMap = {
  readonly cells: readonly Cell[];
  readonly stepX: number;
  readonly stepY: number;
  readonly width: number;
  readonly height: number;
};

/** Sheets are named by row letter and column number: A1, B3. */
export const nameOf = ({ row, column }: { row: number; column: number }): string =>
  sheetName(row, column);

/** Every place of the map, whether a sheet is printed there or not; in layout mm. */
export const sheetMap = (sheets: Sheets): SheetMap => {
  const { rows, columns, grid } = sheets;
  const stepX = columns > 1 ? grid.stepX : grid.windowWidth;
  const stepY = rows > 1 ? grid.stepY : grid.windowHeight;
  const cells = Array.from({ length: rows * columns }, (_, i) => {
    const [row, column] = [Math.floor(i / columns), i % columns];
    const page = sheets.pages.find((p) => p.row === row && p.column === column) ?? null;
    return { row, column, x: column * stepX, y: row * stepY, page };
  });
  return { cells, stepX, stepY, width: stepX * columns, height: stepY * rows };
};

/** Where the map lies on the screen: px = mm × scale + shift. */
export type MapView = { readonly x: number; readonly y: number; readonly scale: number };

/** A piece where it stands in the layout, with the middle of its name. */
export type Laid = {
  readonly piece: Piece;
  readonly at: Placement;
  readonly x: number;
  readonly y: number;
  /** Too narrow for its name across. */
  readonly upright: boolean;
};

/** Of a place: its own name stands above this, and the middle of an upright name here clears it. */
const CLEAR_OF_NAME = { across: 0.3, upright: 0.58 } as const;

/** The middle of a piece's name: the piece's own, or as far below it as clears the name of the place. */
const nameLevel = (top: number, bottom: number, upright: boolean, step: number): number => {
  const middle = (top + bottom) / 2;
  const place = Math.floor(middle / step);
  const share = middle / step - place;
  const clear = (place + CLEAR_OF_NAME[upright ? "upright" : "across"]) * step;
  const isFree = upright ? bottom - top < step : share >= CLEAR_OF_NAME.across;
  return isFree || clear > bottom ? middle : clear;
};

export const laidPieces = (pieces: readonly Piece[], sheets: Sheets): readonly Laid[] => {
  const { stepY } = sheetMap(sheets);
  return sheets.placements.flatMap((at) => {
    const piece = pieces.find(({ name }) => name === at.piece);
    if (!piece) return [];
    const { left, right, top, bottom } = placedBox(piece, at);
    const upright = bottom - top > 2 * (right - left);
    const y = nameLevel(top, bottom, upright, stepY);
    return [{ piece, at, x: (left + right) / 2, y, upright }];
  });
};

/** A piece's own frame on the screen. */
export const mapFrame = ({ x, y, turn }: Placement, view: MapView): string =>
  `translate(${view.x + x * view.scale} ${view.y + y * view.scale}) rotate(${turn}) scale(${view.scale})`;
