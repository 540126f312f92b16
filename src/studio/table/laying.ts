import type { Piece, PieceName } from "../../drafting/piece.ts";
import { flattened } from "../../export/flatten.ts";
import type { Placement } from "../../export/placement.ts";
import { placedPath, placedPoint } from "../../export/placing.ts";
import { type Box, boundsOf } from "../../geometry/outline.ts";
import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";

/** The room that a piece's cut line takes where it stands. */
export const placedBox = (piece: Piece, at: Placement): Box =>
  boundsOf(placedPath(at, piece.cutLine));

/** Places are kept to a tenth: finer is no hand's work. */
const TENTHS = 10;
const rounded = (value: Mm): Mm => Math.round(value * TENTHS) / TENTHS;

const held = (value: Mm, least: Mm, most: Mm): Mm => Math.max(least, Math.min(value, most));

/** Moved, but no further than the room in which it may lie. */
export const movedBy = (at: Placement, box: Box, by: Point, room: Box): Placement => {
  const x = held(
    by.x,
    room.left - box.left,
    Math.max(room.right - box.right, room.left - box.left),
  );
  const y = held(by.y, room.top - box.top, Math.max(room.bottom - box.bottom, room.top - box.top));
  return { ...at, x: rounded(at.x + x), y: rounded(at.y + y) };
};

const QUARTER = 90;

/**
 * A quarter turn about the middle: the grain stays along the sheets' edges. It is moved back into
 * the drawing where it would come to lie outside.
 */
export const turnedAQuarter = (piece: Piece, at: Placement, room: Box): Placement => {
  const before = placedBox(piece, at);
  const turned = { ...at, turn: (at.turn + QUARTER + 360) % 360 };
  const after = placedBox(piece, turned);
  const middle = (box: Box): Point => ({
    x: (box.left + box.right) / 2,
    y: (box.top + box.bottom) / 2,
  });
  const [from, to] = [middle(after), middle(before)];
  return movedBy(turned, after, { x: to.x - from.x, y: to.y - from.y }, room);
};

/** How true the outlines are by which pieces are held against each other: a broad pen. */
const WITHIN: Mm = 0.5;

type Outline = { readonly name: PieceName; readonly box: Box; readonly points: readonly Point[] };

const outlineOf = (piece: Piece, at: Placement): Outline => ({
  name: piece.name,
  box: placedBox(piece, at),
  points: flattened(piece.cutLine, WITHIN).map((p) => placedPoint(at, p)),
});

const areApart = (a: Box, b: Box): boolean =>
  a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;

const sideOf = (a: Point, b: Point, p: Point): number =>
  (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

const cross = (a: Point, b: Point, c: Point, d: Point): boolean =>
  sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0;

/** Whether a point lies in an outline, by how often the way to its right meets it. */
const holds = ({ points }: Outline, { x, y }: Point): boolean => {
  let inside = false;
  points.forEach((a, i) => {
    const b = points[(i + 1) % points.length] ?? a;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y)) inside = !inside;
  });
  return inside;
};

const lieOver = (a: Outline, b: Outline): boolean => {
  if (areApart(a.box, b.box)) return false;
  const [first] = a.points;
  const [other] = b.points;
  if (!first || !other) return false;
  if (holds(b, first) || holds(a, other)) return true;
  return a.points.some((p, i) => {
    const next = a.points[(i + 1) % a.points.length] ?? p;
    return b.points.some((q, j) => cross(p, next, q, b.points[(j + 1) % b.points.length] ?? q));
  });
};

/** Pairs of pieces that lie over each other: what is under the other cannot be cut. */
export const overlaps = (
  pieces: readonly Piece[],
  placements: readonly Placement[],
): readonly (readonly [PieceName, PieceName])[] => {
  const outlines = pieces.flatMap((piece) => {
    const at = placements.find((own) => own.piece === piece.name);
    return at ? [outlineOf(piece, at)] : [];
  });
  return outlines.flatMap((a, i) =>
    outlines
      .slice(i + 1)
      .filter((b) => lieOver(a, b))
      .map((b) => [a.name, b.name] as const),
  );
};
