import { lengthOf } from "../../geometry/length.ts";
import { endTangent, pathOf, startTangent } from "../../geometry/path.ts";
import { turn } from "../../geometry/point.ts";
import type { Path, Segment } from "../../geometry/segment.ts";
import { type Degrees, degrees, type Mm } from "../../geometry/units.ts";
import type { CornerRing } from "./ring.ts";

/** Edges that turn by this much meet in a corner; a drawn curve turns by less at its joints. Ours. */
const CORNER: Degrees = 14;
/** Parts shorter than this give no direction: drawing programs leave them at joints. */
const CRUMB: Mm = 0.05;

/** Whether two parts, one after the other, meet in a corner. */
export const cornerBetween = (before: Segment, after: Segment): boolean =>
  Math.abs(degrees(turn(endTangent([before]), startTangent([after])))) > CORNER;

/** For each part, whether the line turns a corner where it begins. */
const cornersIn = (parts: readonly Segment[]): readonly boolean[] => {
  const isCrumb = parts.map((s) => lengthOf([s]) <= CRUMB);
  let before = parts.findLast((_, i) => !isCrumb[i]);
  return parts.map((part, i) => {
    if (isCrumb[i] || !before) return false;
    const isCorner = cornerBetween(before, part);
    before = part;
    return isCorner;
  });
};

/** A closed line as runs from corner to corner; one run where it has no corner. */
export const atCorners = (closed: Path): CornerRing => {
  const isCorner = cornersIn(closed);
  const first = Math.max(0, isCorner.indexOf(true));
  const runs: Segment[][] = [];
  for (let i = 0; i < closed.length; i++) {
    const at = (first + i) % closed.length;
    const part = closed[at];
    if (!part) continue;
    if (i === 0 || isCorner[at]) runs.push([part]);
    else runs.at(-1)?.push(part);
  }
  return runs.map(pathOf);
};
