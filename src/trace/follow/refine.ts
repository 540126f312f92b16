import { type Point, stepped } from "../../geometry/point.ts";
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
  return oneRound(picture, what, resampled(first, EVERY), Math.min(reach, 2));
};
