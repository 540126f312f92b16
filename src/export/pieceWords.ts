import type { Piece } from "../drafting/piece.ts";
import type { Box } from "../geometry/outline.ts";
import { straight } from "../geometry/path.ts";
import { along, apart, dot, minus, type Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { anyCrosses } from "./clip.ts";
import { OVERLAP } from "./data/paper.ts";
import { type FixedWord, fixedWords } from "./fixedWords.ts";
import { type LabelRoom, pieceLabel } from "./label.ts";
import type { Stroke } from "./pieceLines.ts";
import { placedPoint } from "./placing.ts";
import type { Placement } from "./sheets.ts";
import type { SheetSubject } from "./subject.ts";
import { boxOf, grown, isWithin, meets, type Word } from "./word.ts";

/** What the words of one piece must keep clear of. */
export type WordRoom = LabelRoom & {
  readonly placement: Placement;
  /** The piece's own lines as points. */
  readonly chords: readonly (readonly Point[])[];
};

/** The words of a piece, the room that they take, and the line that leads to a label beside it. */
export type PieceWords = {
  readonly words: readonly Word[];
  readonly boxes: readonly Box[];
  readonly leader: readonly Stroke[];
};

/** Free round a word that stands beside a line. */
const CLEAR: Mm = 0.5;

/**
 * A word at the first of its places that is clear of the piece's lines and of other words, and whole
 * on one sheet, off its joints, where any is.
 */
const setBeside = (
  { text, size, strong, places }: FixedWord,
  { placement, chords, windows }: WordRoom,
  taken: readonly Box[],
): Word | null => {
  let across: Word | null = null;
  for (const { at, turn } of places) {
    const { x, y } = placedPoint(placement, at);
    const word: Word = { text, x, y, size, turn: turn + placement.turn, from: "middle", strong };
    const box = grown(boxOf(word), CLEAR);
    if (anyCrosses(chords, box) || taken.some((other) => meets(other, box))) continue;
    if (windows.some((window) => isWithin(box, grown(window, -OVERLAP)))) return word;
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

/** All words of a piece: those beside its lines first, then its label where there is room left. */
export const pieceWords = (piece: Piece, subject: SheetSubject, room: WordRoom): PieceWords => {
  const words: Word[] = [];
  const boxes: Box[] = [];
  for (const fixed of fixedWords(piece, subject.garment)) {
    const word = setBeside(fixed, room, [...room.taken, ...boxes]);
    if (!word) continue;
    words.push(word);
    boxes.push(boxOf(word));
  }
  const label = pieceLabel(piece, subject, { ...room, taken: [...room.taken, ...boxes] });
  if (!label) return { words, boxes, leader: [] };
  return {
    words: [...words, ...label.words],
    boxes: [...boxes, label.box],
    leader: label.beside ? leaderOf(label.box, room.outline) : [],
  };
};
