import { faulty, found, type Told } from "../told.ts";
import { offLine, type StraightEdge } from "./fitPlane.ts";
import { greyAt, type Picture, type Pixel } from "./picture.ts";

/** The edge is looked for this many pixels to both sides of the straight way between two clicks. */
const REACH = 14;
/** One look every so many pixels along it. */
const EVERY = 4;
/** A step in grey weaker than this, of 255, is no edge. */
const LEAST_STEP = 10;
/** Points further off the run of the others than this many pixels are something else. */
const OFF = 1.5;
/** So many points tell a bend. */
const LEAST_POINTS = 12;

/** Where the grey changes most across the way at `p`, to a part of a pixel; null where nowhere. */
const stepAcross = (picture: Picture, p: Pixel, across: Pixel): Pixel | null => {
  const slopes: number[] = [];
  for (let i = -REACH; i <= REACH; i++) {
    const a = greyAt(picture, p.x + (i - 1) * across.x, p.y + (i - 1) * across.y);
    const b = greyAt(picture, p.x + (i + 1) * across.x, p.y + (i + 1) * across.y);
    slopes.push(Math.abs(b - a));
  }
  let best = 1;
  for (let i = 1; i + 1 < slopes.length; i++) if ((slopes[i] ?? 0) > (slopes[best] ?? 0)) best = i;
  const [a, b, c] = [slopes[best - 1] ?? 0, slopes[best] ?? 0, slopes[best + 1] ?? 0];
  if (b < LEAST_STEP) return null;
  const bend = a - 2 * b + c;
  const off = best - REACH + (bend < 0 ? (a - c) / (2 * bend) : 0);
  return { x: p.x + off * across.x, y: p.y + off * across.y };
};

const middleOf = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? 0;
};

/** Points that lie with those near them: the middle of nine in a row is theirs to 1.5 pixels. */
const inRow = (points: readonly Pixel[]): StraightEdge => {
  const off = offLine(points);
  return points.filter((_, i) => {
    const near = off.slice(Math.max(0, i - 4), i + 5);
    return Math.abs((off[i] ?? 0) - middleOf(near)) <= OFF;
  });
};

/**
 * Points along an edge that is straight on the table, between two clicks near it, each to about 0.2
 * pixel. `placePicture` tells the lens's bending from them.
 */
export const findStraightEdge = (picture: Picture, from: Pixel, to: Pixel): Told<StraightEdge> => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const count = Math.floor(length / EVERY);
  const across = { x: -(to.y - from.y) / (length || 1), y: (to.x - from.x) / (length || 1) };
  const points = Array.from({ length: count + 1 }, (_, i) => {
    const t = count > 0 ? i / count : 0;
    const p = { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
    return stepAcross(picture, p, across);
  }).filter((p) => p !== null);
  const edge = inRow(points);
  if (edge.length >= LEAST_POINTS && edge.length >= count / 2) return found(edge);
  return faulty(
    "straight edge",
    `${edge.length} points`,
    `Between the two clicks an edge is seen at ${edge.length} of ${count + 1} places; half of them are needed, ${LEAST_POINTS} at least.`,
    "Click both ends of a clear straight edge, such as a ruler's or a sheet's, within 14 pixels of it.",
  );
};
