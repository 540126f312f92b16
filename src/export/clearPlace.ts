import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { OVERLAP } from "./data/paper.ts";
import { type Ink, inkIn } from "./freeSpace.ts";
import { grown, meets } from "./word.ts";

/** What a box should keep clear of. */
export type Taken = { readonly ink: Ink; readonly boxes: readonly Box[] };

/** Places are tried so far apart. */
const STRIDE: Mm = 2;
/** Room about a box: as much as is good, or as little as will do. */
const CLEARANCES: readonly Mm[] = [2.5, 1, 0];

/** How much a box would cover: squares with ink, and other boxes, which weigh more. */
export const coverOf = ({ ink, boxes }: Taken, box: Box): number =>
  inkIn(ink, box) + 100 * boxes.filter((other) => meets(other, box)).length;

/** Within a sheet's window, less the strips in which it overlaps its neighbours. */
const roomIn = (window: Box): Box => grown(window, -OVERLAP);

/** From the upper left, row by row. */
export function* fromUpperLeft(window: Box, width: Mm, height: Mm): Generator<Box> {
  const room = roomIn(window);
  for (let top = room.top; top + height <= room.bottom; top += STRIDE) {
    for (let left = room.left; left + width <= room.right; left += STRIDE) {
      yield { left, top, right: left + width, bottom: top + height };
    }
  }
}

/** From the lower right, row by row. */
export function* fromLowerRight(
  window: Box,
  width: Mm,
  height: Mm,
  stride: Mm = STRIDE,
): Generator<Box> {
  const room = roomIn(window);
  for (let bottom = room.bottom; bottom - height >= room.top; bottom -= stride) {
    for (let right = room.right; right - width >= room.left; right -= stride) {
      yield { left: right - width, top: bottom - height, right, bottom };
    }
  }
}

/** A box, and how much it covers: 0 where it is clear. */
export type Place = { readonly box: Box; readonly cover: number };

/** Of the places given the first that is clear, else the one that covers least; null: none fits. */
export const clearest = (taken: Taken, places: () => Iterable<Box>): Place | null => {
  let best: Place | null = null;
  for (const clearance of CLEARANCES) {
    for (const box of places()) {
      const cover = coverOf(taken, grown(box, clearance));
      if (best === null || cover < best.cover) best = { box, cover };
      if (cover === 0) return best;
    }
  }
  return best;
};
