import type { Piece } from "../drafting/piece.ts";
import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { lineWords, sideWords } from "./fixedWords.ts";
import { flattened } from "./flatten.ts";
import type { Ink } from "./freeSpace.ts";
import type { Stroke } from "./pieceLines.ts";
import { labelOf, type WordRoom, wordsBeside } from "./pieceWords.ts";
import { placedPath, placementOf } from "./placing.ts";
import type { Sheets } from "./sheets.ts";
import { squarePlaces } from "./squarePlaces.ts";
import type { SheetSubject } from "./subject.ts";
import { boxOf, type Word } from "./word.ts";

/** The layout before a word is set. */
export type BareLayout = {
  readonly sheets: Sheets;
  /** The printed part of every sheet. */
  readonly windows: readonly Box[];
  readonly ink: Ink;
  /** The lines of each piece as runs of points. */
  readonly chords: readonly (readonly (readonly Point[])[])[];
};

export type LayoutWords = {
  /** Of each piece. */
  readonly words: readonly (readonly Word[])[];
  /** Of each piece: the line that leads to a label beside it. */
  readonly leaders: readonly (readonly Stroke[])[];
  /** The test square of each sheet. */
  readonly squares: readonly Box[];
};

/** How true the outlines are by which words are kept inside their piece. */
const WITHIN: Mm = 0.2;

/** A room in which nothing is taken yet. */
type EmptyRoom = Omit<WordRoom, "taken">;

const roomsOf = (
  pieces: readonly Piece[],
  { sheets, windows, ink, chords }: BareLayout,
): readonly EmptyRoom[] => {
  const standing = pieces.map((piece) => {
    const placement = placementOf(sheets, piece.name);
    return { placement, outline: flattened(placedPath(placement, piece.cutLine), WITHIN) };
  });
  const outlines = standing.map(({ outline }) => outline);
  return standing.map((piece, i) => ({
    ...piece,
    ink,
    windows,
    overlap: sheets.grid.overlap,
    outlines,
    chords: chords[i] ?? [],
  }));
};

type Set = { readonly words: readonly Word[] };

/**
 * Words and test squares, those with the fewest places first: words beside lines, squares, the names
 * of a sleeve's sides, labels. Each keeps clear of every line and of what stands before it.
 */
export const layoutWords = (subject: SheetSubject, layout: BareLayout): LayoutWords => {
  const { garment } = subject;
  const rooms = roomsOf(garment.pieces, layout);
  const taken: Box[] = [];
  const onEach = <T extends Set>(set: (piece: Piece, room: WordRoom) => T): readonly T[] =>
    garment.pieces.flatMap((piece, i) => {
      const room = rooms[i];
      if (!room) return [];
      const found = set(piece, { ...room, taken });
      taken.push(...found.words.map(boxOf));
      return [found];
    });
  const beside = onEach((piece, room) => ({ words: wordsBeside(lineWords(piece, garment), room) }));
  const squares = squarePlaces({
    ...layout,
    overlap: layout.sheets.grid.overlap,
    lines: layout.chords.flat(),
    taken,
  });
  taken.push(...squares);
  const sides = onEach((piece, room) => ({ words: wordsBeside(sideWords(piece), room) }));
  const labels = onEach((piece, room) => labelOf(piece, subject, room));
  return {
    words: rooms.map((_, i) => [beside, sides, labels].flatMap((set) => set[i]?.words ?? [])),
    leaders: labels.map(({ leader }) => leader),
    squares,
  };
};
