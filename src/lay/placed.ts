import { cutLineOffFold } from "../drafting/fold.ts";
import type { Piece } from "../drafting/piece.ts";
import { joined, mapPath, mirroredPath, pathOf, reversed } from "../geometry/path.ts";
import { type Point, point } from "../geometry/point.ts";
import { line, type Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import type { Cut } from "./cutList.ts";
import type { Room, Row } from "./rows.ts";

/** Where a cut lies: its corner, `x` across from the selvedge or the fold, `y` along the cloth. */
export type Placement = Cut & { readonly x: Mm; readonly y: Mm };

/** Rows one after the other, pieces side by side, a gap before each row and after the last. */
export const placeRows = (rows: readonly Row<Cut>[], { gap }: Room): readonly Placement[] => {
  const placed: Placement[] = [];
  let y = gap;
  for (const { items, along } of rows) {
    let x = 0;
    for (const item of items) {
      placed.push({ ...item, x, y });
      x += item.across + gap;
    }
    y += along + gap;
  }
  return placed;
};

/** A point of the piece's frame where it comes to lie on the cloth. */
const onCloth = ({ box, mirrored, turned, x, y }: Placement, p: Point): Point => {
  const px = mirrored ? box.left + box.right - p.x : p.x;
  // A quarter turn, not a mirror image: the face of the cloth stays up.
  return turned
    ? point(x + box.bottom - p.y, y + px - box.left)
    : point(x + px - box.left, y + p.y - box.top);
};

/** The cut line of what lies there, closed, in the piece's frame. */
const outlineOf = ({ cutLine, onFold, name }: Piece, { opened, box }: Placement): Path => {
  if (name === "neckband" || name === "cuff" || name === "hemBand") {
    const [a, b] = [point(box.left, box.top), point(box.right, box.top)];
    const [c, d] = [point(box.right, box.bottom), point(box.left, box.bottom)];
    return pathOf([line(a, b), line(b, c), line(c, d), line(d, a)]);
  }
  if (onFold === null || !opened) return cutLine;
  const half = cutLineOffFold({ cutLine, onFold });
  return joined(reversed(mirroredPath(half)), half);
};

/** The cut line of a piece where it lies on the cloth: x across, y along, in mm. */
export const clothOutline = (piece: Piece, placement: Placement): Path =>
  mapPath(outlineOf(piece, placement), (p) => onCloth(placement, p));
