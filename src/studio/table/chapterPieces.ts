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
  ribs: [["hemBand"], ["cuff", "vInsert"], ["neckband"]],
  turnings: [BODY, ["hemBand"], SMALL],
  paper: [],
  making: [],
};

/** One leaf: only what is wide enough to be read there. */
const NARROW_ROWS: Readonly<Record<Chapter, readonly (readonly PieceName[])[]>> = {
  ...ROWS,
  cloth: [BODY],
  alterations: [BODY],
  turnings: [BODY],
  ribs: [["hemBand"], ["cuff", "neckband"]],
};

/** The pieces on the table: the block's in its own chapter, the garment's in all others. */
export const piecesFor = (chapter: Chapter, { block, pieces }: Garment): readonly Piece[] =>
  chapter === "block" ? [block.front, block.back, block.sleeve] : pieces;

export const rowsFor = (
  chapter: Chapter,
  pieces: readonly Piece[],
  narrow: boolean,
): readonly (readonly Piece[])[] =>
  (narrow ? NARROW_ROWS : ROWS)[chapter].map((row) =>
    row.flatMap((name) => pieces.find((piece) => piece.name === name) ?? []),
  );

/** Where the block's old lines lie under the new ones. */
export const hasOldLines = (chapter: Chapter): boolean =>
  chapter === "alterations" || chapter === "turnings" || chapter === "cloth";

/** Where turnings are drawn; without them the seam line is drawn wide. */
export const hasTurnings = (chapter: Chapter): boolean => chapter !== "block";
