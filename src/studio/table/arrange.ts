import type { PieceName } from "../../drafting/piece.ts";
import type { Box } from "../../geometry/outline.ts";
import type { Size } from "./view.ts";

/** A piece to be set on the table, with the room its lettering takes outside it, in px. */
export type Slot = {
  readonly name: PieceName;
  readonly box: Box;
  readonly left: number;
  /** The least width, in px: its name stands over it. */
  readonly least: number;
  readonly above: number;
  readonly below: number;
};

/** Where each piece's origin stands, in px, and how many px a millimetre has. */
export type Arrangement = {
  readonly scale: number;
  readonly places: ReadonlyMap<PieceName, { readonly x: number; readonly y: number }>;
};

export type Margins = { readonly x: number; readonly top: number; readonly bottom: number };

const GAP = 26;
const WIDEST_GAP = 72;
const MOST_SCALE = 3;
/** Boxes grow by steps, so that a number moved a little moves no piece aside. */
const STEP = 10;

const stepped = (length: number): number => Math.ceil(length / STEP) * STEP;
const widthOf = ({ box }: Slot): number => stepped(box.right - box.left);
const heightOf = ({ box }: Slot): number => stepped(box.bottom - box.top);
const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

const rowRoom = (row: readonly Slot[]) => ({
  pxWide: sum(row.map((slot) => slot.left)) + GAP * (row.length - 1),
  mmWide: sum(row.map(widthOf)),
  /** The tallest need not be the one with most lettering: take each at its most. */
  pxTall: Math.max(...row.map((slot) => slot.above + slot.below)),
  mmTall: Math.max(...row.map(heightOf)),
});

/** What a row leaves of the table's width, its names counted where they are wider than it. */
const freeOf = (row: readonly Slot[], size: Size, margins: Margins, scale: number): number => {
  const wide = sum(row.map((slot) => Math.max(widthOf(slot) * scale, slot.least)));
  return size.width - 2 * margins.x - rowRoom(row).pxWide - wide;
};

const scaleFor = (rows: readonly (readonly Slot[])[], size: Size, margins: Margins): number => {
  const rooms = rows.map(rowRoom);
  const across = rooms.map((r) => (size.width - 2 * margins.x - r.pxWide) / r.mmWide);
  const tall = sum(rooms.map((r) => r.pxTall)) + GAP * (rows.length - 1);
  const down =
    (size.height - margins.top - margins.bottom - tall) / sum(rooms.map((r) => r.mmTall));
  return Math.max(0.02, Math.min(MOST_SCALE, down, ...across));
};

/** Pieces in rows, as large as they fit, with even gaps between them. */
export const arranged = (
  rows: readonly (readonly Slot[])[],
  size: Size,
  margins: Margins,
): Arrangement => {
  const full = rows.filter((row) => row.length > 0);
  if (full.length === 0) return { scale: 1, places: new Map() };
  const scale = scaleFor(full, size, margins);
  const rooms = full.map(rowRoom);
  const used = sum(rooms.map((r) => r.pxTall + r.mmTall * scale)) + GAP * (full.length - 1);
  const spare = size.height - margins.top - margins.bottom - used;
  const rowGap = full.length > 1 ? GAP + Math.min(40, spare / full.length) : GAP;
  const places = new Map<PieceName, { x: number; y: number }>();
  const left =
    margins.x + Math.max(0, Math.min(...full.map((row) => freeOf(row, size, margins, scale)))) / 2;
  let y = margins.top + Math.max(0, Math.min(24, spare / 3));
  for (const row of full) {
    const room = rowRoom(row);
    const spread = Math.max(0, freeOf(row, size, margins, scale)) / (row.length + 1);
    const gap = GAP + Math.min(WIDEST_GAP - GAP, spread);
    let x =
      full.length > 1 ? left : Math.max(margins.x, left - ((gap - GAP) * (row.length - 1)) / 2);
    for (const slot of row) {
      x += slot.left;
      places.set(slot.name, {
        x: x - slot.box.left * scale,
        y: y + slot.above - slot.box.top * scale,
      });
      x += Math.max(widthOf(slot) * scale, slot.least) + gap;
    }
    y += room.pxTall + room.mmTall * scale + rowGap;
  }
  return { scale, places };
};
