import type { Piece } from "../drafting/piece.ts";
import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { isInside } from "./clip.ts";
import { type Ink, inkIn } from "./freeSpace.ts";
import { pieceFacts, titleOf } from "./pieceFacts.ts";
import type { SheetSubject } from "./subject.ts";
import { blockOf, plainLines, type TextBlock, wordsAt } from "./textBlock.ts";
import { grown, isWithin, meets, type Word } from "./word.ts";

/** What a label must keep clear of, in the layout's frame. */
export type LabelRoom = {
  readonly ink: Ink;
  /** Words that are set already. */
  readonly taken: readonly Box[];
  /** The printed part of every sheet. */
  readonly windows: readonly Box[];
  /** The cut line of the label's piece, as points. */
  readonly outline: readonly Point[];
  /** Cut lines of all pieces. */
  readonly outlines: readonly (readonly Point[])[];
};

export type Label = {
  readonly words: readonly Word[];
  readonly box: Box;
  readonly beside: boolean;
};

type Size = { readonly title: Mm; readonly text: Mm; readonly wide: Mm };

/** From large to small: the first that fits is taken. */
const SIZES: readonly Size[] = [
  { title: 9, text: 3.6, wide: 84 },
  { title: 7, text: 3.2, wide: 70 },
  { title: 5.5, text: 2.8, wide: 160 },
  { title: 4.5, text: 2.6, wide: 60 },
  { title: 4, text: 2.5, wide: 34 },
];
/** Free on all sides of a label. */
const CLEAR: Mm = 2;
/** Labels are tried at places this far apart. */
const STRIDE: Mm = 4;
/** How far beside a piece that is too small for it a label may stand. */
const NEAR: Mm = 70;
/** Sheets overlap here; a label that lies across a joint is read only when they are joined. */
const JOINT: Mm = 10;
/** Weighs more than any way within a sheet. */
const ACROSS_A_JOINT = 2000;

const labelBlock = (piece: Piece, subject: SheetSubject, { title, text, wide }: Size): TextBlock =>
  blockOf([
    { text: titleOf(piece), size: title, strong: true },
    ...pieceFacts(piece, subject).flatMap((fact) => plainLines(fact, text, wide)),
  ]);

const middleOf = ({ left, top, right, bottom }: Box): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
});

const boxRound = (points: readonly Point[]): Box => ({
  left: Math.min(...points.map(({ x }) => x)),
  top: Math.min(...points.map(({ y }) => y)),
  right: Math.max(...points.map(({ x }) => x)),
  bottom: Math.max(...points.map(({ y }) => y)),
});

const corners = ({ left, top, right, bottom }: Box): readonly Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

/** Whether all of a box is printed, on one sheet or over a joint. */
const isPrinted = (box: Box, windows: readonly Box[]): boolean =>
  [middleOf(box), ...corners(box)].every(({ x, y }) =>
    windows.some((w) => x >= w.left && x <= w.right && y >= w.top && y <= w.bottom),
  );

const isClear = (box: Box, { ink, taken }: LabelRoom): boolean => {
  const wide = grown(box, CLEAR);
  return inkIn(ink, wide) === 0 && !taken.some((other) => meets(other, wide));
};

/** How far a place is from where it is wanted; far more where it lies across a joint. */
const costOf = (box: Box, wanted: Point, windows: readonly Box[]): number => {
  const { x, y } = middleOf(box);
  const whole = windows.some((w) => isWithin(box, grown(w, -JOINT)));
  return Math.hypot(x - wanted.x, y - wanted.y) + (whole ? 0 : ACROSS_A_JOINT);
};

/** The cheapest clear place for a box of this size within `field`, or null. */
const bestPlace = (
  field: Box,
  size: readonly [width: Mm, height: Mm],
  isRight: (box: Box) => boolean,
  room: LabelRoom,
): Box | null => {
  const wanted = middleOf(boxRound(room.outline));
  let best: Box | null = null;
  let least = Infinity;
  for (let top = field.top; top + size[1] <= field.bottom; top += STRIDE) {
    for (let left = field.left; left + size[0] <= field.right; left += STRIDE) {
      const box = { left, top, right: left + size[0], bottom: top + size[1] };
      const cost = costOf(box, wanted, room.windows);
      if (cost >= least || !isClear(box, room) || !isRight(box)) continue;
      [best, least] = [box, cost];
    }
  }
  return best;
};

const labelAt = (block: TextBlock, box: Box, turn: 0 | 90, beside: boolean): Label => {
  const corner = turn === 0 ? { x: box.left, y: box.top } : { x: box.right, y: box.top };
  return { words: wordsAt(block, corner, turn), box, beside };
};

/** Inside the piece, upright or read down the sheet, in the largest size that fits. */
const labelInside = (blocks: readonly TextBlock[], room: LabelRoom): Label | null => {
  const field = boxRound(room.outline);
  const isRight = (box: Box): boolean =>
    isPrinted(box, room.windows) && isInside(room.outline, middleOf(box));
  for (const block of blocks) {
    for (const turn of [0, 90] as const) {
      const { width, height } = block;
      const box = bestPlace(field, turn === 0 ? [width, height] : [height, width], isRight, room);
      if (box) return labelAt(block, box, turn, false);
    }
  }
  return null;
};

/** Outside every piece, as near to its own as there is room. */
const labelBeside = (block: TextBlock, room: LabelRoom): Label | null => {
  const field = grown(boxRound(room.outline), NEAR);
  const isRight = (box: Box): boolean =>
    isPrinted(box, room.windows) &&
    !room.outlines.some((outline) => isInside(outline, middleOf(box)));
  const box = bestPlace(field, [block.width, block.height], isRight, room);
  return box ? labelAt(block, box, 0, true) : null;
};

/** A piece's title and what must be known to cut it, clear of all lines; null: nowhere is room. */
export const pieceLabel = (piece: Piece, subject: SheetSubject, room: LabelRoom): Label | null => {
  const blocks = SIZES.map((size) => labelBlock(piece, subject, size));
  const smallest = blocks[blocks.length - 1];
  return labelInside(blocks, room) ?? (smallest ? labelBeside(smallest, room) : null);
};
