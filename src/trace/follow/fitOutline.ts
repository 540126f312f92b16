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
import { along, apart, type Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { prolonged } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { FIT_TOLERANCE, fitRun } from "./fitRun.ts";

/** A closed outline as smooth runs from corner to corner. */
export type Outline = {
  /** In order round it, each starting where the one before ends. One run where it has no corner. */
  readonly runs: readonly Path[];
  /** How far the farthest traced point lies from it, mm. */
  readonly error: Mm;
};

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
const metAt = (before: Path, after: Path): readonly [Path, Path] => {
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

/**
 * An outline from the traced points of its runs, in order round it: each run fitted with few cubics,
 * neighbours brought together where they cross, so that corners stay sharp. Points right at the
 * corners may be left out. Lengths in mm; `error` is the fit's, at most `tolerance` where it can be.
 */
export const fitOutline = (
  runs: readonly (readonly Point[])[],
  tolerance: Mm = FIT_TOLERANCE,
): Outline => {
  const fits = runs.map((points) => fitRun(points, tolerance));
  const paths = fits.map(({ path }) => path);
  for (let i = 0; i < paths.length; i++) {
    const k = (i + 1) % paths.length;
    const [before, after] = [paths[i], paths[k]];
    if (!before || !after || i === k) continue;
    const met = metAt(before, after);
    paths[i] = met[0];
    paths[k] = met[1];
  }
  return { runs: paths, error: Math.max(0, ...fits.map(({ error }) => error)) };
};

/** The whole outline as one closed path. */
export const closedPathOf = ({ runs }: Outline): Path => {
  const segments = runs.flat();
  const path = pathOf(segments);
  return pathOf([...path.slice(0, -1), endingAt(lastOf(path), startOf(path))]);
};
