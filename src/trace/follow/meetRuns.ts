import { endingAt, splitSegment, startingAt } from "../../geometry/curve.ts";
import { onFrom, upTo } from "../../geometry/cut.ts";
import { crossingNearest, meeting } from "../../geometry/intersect.ts";
import { segmentLength } from "../../geometry/length.ts";
import {
  endOf,
  endTangent,
  lastOf,
  pathOf,
  reversed,
  startOf,
  startTangent,
} from "../../geometry/path.ts";
import { along, apart, type Point, turn } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { prolonged } from "../../geometry/split.ts";
import { type Degrees, type Mm, radians } from "../../geometry/units.ts";

/** Runs are prolonged by this much so that neighbours cross. */
const REACH: Mm = 15;
/** A cubic runs on by itself for this much of it at most: further on it would curl. */
const RUNS_ON_SHARE = 0.12;
const RUNS_ON_BY: Mm = 8;

/** A path prolonged at its end: a cubic runs on along its own curve first, then straight. */
const runningOn = (path: Path): Path => {
  const last = lastOf(path);
  if (last.kind === "line") return prolonged(path, REACH);
  const share = Math.min(RUNS_ON_SHARE, RUNS_ON_BY / segmentLength(last));
  const [longer] = splitSegment(last, 1 + share);
  return prolonged(pathOf([...path.slice(0, -1), longer]), REACH);
};

/** One end of a run and the beginning of the next brought together at their crossing. */
export const metAt = (before: Path, after: Path): readonly [Path, Path] => {
  const [end, start] = [endOf(before), startOf(after)];
  const near = along(end, start, 0.5);
  const [longer, earlier] = [runningOn(before), reversed(runningOn(reversed(after)))];
  const cross = crossingNearest(longer, earlier, near);
  if (cross && apart(cross.point, near) < REACH) {
    const [up, on] = [upTo(longer, cross.on), onFrom(earlier, cross.other)];
    return [
      pathOf([...up.slice(0, -1), endingAt(lastOf(up), cross.point)]),
      pathOf([startingAt(on[0], cross.point), ...on.slice(1)]),
    ];
  }
  const x = meeting(end, endTangent(before), start, startTangent(after));
  const corner: Point = x && apart(x, near) < REACH ? x : near;
  return [
    pathOf([...before.slice(0, -1), endingAt(lastOf(before), corner)]),
    pathOf([startingAt(after[0], corner), ...after.slice(1)]),
  ];
};

/** Runs that meet with less turn than this run on smoothly: their crossing is not sure. Ours. */
const LEAST_CORNER: Degrees = 20;

/** A run just traced and the one before it brought together, at a corner or running on. */
export type Joint = { readonly before: Path; readonly after: Path; readonly isCorner: boolean };

export const jointOf = (before: Path, after: Path): Joint => {
  const isCorner = Math.abs(turn(endTangent(before), startTangent(after))) >= radians(LEAST_CORNER);
  if (isCorner) {
    const [one, two] = metAt(before, after);
    return { before: one, after: two, isCorner };
  }
  const middle = along(endOf(before), startOf(after), 0.5);
  return {
    before: pathOf([...before.slice(0, -1), endingAt(lastOf(before), middle)]),
    after: pathOf([startingAt(after[0], middle), ...after.slice(1)]),
    isCorner,
  };
};
