import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { leastSquares, type Problem, slopesOf } from "../algebra/leastSquares.ts";
import { solveLinear } from "../algebra/linear.ts";
import type { Distance, SeenMark } from "./mark.ts";

/** Where marks lie on the table, from the distances between them. */
export type Places = {
  /** In the marks' order; the first is the origin. Turned as the picture shows them. */
  readonly places: readonly Point[];
  /** Drawn less measured, in the distances' order, mm. */
  readonly misses: readonly Mm[];
};

/** One step of the search in mm, over which slopes are taken. */
const STEP: Mm = 0.01;

const between = (a: Point, b: Point): Mm => Math.hypot(a.x - b.x, a.y - b.y);

const pointsIn = (x: readonly number[]): readonly Point[] =>
  x.flatMap((v, i) => (i % 2 === 0 ? [{ x: v, y: x[i + 1] ?? 0 }] : []));

/** The marks as the picture shows them, scaled to the measured distances. */
const asSeen = (marks: readonly SeenMark[], distances: readonly Distance[]): readonly Point[] => {
  const of = (name: string): Point =>
    marks.find((mark) => mark.name === name)?.at ?? { x: 0, y: 0 };
  let [measured, drawn] = [0, 0];
  for (const { from, to, length } of distances) {
    measured += length;
    drawn += between(of(from), of(to));
  }
  const by = drawn > 0 ? measured / drawn : 1;
  const [origin] = marks;
  return marks.map(({ at }) => ({
    x: (at.x - (origin?.at.x ?? 0)) * by,
    y: (at.y - (origin?.at.y ?? 0)) * by,
  }));
};

/** The mark farthest from the first: the direction to it is held. */
const farthest = (points: readonly Point[]): number => {
  const [first] = points;
  let best = 0;
  for (const [i, p] of points.entries()) {
    if (first && between(p, first) > between(points[best] ?? first, first)) best = i;
  }
  return best;
};

const problemOf = (marks: readonly SeenMark[], distances: readonly Distance[]): Problem => {
  const start = asSeen(marks, distances);
  const index = new Map(marks.map(({ name }, i) => [name, i]));
  const pairs = distances.map(({ from, to }) => ({
    from: index.get(from) ?? 0,
    to: index.get(to) ?? 0,
  }));
  const far = start[farthest(start)] ?? { x: 1, y: 0 };
  const size = Math.hypot(far.x, far.y) || 1;
  const held = farthest(start);
  return {
    start: start.flatMap(({ x, y }) => [x, y]),
    steps: start.flatMap(() => [STEP, STEP]),
    residuals: (x) => {
      const points = pointsIn(x);
      const at = (i: number): Point => points[i] ?? { x: 0, y: 0 };
      const misses = pairs.map(
        ({ from, to }, i) => between(at(from), at(to)) - (distances[i]?.length ?? 0),
      );
      // The first mark stays, and the farthest keeps its direction: distances fix neither.
      const turned = (at(held).x * far.y - at(held).y * far.x) / size;
      return [...misses, at(0).x, at(0).y, turned];
    },
  };
};

/** A place that the distances leave looser than this many mm a mm measured is not fixed by them. */
const LOOSEST = 1e4;

/** Whether the distances fix every mark against the others. */
const isFixed = (problem: Problem, at: readonly number[]): boolean => {
  const columns = slopesOf(problem, at);
  const normal = columns.map((a) =>
    columns.map((b) => a.reduce((sum, v, i) => sum + v * (b[i] ?? 0), 0)),
  );
  return columns.every((_, k) => {
    const column = solveLinear(
      normal,
      columns.map((_, i) => (i === k ? 1 : 0)),
    );
    return column !== null && (column[k] ?? Infinity) < LOOSEST;
  });
};

/**
 * The marks' places in mm from measured distances, by least squares, begun from how the picture
 * shows them (so a mirror image is never taken). Null where the distances do not fix every mark:
 * n marks need 2n - 3 distances in the right places; more of them find a wrong one.
 */
export const placesOf = (
  marks: readonly SeenMark[],
  distances: readonly Distance[],
): Places | null => {
  const problem = problemOf(marks, distances);
  const { at, residuals } = leastSquares(problem);
  if (!isFixed(problem, at)) return null;
  return { places: pointsIn(at), misses: residuals.slice(0, distances.length) };
};
