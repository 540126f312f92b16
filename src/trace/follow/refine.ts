import { apart, type Point, stepped } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import type { TablePicture } from "../photo/rectify.ts";
import type { Followed } from "./kind.ts";
import { acrossAt, middleValue, resampled, smoothed } from "./polyline.ts";
import { offsetAcross } from "./profile.ts";

/** One point every so much of a line that is refined. */
const EVERY: Mm = 1;
/** Directions across are taken from points this many away. */
const ARM = 4;
/** An offset this far from its neighbours' middle is another line that crosses. Ours. */
const STRAY: Mm = 0.6;
/** So many offsets to each side are its neighbours. */
const NEAR = 5;

const oneRound = (
  picture: TablePicture,
  what: Followed,
  rough: readonly Point[],
  reach: Mm,
): readonly Point[] => {
  const line = smoothed(rough, 2, false);
  const across = line.map((_, i) => acrossAt(line, i, ARM));
  const offsets = line.map((at, i) =>
    offsetAcross(picture, what, { at, across: across[i] ?? { x: 0, y: 0 } }, reach),
  );
  const points: Point[] = [];
  for (const [i, off] of offsets.entries()) {
    const [at, way] = [line[i], across[i]];
    if (off === null || !at || !way) continue;
    const near = offsets.slice(Math.max(0, i - NEAR), i + NEAR + 1).filter((v) => v !== null);
    if (Math.abs(off - middleValue(near)) <= STRAY) points.push(stepped(at, way, off));
  }
  return points;
};

/** A point this far off the straight through those next to it is dust or a crossing line. Ours. */
const OFF_NEIGHBOURS: Mm = 0.4;
/** So many to each side. */
const NEIGHBOURS = 6;

/** Points that lie with their neighbours: each is held against the straight through the others. */
const withoutStrays = (points: readonly Point[]): readonly Point[] =>
  points.filter((p, i) => {
    const near = [
      ...points.slice(Math.max(0, i - NEIGHBOURS), i),
      ...points.slice(i + 1, i + 1 + NEIGHBOURS),
    ];
    if (near.length < NEIGHBOURS) return true;
    const [before, after] = [near.slice(0, near.length / 2), near.slice(near.length / 2)];
    const [a, b] = [meanOf(before), meanOf(after)];
    const size = apart(a, b) || 1;
    return Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / size <= OFF_NEIGHBOURS;
  });

const meanOf = (points: readonly Point[]): Point => {
  let [x, y] = [0, 0];
  for (const p of points) [x, y] = [x + p.x / points.length, y + p.y / points.length];
  return { x, y };
};

/**
 * A rough line (within `reach` mm of the true one) moved onto the line or edge that the picture
 * shows, one point a millimetre; points where none is seen, or where another line crosses, are left
 * out. An open run without corners in it.
 */
export const refined = (
  picture: TablePicture,
  what: Followed,
  rough: readonly Point[],
  reach: Mm,
): readonly Point[] => {
  const first = oneRound(picture, what, resampled(rough, EVERY), reach);
  if (first.length < 2 * ARM) return first;
  const second = oneRound(picture, what, resampled(first, EVERY), Math.min(reach, 2));
  return withoutStrays(withoutStrays(second));
};
