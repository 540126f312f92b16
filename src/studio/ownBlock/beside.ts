import type { Box } from "../../geometry/outline.ts";
import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";

/** Between pieces that lie side by side. */
const GAP: Mm = 40;

/** Boxes side by side on one upper edge: how far each is moved, and the box round all. */
export const beside = (
  boxes: readonly Box[],
): { readonly places: readonly Point[]; readonly box: Box } => {
  let right = 0;
  const places = boxes.map((box) => {
    const place = { x: right - box.left, y: -box.top };
    right += box.right - box.left + GAP;
    return place;
  });
  const bottom = Math.max(0, ...boxes.map((box) => box.bottom - box.top));
  return { places, box: { left: 0, top: 0, right: Math.max(0, right - GAP), bottom } };
};
