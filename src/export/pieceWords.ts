import type { Piece } from "../drafting/piece.ts";
import type { Box } from "../geometry/outline.ts";
import { straight } from "../geometry/path.ts";
import { along, apart, dot, minus, type Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { anyCrosses } from "./clip.ts";
import type { FixedWord } from "./fixedWords.ts";
import { type LabelRoom, pieceLabel } from "./label.ts";
import type { Stroke } from "./pieceLines.ts";
import type { Placement } from "./placement.ts";
import { placedPoint } from "./placing.ts";
import type { SheetSubject } from "./subject.ts";
import { boxOf, grown, isWithin, meets, type Word } from "./word.ts";

/** What the words of one piece must keep clear of. */
export type WordRoom = LabelRoom & {
  readonly placement: Placement;
  /** The piece's own lines as points. */
  readonly chords: readonly (readonly Point[])[];
};

/** The label of a piece and the line that leads to it where it stands beside. */
export type PieceLabel = { readonly words: readonly Word[]; readonly leader: readonly Stroke[] };

/** Free round a word that stands beside a line. */
const CLEAR: Mm = 0.5;

/**
 * A word at the first of its places that is clear of the piece's lines and of other words, and whole
 * on one sheet, off its joints, where any is.
 */
const setBeside = (
  { text, size, strong, places }: FixedWord,
  { placement, chords, windows, overlap, taken }: WordRoom,
): Word | null => {
  let across: Word | null = null;
  for (const { at, turn } of places) {
    const { x, y } = placedPoint(placement, at);
    const word: Word = { text, x, y, size, turn: turn + placement.turn, from: "middle", strong };
    const box = grown(boxOf(word), CLEAR);
    if (anyCrosses(chords, box) || taken.some((other) => meets(other, box))) continue;
    if (windows.some((window) => isWithin(box, grown(window, -overlap)))) return word;
    across ??= word;
  }
  return across;
};

/** The point of the straight from `a` to `b` that is nearest to `p`. */
const nearestOn = (a: Point, b: Point, p: Point): Point => {
  const [way, size] = [minus(b, a), apart(a, b)];
  const share = size === 0 ? 0 : dot(minus(p, a), way) / (size * size);
  return along(a, b, Math.min(1, Math.max(0, share)));
};

/** From the label's nearer side to the nearest point of the cut line. */
const leaderOf = (
  { left, top, right, bottom }: Box,
  outline: readonly Point[],
): readonly Stroke[] => {
  const middle = { x: (left + right) / 2, y: (top + bottom) / 2 };
  const starts = [
    { x: left - CLEAR, y: middle.y },
    { x: right + CLEAR, y: middle.y },
    { x: middle.x, y: top - CLEAR },
    { x: middle.x, y: bottom + CLEAR },
  ];
  let best: readonly [Point, Point] | null = null;
  for (const start of starts) {
    for (const [i, to] of outline.entries()) {
      const end = nearestOn(outline[i - 1] ?? to, to, start);
      if (!best || apart(start, end) < apart(...best)) best = [start, end];
    }
  }
  return best ? [{ kind: "bracket", path: straight(...best), closed: false }] : [];
};

/** Of the words given those that find a place, one after another. */
export const wordsBeside = (fixed: readonly FixedWord[], room: WordRoom): readonly Word[] => {
  const found: Word[] = [];
  for (const word of fixed) {
    const set = setBeside(word, { ...room, taken: [...room.taken, ...found.map(boxOf)] });
    if (set) found.push(set);
  }
  return found;
};

/** A piece's title and what must be known to cut it. */
export const labelOf = (piece: Piece, subject: SheetSubject, room: WordRoom): PieceLabel => {
  const label = pieceLabel(piece, subject, room);
  if (!label) return { words: [], leader: [] };
  return {
    words: label.words,
    leader: label.beside ? leaderOf(label.box, room.outline) : [],
  };
};
