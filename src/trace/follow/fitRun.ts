import { pathOf } from "../../geometry/path.ts";
import { apart, type Point } from "../../geometry/point.ts";
import { cubic, line, type Path, type Segment } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { offLine } from "../photo/fitPlane.ts";
import { type End, fitCubic } from "./fitCubic.ts";

/** A fitted run: its path, and how far the farthest point lies from it. */
export type FittedRun = { readonly path: Path; readonly error: Mm };

/** The stated tolerance: a fit that strays more is cut in two. */
export const FIT_TOLERANCE: Mm = 0.5;
/** Points of which nine in ten stray less from a straight are one. Ours: half a pencil line. */
const STRAIGHT: Mm = 0.25;
const USUAL = 0.9;
/** So many of a straight's points may be something else. */
const DUST = 0.05;
/** A run of fewer points is not cut any more. */
const FEWEST = 10;
/** Where it is cut, the direction is that of this many points to both sides. */
const KNOT_REACH = 5;
const MOST_CUTS = 5;

/** The middle of points and the direction in which they run, by least squares. */
const runThrough = (points: readonly Point[]): Extract<End, { kind: "held" }> => {
  let [x, y] = [0, 0];
  for (const p of points) [x, y] = [x + p.x / points.length, y + p.y / points.length];
  let [xx, xy, yy] = [0, 0, 0];
  for (const p of points) {
    xx += (p.x - x) * (p.x - x);
    xy += (p.x - x) * (p.y - y);
    yy += (p.y - y) * (p.y - y);
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const [first, last] = [points[0], points[points.length - 1]];
  const way = { x: Math.cos(angle), y: Math.sin(angle) };
  const forward = first && last && (last.x - first.x) * way.x + (last.y - first.y) * way.y >= 0;
  return { kind: "held", at: { x, y }, way: forward ? way : { x: -way.x, y: -way.y } };
};

/** The same of the points round one place. */
const knotAt = (points: readonly Point[], i: number): Extract<End, { kind: "held" }> =>
  runThrough(points.slice(Math.max(0, i - KNOT_REACH), i + KNOT_REACH + 1));

type Fitted = { readonly segments: readonly Segment[]; readonly error: Mm };

/** A straight from the first to the last of two or three points: nothing else is known. */
const byEnds = (points: readonly Point[], start: End, end: End): Fitted => {
  const [first, last] = [points[0], points[points.length - 1]];
  const from = start.kind === "held" ? start.at : (first ?? { x: 0, y: 0 });
  const to = end.kind === "held" ? end.at : (last ?? from);
  return { segments: [line(from, to)], error: 0 };
};

/** Cubics for points between two ends, cut in two where one strays by more than `tolerance`. */
const fitBetween = (
  points: readonly Point[],
  ends: { readonly start: End; readonly end: End },
  tolerance: Mm,
  cuts: number,
): Fitted => {
  const fit = points.length >= 5 ? fitCubic(points, ends.start, ends.end) : null;
  if (!fit) return byEnds(points, ends.start, ends.end);
  if (fit.error <= tolerance || cuts >= MOST_CUTS || points.length < 2 * FEWEST) {
    return { segments: [fit.cubic], error: fit.error };
  }
  const cut = Math.round(Math.min(points.length * 0.7, Math.max(points.length * 0.3, fit.worst)));
  const knot = knotAt(points, cut);
  const one = fitBetween(
    points.slice(0, cut + 1),
    { start: ends.start, end: knot },
    tolerance,
    cuts + 1,
  );
  const two = fitBetween(points.slice(cut), { start: knot, end: ends.end }, tolerance, cuts + 1);
  return { segments: [...one.segments, ...two.segments], error: Math.max(one.error, two.error) };
};

/** The straight of least squares through points, from the first's foot to the last's. */
const straightThrough = (points: readonly Point[]): Segment => {
  const { at, way } = runThrough(points);
  const foot = (p: Point): Point => {
    const along = (p.x - at.x) * way.x + (p.y - at.y) * way.y;
    return { x: at.x + along * way.x, y: at.y + along * way.y };
  };
  const [first, last] = [points[0] ?? at, points[points.length - 1] ?? at];
  return line(foot(first), foot(last));
};

const shareOf = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.floor(share * (values.length - 1))] ?? 0;

/**
 * A straight where the points are one. Up to one in twenty that strays by more than the tolerance
 * is taken for dust and not counted.
 */
const asStraight = (points: readonly Point[], tolerance: Mm): FittedRun | null => {
  if (points.length < 3) return null;
  const off = offLine(points).map(Math.abs);
  const clear = points.filter((_, i) => (off[i] ?? 0) <= tolerance);
  if (clear.length < 3 || clear.length < (1 - DUST) * points.length) return null;
  const again = offLine(clear).map(Math.abs);
  const far = Math.max(...again);
  if (far > tolerance || shareOf(again, USUAL) > Math.min(STRAIGHT, tolerance)) return null;
  return { path: pathOf([straightThrough(clear)]), error: far };
};

/**
 * Points of one smooth run (no corner inside) turned into a straight or few cubics that run on
 * smoothly, none of which strays from the points by more than `tolerance` mm where that can be had;
 * `error` is what the farthest strays. Needs two points.
 */
export const fitRun = (points: readonly Point[], tolerance: Mm = FIT_TOLERANCE): FittedRun => {
  const straight = asStraight(points, tolerance);
  if (straight) return straight;
  const free: End = { kind: "free" };
  const { segments, error } = fitBetween(points, { start: free, end: free }, tolerance, 0);
  return { path: pathOf(joinedSegments(segments)), error };
};

/** Each segment begun exactly where the one before ends. */
const joinedSegments = (segments: readonly Segment[]): readonly Segment[] => {
  const run: Segment[] = [];
  for (const segment of segments) {
    const before = run[run.length - 1];
    if (!before || apart(before.end, segment.start) === 0) run.push(segment);
    else if (segment.kind === "line") run.push(line(before.end, segment.end));
    else run.push(cubic(before.end, segment.startHandle, segment.endHandle, segment.end));
  }
  return run;
};
