import type { Garment } from "../../bands/garment.ts";
import type { Piece, PieceName } from "../../drafting/piece.ts";
import type { Chapter } from "../chapters/chapters.ts";

const BODY: readonly PieceName[] = ["front", "back", "sleeve"];
const SMALL: readonly PieceName[] = ["neckband", "cuff", "vInsert"];

/** Which pieces a chapter lays out, in rows. */
const ROWS: Readonly<Record<Chapter, readonly (readonly PieceName[])[]>> = {
  measures: [],
  cloth: [BODY],
  block: [BODY],
  alterations: [BODY, SMALL],
  ribs: [["hemBand"], ["cuff"], ["neckband"]],
  turnings: [BODY, ["hemBand"], SMALL],
  paper: [],
  making: [],
};

/** Beside the page on a small screen. */
const MIDDLE_ROWS: Readonly<Record<Chapter, readonly (readonly PieceName[])[]>> = {
  ...ROWS,
  alterations: [BODY, ["neckband", "vInsert"]],
  turnings: [BODY, ["hemBand"], ["neckband", "cuff"]],
};

/** One leaf: only what is wide enough to be read there. */
const NARROW_ROWS: Readonly<Record<Chapter, readonly (readonly PieceName[])[]>> = {
  ...ROWS,
  cloth: [["front", "sleeve"]],
  block: [["front", "sleeve"]],
  alterations: [["front", "sleeve"]],
  turnings: [["front", "sleeve"]],
  ribs: [["hemBand"], ["cuff", "neckband"]],
};

/** Widths of the table, in px, under which fewer pieces are laid out. */
export const NARROW = 480;
const MIDDLE = 700;

/** The pieces on the table: the block's in its own chapter, the garment's in all others. */
export const piecesFor = (chapter: Chapter, { block, pieces }: Garment): readonly Piece[] =>
  chapter === "block" ? [block.front, block.back, block.sleeve] : pieces;

export const rowsFor = (
  chapter: Chapter,
  pieces: readonly Piece[],
  width: number,
): readonly (readonly Piece[])[] =>
  (width < NARROW ? NARROW_ROWS : width < MIDDLE ? MIDDLE_ROWS : ROWS)[chapter].map((row) =>
    row.flatMap((name) => pieces.find((piece) => piece.name === name) ?? []),
  );

/** Where the block's old lines lie under the new ones. */
export const hasOldLines = (chapter: Chapter): boolean =>
  chapter === "alterations" || chapter === "turnings" || chapter === "cloth";

/** Where turnings are drawn; without them the seam line is drawn wide. */
export const hasTurnings = (chapter: Chapter): boolean => chapter !== "block";
