import { crossingsOf } from "../geometry/crossings.ts";
import { endingAt, startingAt } from "../geometry/curve.ts";
import { partBetween } from "../geometry/cut.ts";
import { offsetPath } from "../geometry/offset.ts";
import { endOf, endTangent, lastOf, pathOf, startOf, startTangent } from "../geometry/path.ts";
import { apart, type Point, point, stepped } from "../geometry/point.ts";
import { line, type Path, type Segment } from "../geometry/segment.ts";
import { splitAt } from "../geometry/split.ts";
import { AT_JOINT } from "../geometry/tolerance.ts";
import type { Mm } from "../geometry/units.ts";
import type { Side } from "./allowances.ts";
import { type Joint, shapeCorner } from "./corner.ts";

/** The point of the fold that a line through `p` along `t` meets. */
const onFold = (p: Point, t: Point): Point =>
  Math.abs(t.x) < AT_JOINT ? point(0, p.y) : point(0, stepped(p, t, -p.x / t.x).y);

/** The first offset, begun on the fold: trimmed at its first crossing, or prolonged to it. */
export const begunOnFold = (path: Path): Path => {
  const [first] = crossingsOf(path, "x", 0);
  if (first !== undefined) return splitAt(path, first)[1];
  const start = startOf(path);
  return pathOf([line(onFold(start, startTangent(path)), start), ...path]);
};

/** The last offset, ended on the fold in the same way, at its last crossing. */
export const endedOnFold = (path: Path): Path => {
  const crossings = crossingsOf(path, "x", 0);
  const last = crossings[crossings.length - 1];
  if (last !== undefined) return splitAt(path, last)[0];
  const end = endOf(path);
  return pathOf([...path, line(end, onFold(end, endTangent(path)))]);
};

/** Segments put end to start: gaps filled straight, parts of no length left out. */
const chained = (segments: readonly Segment[]): Path => {
  const run: Segment[] = [];
  let at: Point | null = null;
  for (const segment of segments) {
    const { start, end } = segment;
    if (segment.kind === "line" && apart(start, end) < AT_JOINT) continue;
    const gap: Mm = at === null || at === start ? 0 : apart(at, start);
    if (at !== null && gap >= AT_JOINT) run.push(line(at, start));
    run.push(at !== null && gap > 0 && gap < AT_JOINT ? startingAt(segment, at) : segment);
    at = end;
  }
  return pathOf(run);
};

/** A run of segments closed: back to its start by a straight, or onto it where it is there. */
const closed = (path: Path): Path => {
  const [start, end] = [startOf(path), endOf(path)];
  return apart(start, end) < AT_JOINT
    ? pathOf([...path.slice(0, -1), endingAt(lastOf(path), start)])
    : pathOf([...path, line(end, start)]);
};

/**
 * The closed line to cut: every side moved outward by its allowance, corners shaped (method 4). On
 * the fold the line runs along x = 0. `sides` go round the piece clockwise; the fold is not one.
 */
export const cutLineOf = (sides: readonly Side[], isOnFold: boolean): Path => {
  const offsets = sides.map(({ path, allowance }) => offsetPath(path, allowance));
  const joints = shapeCorners(sides, offsets, isOnFold);
  const last = sides.length - 1;
  const run: Segment[] = [];
  for (const [i, offset] of offsets.entries()) {
    const from = joints[i === 0 ? last : i - 1]?.from ?? null;
    const path = partBetween(offset, from, joints[i]?.to ?? null);
    if (path) {
      const begun = isOnFold && i === 0 ? begunOnFold(path) : path;
      run.push(...(isOnFold && i === last ? endedOnFold(begun) : begun));
    }
    let at = run[run.length - 1]?.end;
    for (const corner of joints[i]?.between ?? []) {
      if (at) run.push(line(at, corner));
      at = corner;
    }
  }
  return closed(chained(run));
};

/** The corner after each side; none after the last where the piece is on the fold. */
const shapeCorners = (
  sides: readonly Side[],
  offsets: readonly Path[],
  isOnFold: boolean,
): readonly Joint[] => {
  const joints: Joint[] = [];
  const last = sides.length - 1;
  for (let i = 0; i <= (isOnFold ? last - 1 : last); i++) {
    const k = i === last ? 0 : i + 1;
    const one = sides[i];
    const next = sides[k];
    const before = offsets[i];
    const after = offsets[k];
    if (one && next && before && after) joints.push(shapeCorner(one, next, before, after));
  }
  return joints;
};
