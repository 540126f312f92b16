import type { Piece, PieceName } from "../drafting/piece.ts";
import { type Box, boundsOf } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { LINE_STYLES } from "./data/lineStyles.ts";
import { flattened } from "./flatten.ts";
import { type Ink, inkOf } from "./freeSpace.ts";
import { layoutWords } from "./layoutWords.ts";
import { pieceLines, type Stroke } from "./pieceLines.ts";
import { placedPath, placementOf } from "./placing.ts";
import { type Printed, printedSheets } from "./printed.ts";
import type { Sheets } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { windowOf } from "./tiles.ts";
import { boxOf, type Word } from "./word.ts";

/** How true the points are by which words are kept clear of lines. */
const WITHIN: Mm = 0.2;

/** One piece of the layout: its lines and words, in the layout's frame. */
export type PieceDrawing = {
  readonly piece: PieceName;
  readonly strokes: readonly Stroke[];
  readonly words: readonly Word[];
  /** Round its cut line. */
  readonly box: Box;
  /** Which sheets its lines fall on. */
  readonly isOn: Printed;
};

/** All pieces where they stand, and where ink lies between them. Every output starts here. */
export type LayoutDrawing = {
  readonly pieces: readonly PieceDrawing[];
  readonly ink: Ink;
  /** The test square of each sheet, in the order of its pages. */
  readonly squares: readonly Box[];
  /** Round every word on the pieces, piece by piece. */
  readonly wordBoxes: readonly Box[];
};

const strokesOf = (piece: Piece, sheets: Sheets): readonly Stroke[] => {
  const placement = placementOf(sheets, piece.name);
  return pieceLines(piece).map((stroke) => ({
    ...stroke,
    path: placedPath(placement, stroke.path),
  }));
};

/** The printed part of every sheet that is not left out. */
export const windowsOf = ({ grid, pages }: Sheets): readonly Box[] =>
  pages.map(({ row, column }) => windowOf(grid, row, column));

/** Round all that is cut along or laid on the fold. */
const boxRound = (strokes: readonly Stroke[]): Box => {
  const boxes = strokes
    .filter(({ kind }) => kind === "cut" || kind === "fold")
    .map(({ path }) => boundsOf(path));
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
};

/** The sheets on which a piece has lines; its bracket only explains one. */
const sheetsUnder = (strokes: readonly Stroke[], { grid }: Sheets): Printed =>
  printedSheets(
    strokes
      .filter(({ kind }) => kind !== "bracket")
      .map(({ kind, path }) => ({ path, half: LINE_STYLES[kind].width / 2 })),
    grid,
  );

/**
 * Draws every piece of a subject where the sheets have it, among other lines of the same piece where
 * several sizes lie one over the other.
 */
export const drawAmong = (
  subject: SheetSubject,
  sheets: Sheets,
  others: (piece: Piece) => readonly Stroke[],
): LayoutDrawing => {
  const { pieces } = subject.garment;
  const lines = pieces.map((piece) => [...strokesOf(piece, sheets), ...others(piece)]);
  const windows = windowsOf(sheets);
  const width = Math.max(...windows.map(({ right }) => right));
  const height = Math.max(...windows.map(({ bottom }) => bottom));
  const chords = lines.map((strokes) => strokes.map(({ path }) => flattened(path, WITHIN)));
  const ink = inkOf(chords.flat(), width, height);
  const { words, leaders, squares } = layoutWords(subject, { sheets, windows, ink, chords });
  return {
    ink,
    squares,
    wordBoxes: words.flatMap((ofPiece) => ofPiece.map(boxOf)),
    pieces: pieces.map((piece, i) => ({
      piece: piece.name,
      strokes: [...(lines[i] ?? []), ...(leaders[i] ?? [])],
      words: words[i] ?? [],
      box: boxRound(lines[i] ?? []),
      isOn: sheetsUnder(lines[i] ?? [], sheets),
    })),
  };
};

type Drawn = { readonly subject: SheetSubject; readonly drawing: LayoutDrawing };

/** The last drawing of each layout: PDF, SVG and DXF of one body are made from the same one. */
const drawn = new WeakMap<Sheets, Drawn>();

/** Every piece of a subject, drawn where the sheets have it. */
export const drawLayout = (subject: SheetSubject, sheets: Sheets): LayoutDrawing => {
  const known = drawn.get(sheets);
  if (known?.subject === subject) return known.drawing;
  const drawing = drawAmong(subject, sheets, () => []);
  drawn.set(sheets, { subject, drawing });
  return drawing;
};
