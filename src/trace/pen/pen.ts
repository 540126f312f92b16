import { pathOf } from "../../geometry/path.ts";
import {
  apart,
  minus,
  norm,
  type Point,
  plus,
  stepped,
  times,
  unit,
} from "../../geometry/point.ts";
import { cubic, line, type Path, type Segment } from "../../geometry/segment.ts";
import { NO_DIRECTION } from "../../geometry/tolerance.ts";

/** A point of a line drawn by hand, with the handles of the curves to both its sides. */
export type PenPoint = {
  readonly at: Point;
  /** null: what comes before it, or after it, leaves straight. */
  readonly before: Point | null;
  readonly after: Point | null;
  /** An edge of the piece begins here; elsewhere the line runs on smoothly. */
  readonly isCorner: boolean;
};

/** Points in order; a closed line runs from the last back to the first. */
export type PenLine = { readonly points: readonly PenPoint[]; readonly isClosed: boolean };

export const NO_LINE: PenLine = { points: [], isClosed: false };

/** The segment that leaves point `i`; a handle that is left out lies on its own point. */
export const segmentAfter = ({ points, isClosed }: PenLine, i: number): Segment | null => {
  const from = points[i];
  const to = points[i + 1] ?? (isClosed ? points[0] : undefined);
  if (!from || !to || from === to) return null;
  if (!from.after && !to.before) return line(from.at, to.at);
  return cubic(from.at, from.after ?? from.at, to.before ?? to.at, to.at);
};

export const segmentsOf = (pen: PenLine): readonly Segment[] =>
  pen.points.flatMap((_, i) => segmentAfter(pen, i) ?? []);

/** A closed line as runs from corner to corner, begun at its first; one run where it has none. */
export const runsOfPen = (pen: PenLine): readonly Path[] => {
  const segments = segmentsOf(pen);
  const corners = pen.points.flatMap(({ isCorner }, i) => (isCorner ? [i] : []));
  const starts = corners.length > 0 ? corners : [0];
  return starts.flatMap((from, k) => {
    const to = starts[(k + 1) % starts.length] ?? from;
    const count = (to - from + segments.length) % segments.length || segments.length;
    const run = Array.from({ length: count }, (_, n) => segments[(from + n) % segments.length]);
    const known = run.filter((segment) => segment !== undefined);
    return known.length > 0 ? [pathOf(known)] : [];
  });
};

/** Runs of an open line, from corner to corner; its ends are corners too. */
export const openRuns = (pen: PenLine): readonly Path[] => {
  const segments = segmentsOf(pen);
  const runs: Segment[][] = [];
  for (const [i, segment] of segments.entries()) {
    if (i === 0 || pen.points[i]?.isCorner) runs.push([]);
    runs.at(-1)?.push(segment);
  }
  return runs.map((run) => pathOf(run));
};

const startPoint = (segment: Segment, before: Segment | null, isCorner: boolean): PenPoint => ({
  at: segment.start,
  before: before?.kind === "cubic" ? before.endHandle : null,
  after: segment.kind === "cubic" ? segment.startHandle : null,
  isCorner,
});

/** Runs from corner to corner round a piece as points that can be taken hold of. */
export const penOfRuns = (runs: readonly Path[]): PenLine => {
  const segments = runs.flat();
  const corners = new Set<number>();
  let at = 0;
  for (const run of runs) {
    if (runs.length > 1) corners.add(at);
    at += run.length;
  }
  const points = segments.map((segment, i) => {
    const before = segments[(i - 1 + segments.length) % segments.length] ?? null;
    return startPoint(segment, before, corners.has(i));
  });
  return { points, isClosed: true };
};

/** An open line with one more run at its end; the run begins where the line ends. */
export const withRun = ({ points }: PenLine, run: Path, isCorner: boolean): PenLine => {
  const [first] = run;
  const last = points[points.length - 1];
  const begun: PenPoint = last
    ? { ...last, after: first.kind === "cubic" ? first.startHandle : null }
    : startPoint(first, null, true);
  const added = run.map((segment, i): PenPoint => {
    const next = run[i + 1];
    return {
      at: segment.end,
      before: segment.kind === "cubic" ? segment.endHandle : null,
      after: next?.kind === "cubic" ? next.startHandle : null,
      isCorner: i === run.length - 1 ? isCorner : false,
    };
  });
  return { points: [...points.slice(0, -1), begun, ...added], isClosed: false };
};

const changedAt = (pen: PenLine, i: number, to: (p: PenPoint) => PenPoint): PenLine => ({
  ...pen,
  points: pen.points.map((p, k) => (k === i ? to(p) : p)),
});

/** A point moved with its handles. */
export const movedPoint = (pen: PenLine, i: number, to: Point): PenLine =>
  changedAt(pen, i, (p) => {
    const by = minus(to, p.at);
    const also = (handle: Point | null): Point | null => handle && plus(handle, by);
    return { ...p, at: to, before: also(p.before), after: also(p.after) };
  });

/** A handle moved; where the line runs on smoothly the other turns with it and keeps its length. */
export const movedHandle = (
  pen: PenLine,
  i: number,
  side: "before" | "after",
  to: Point,
): PenLine =>
  changedAt(pen, i, (p) => {
    const other = side === "before" ? "after" : "before";
    const [far, way] = [p[other], minus(p.at, to)];
    const turned =
      !p.isCorner && far && norm(way) > NO_DIRECTION
        ? stepped(p.at, unit(way), apart(far, p.at))
        : far;
    return { ...p, [side]: to, [other]: turned };
  });

/** Handles reach so far towards the neighbours where the maker asks for a curve. */
const THIRD = 1 / 3;

const neighbour = ({ points, isClosed }: PenLine, i: number, by: 1 | -1): PenPoint | undefined =>
  points[i + by] ?? (isClosed ? points[(i + by + points.length) % points.length] : undefined);

/** The point as a corner, or smooth: its handles laid on one straight through it. */
export const withCorner = (pen: PenLine, i: number, isCorner: boolean): PenLine => {
  const p = pen.points[i];
  if (!p || p.isCorner === isCorner) return pen;
  if (isCorner) return changedAt(pen, i, (q) => ({ ...q, isCorner }));
  const [last, next] = [neighbour(pen, i, -1)?.at ?? p.at, neighbour(pen, i, 1)?.at ?? p.at];
  const through = minus(p.after ?? next, p.before ?? last);
  if (norm(through) <= NO_DIRECTION) return changedAt(pen, i, (q) => ({ ...q, isCorner }));
  const way = unit(through);
  const reach = (handle: Point | null, to: Point) =>
    apart(handle ?? to, p.at) * (handle ? 1 : THIRD);
  return changedAt(pen, i, (q) => ({
    ...q,
    isCorner,
    before: stepped(p.at, times(way, -1), reach(p.before, last)),
    after: stepped(p.at, way, reach(p.after, next)),
  }));
};
