import { pathOf } from "../../geometry/path.ts";
import type { Path } from "../../geometry/segment.ts";
import { type Joint, jointOf } from "../follow/meetRuns.ts";
import { openRuns, type PenLine, penOfRuns, withRun } from "./pen.ts";

const lastCorner = ({ points }: PenLine): number => {
  for (let i = points.length - 2; i > 0; i--) if (points[i]?.isCorner) return i;
  return 0;
};

/**
 * An open line with a followed run at its end. Where the run before was brought together with it, that
 * run's end moves: the corner lies where both lines cross, not where it was tapped.
 */
export const withFollowed = (pen: PenLine, run: Path, joint: Joint | null): PenLine => {
  if (!joint) return withRun(pen, run, true);
  const begun = { points: pen.points.slice(0, lastCorner(pen) + 1), isClosed: false };
  return withRun(withRun(begun, joint.before, joint.isCorner), run, true);
};

/** An open line that was followed back to its first point, closed: its ends meet as other runs do. */
export const closedUp = (pen: PenLine): PenLine => {
  const runs = openRuns(pen);
  const [first, last] = [runs[0], runs.at(-1)];
  if (!first || !last || runs.length < 2) return { ...pen, isClosed: true };
  const { before, after, isCorner } = jointOf(last, first);
  const [begin, ...rest] = penOfRuns([after, ...runs.slice(1, -1), pathOf(before)]).points;
  return begin ? { points: [{ ...begin, isCorner }, ...rest], isClosed: true } : pen;
};
