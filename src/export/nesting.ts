import type { Mm } from "../geometry/units.ts";
import { type Silhouette, STRIP, type Strips } from "./silhouette.ts";

/** What is kept free between two pieces, so that scissors can get between them. */
export const GAP: Mm = 10;
/** The chords of two silhouettes may each stray by half a millimetre. */
const SAFE_GAP: Mm = GAP + 1;
/** What is kept free along the edge of the layout, so that no line is printed half. */
export const EDGE: Mm = 1.5;

/** A silhouette whose box has its upper left corner at (x, y) of the layout. */
export type Standing = { readonly shape: Silhouette; readonly x: Mm; readonly y: Mm };

/** How far a shape must be moved on along one axis to clear a standing one, strip by strip. */
const clearance = (still: Strips, moving: Strips, offset: Mm): Mm => {
  const { high } = still;
  const { low } = moving;
  const most = high.length - 1;
  // All strips are as high, so those beside a strip lie the same number of strips on for each.
  const before = Math.floor((offset - SAFE_GAP) / STRIP);
  const beyond = Math.floor((offset + STRIP + SAFE_GAP) / STRIP);
  const from = Math.max(0, -beyond);
  const to = Math.min(low.length - 1, most - before);
  let need = -Infinity;
  for (let i = from; i <= to; i++) {
    const first = Math.max(0, i + before);
    const last = Math.min(most, i + beyond);
    let reach = -Infinity;
    for (let k = first; k <= last; k++) reach = Math.max(reach, high[k] ?? 0);
    need = Math.max(need, reach - (low[i] ?? 0));
  }
  return need;
};

/** How far left a shape can slide at this height until it meets what stands, or the edge. */
export const slidLeft = (shape: Silhouette, y: Mm, standing: readonly Standing[]): Mm => {
  let x = EDGE;
  for (const other of standing) {
    if (y >= other.y + other.shape.height + SAFE_GAP) continue;
    if (other.y >= y + shape.height + SAFE_GAP) continue;
    // Already past its far side: it cannot be in the way.
    if (x >= other.x + other.shape.width + SAFE_GAP) continue;
    const need = clearance(other.shape.rows, shape.rows, y - other.y);
    x = Math.max(x, other.x + need + SAFE_GAP);
  }
  return x;
};

/** How far up a shape can slide at this distance from the left. */
export const slidUp = (shape: Silhouette, x: Mm, standing: readonly Standing[]): Mm => {
  let y = EDGE;
  for (const other of standing) {
    if (x >= other.x + other.shape.width + SAFE_GAP) continue;
    if (other.x >= x + shape.width + SAFE_GAP) continue;
    if (y >= other.y + other.shape.height + SAFE_GAP) continue;
    const need = clearance(other.shape.columns, shape.columns, x - other.x);
    y = Math.max(y, other.y + need + SAFE_GAP);
  }
  return y;
};

/** Just past a standing piece, along either axis. */
export const beside = (at: Mm, size: Mm): Mm => at + size + SAFE_GAP;
