import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { type Ink, inkIn } from "./freeSpace.ts";
import { grown, levelWith, meets } from "./word.ts";

/** What a box should keep clear of. */
export type Taken = { readonly ink: Ink; readonly boxes: readonly Box[] };

/** Places are tried so far apart. */
const STRIDE: Mm = 2;
/** Room about a box: as much as is good, or as little as will do. */
const CLEARANCES: readonly Mm[] = [2.5, 1, 0];

/** How much a box would cover: squares with ink, and other boxes, which weigh more. */
export const coverOf = ({ ink, boxes }: Taken, box: Box): number => {
  let met = 0;
  for (const other of boxes) if (meets(other, box)) met++;
  return inkIn(ink, box) + 100 * met;
};

/** A box that is moved from place to place: thousands are tried, and none is made for each. */
export type Probe = { -readonly [Side in keyof Box]: Mm };
export const newProbe = (): Probe => ({ left: 0, top: 0, right: 0, bottom: 0 });

/** Where a box of this size may stand: within a sheet's window, less the strips that overlap. */
export type Places = {
  readonly window: Box;
  readonly overlap: Mm;
  readonly width: Mm;
  readonly height: Mm;
  /** From this corner row by row. */
  readonly from: "upper left" | "lower right";
};

const boxAt = (left: Mm, top: Mm, { width, height }: Places): Box => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});

/** A box, and how much it covers: 0 where it is clear. */
export type Place = { readonly box: Box; readonly cover: number };

/** Of all places the first that is clear by so much, else the first that covers least. */
const clearestBy = (clearance: Mm, taken: Taken, places: Places): Place | null => {
  const { window, overlap, width, height, from } = places;
  const room = grown(window, -overlap);
  const forward = from === "upper left";
  const step = forward ? STRIDE : -STRIDE;
  const lastLeft = room.right - width;
  const lastTop = room.bottom - height;
  const probe = newProbe();
  let best: Place | null = null;
  let top = forward ? room.top : lastTop;
  for (; top >= room.top && top <= lastTop; top += step) {
    probe.top = top - clearance;
    probe.bottom = top + height + clearance;
    const inRow: Taken = { ink: taken.ink, boxes: levelWith(probe, taken.boxes) };
    let left = forward ? room.left : lastLeft;
    for (; left >= room.left && left <= lastLeft; left += step) {
      probe.left = left - clearance;
      probe.right = left + width + clearance;
      const cover = coverOf(inRow, probe);
      if (best !== null && cover >= best.cover) continue;
      best = { box: boxAt(left, top, places), cover };
      if (cover === 0) return best;
    }
  }
  return best;
};

/** Of the places given the first that is clear, else the one that covers least; null: none fits. */
export const clearest = (taken: Taken, places: Places): Place | null => {
  let best: Place | null = null;
  for (const clearance of CLEARANCES) {
    const found = clearestBy(clearance, taken, places);
    if (found && (best === null || found.cover < best.cover)) best = found;
    if (best?.cover === 0) return best;
  }
  return best;
};
