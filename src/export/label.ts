import type { Piece } from "../drafting/piece.ts";
import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { newProbe } from "./clearPlace.ts";
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
  /** How far sheets overlap: a label keeps clear of it if it can. */
  readonly overlap: Mm;
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

/** A way to set a label: what of it stands on lines of its own, how large, and how it reads. */
type Setting = {
  readonly title: Mm;
  readonly text: Mm;
  /** The facts are broken to this width. */
  readonly wide: Mm;
  /** Facts each on lines of their own; all on one line; or on the title's line. */
  readonly lines: "each" | "one" | "none";
  /** Which facts: all; without the body's name, which every sheet has; how it is cut alone. */
  readonly facts: "all" | "nameless" | "first";
  readonly turn: 0 | 90;
};

/** From the best to read to the smallest. The first that fits in the piece is taken. */
const SETTINGS: readonly Setting[] = [
  { title: 9, text: 3.6, wide: 84, lines: "each", turn: 0, facts: "all" },
  { title: 7, text: 3.2, wide: 66, lines: "each", turn: 0, facts: "all" },
  { title: 5.5, text: 2.9, wide: 56, lines: "each", turn: 0, facts: "all" },
  { title: 9, text: 3.6, wide: 130, lines: "each", turn: 90, facts: "all" },
  { title: 7, text: 3.2, wide: 130, lines: "each", turn: 90, facts: "all" },
  { title: 5.5, text: 2.9, wide: 44, lines: "each", turn: 0, facts: "all" },
  { title: 4.6, text: 2.7, wide: Infinity, lines: "one", turn: 0, facts: "all" },
  { title: 4.6, text: 2.7, wide: Infinity, lines: "one", turn: 90, facts: "all" },
  { title: 4.6, text: 2.7, wide: Infinity, lines: "one", turn: 90, facts: "nameless" },
  { title: 2.9, text: 2.9, wide: Infinity, lines: "none", turn: 0, facts: "nameless" },
  { title: 2.9, text: 2.9, wide: Infinity, lines: "none", turn: 90, facts: "nameless" },
  { title: 2.9, text: 2.9, wide: Infinity, lines: "none", turn: 0, facts: "first" },
  { title: 2.9, text: 2.9, wide: Infinity, lines: "none", turn: 90, facts: "first" },
];
/** Where none of them fits, the label stands beside its piece. */
const BESIDE: Setting = { title: 4, text: 2.5, wide: 40, lines: "each", turn: 0, facts: "all" };
/** Free on all sides of a label: less round a small one, which has to fit into a narrow band. */
const CLEAR: Mm = 2;
const CLEAR_SMALL: Mm = 1;
const SMALL_TITLE: Mm = 5;

const clearOf = ({ title }: Setting): Mm => (title > SMALL_TITLE ? CLEAR : CLEAR_SMALL);
/** Labels are tried at places this far apart. */
const STRIDE: Mm = 5;
/** How far beside a piece that is too small for it a label may stand. */
const NEAR: Mm = 70;
/** A label across a joint is read only when they are joined: it weighs more than any way. */
const ACROSS_A_JOINT = 2000;

const labelBlock = (piece: Piece, subject: SheetSubject, setting: Setting): TextBlock => {
  const { title, text, wide, lines } = setting;
  const told = pieceFacts(piece, subject, setting.facts !== "all");
  const facts = setting.facts === "first" ? told.slice(0, 1) : told;
  const own = lines === "each" ? facts : [facts.join(". ")];
  if (lines === "none") {
    return blockOf([{ text: `${titleOf(piece)}. ${own.join("")}`, size: title, strong: false }]);
  }
  return blockOf([
    { text: titleOf(piece), size: title, strong: true },
    ...own.flatMap((fact) => plainLines(fact, text, wide)),
  ]);
};

const middleOf = ({ left, top, right, bottom }: Box): Point => ({
  x: (left + right) / 2,
  y: (top + bottom) / 2,
});

const boxRound = (points: readonly Point[]): Box => {
  const box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };
  for (const { x, y } of points) {
    box.left = Math.min(box.left, x);
    box.top = Math.min(box.top, y);
    box.right = Math.max(box.right, x);
    box.bottom = Math.max(box.bottom, y);
  }
  return box;
};

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

const isApart = (box: Box, clear: Mm, { taken }: LabelRoom): boolean => {
  const wide = grown(box, clear);
  return !taken.some((other) => meets(other, wide));
};

/** Where and how large a label may stand. */
type Search = {
  readonly field: Box;
  readonly width: Mm;
  readonly height: Mm;
  readonly clear: Mm;
  /** Whether a clear box is in the right place. */
  readonly isRight: (box: Box) => boolean;
};

/** Where a label may stand, and whether one sheet shows all of it. */
type Found = { readonly box: Box; readonly isWhole: boolean };

/** Rows of places, the nearest to `middle` first: a near place found soon rules most others out. */
const rowsFrom = ({ field, height }: Search, middle: Mm): readonly Mm[] => {
  const count = Math.max(0, Math.floor((field.bottom - height - field.top) / STRIDE) + 1);
  const away = (top: Mm): Mm => Math.abs(top + height / 2 - middle);
  return Array.from({ length: count }, (_, row) => field.top + row * STRIDE).sort(
    (a, b) => away(a) - away(b) || a - b,
  );
};

/** The cheapest clear place: near the middle of the piece, and whole on one sheet if it can be. */
const bestPlace = (search: Search, room: LabelRoom): Found | null => {
  const { field, width, height, clear, isRight } = search;
  const { x, y } = middleOf(boxRound(room.outline));
  const inner = room.windows.map((window) => grown(window, -room.overlap));
  const probe = newProbe();
  let best: Found | null = null;
  let least = Infinity;
  for (const top of rowsFrom(search, y)) {
    const dy = top + height / 2 - y;
    if (Math.abs(dy) >= least) break;
    const bottom = top + height;
    for (let left = field.left; left + width <= field.right; left += STRIDE) {
      const dx = left + width / 2 - x;
      const away = Math.sqrt(dx * dx + dy * dy);
      if (away >= least) continue;
      const right = left + width;
      // A box is made only where it is clear: most places are not.
      probe.left = left - clear;
      probe.top = top - clear;
      probe.right = right + clear;
      probe.bottom = bottom + clear;
      if (inkIn(room.ink, probe) > 0) continue;
      const box = { left, top, right, bottom };
      const isWhole = inner.some((window) => isWithin(box, window));
      const cost = isWhole ? away : away + ACROSS_A_JOINT;
      if (cost >= least || !isApart(box, clear, room) || !isRight(box)) continue;
      best = { box, isWhole };
      least = cost;
    }
  }
  return best;
};

const labelAt = (block: TextBlock, box: Box, turn: 0 | 90, beside: boolean): Label => {
  const corner = turn === 0 ? { x: box.left, y: box.top } : { x: box.right, y: box.top };
  return { words: wordsAt(block, corner, turn), box, beside };
};

/** Inside the piece, in the first setting that fits on one sheet; else in the first that fits. */
const labelInside = (piece: Piece, subject: SheetSubject, room: LabelRoom): Label | null => {
  const field = boxRound(room.outline);
  const isRight = (box: Box): boolean =>
    isPrinted(box, room.windows) && isInside(room.outline, middleOf(box));
  let joined: Label | null = null;
  for (const setting of SETTINGS) {
    const block = labelBlock(piece, subject, setting);
    const across = setting.turn === 0;
    const [width, height] = across ? [block.width, block.height] : [block.height, block.width];
    const found = bestPlace({ field, width, height, clear: clearOf(setting), isRight }, room);
    if (found === null) continue;
    const label = labelAt(block, found.box, setting.turn, false);
    if (found.isWhole) return label;
    joined ??= label;
  }
  return joined;
};

/** Outside every piece, as near to its own as there is room. */
const labelBeside = (piece: Piece, subject: SheetSubject, room: LabelRoom): Label | null => {
  const field = grown(boxRound(room.outline), NEAR);
  const isRight = (box: Box): boolean =>
    isPrinted(box, room.windows) &&
    !room.outlines.some((outline) => isInside(outline, middleOf(box)));
  const block = labelBlock(piece, subject, BESIDE);
  const { width, height } = block;
  const found = bestPlace({ field, width, height, clear: CLEAR, isRight }, room);
  return found && labelAt(block, found.box, 0, true);
};

/**
 * A piece's title and what must be known to cut it, clear of all lines: inside and whole on one
 * sheet, or inside over a joint, or beside the piece; null: nowhere is room.
 */
export const pieceLabel = (piece: Piece, subject: SheetSubject, room: LabelRoom): Label | null =>
  labelInside(piece, subject, room) ?? labelBeside(piece, subject, room);
