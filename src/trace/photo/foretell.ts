import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { fitPlane, type PlaneAsked } from "./fitPlane.ts";
import type { Distance, SeenMark } from "./mark.ts";
import type { Pixel } from "./picture.ts";
import { placesOf } from "./places.ts";
import { onTable, type Plane } from "./plane.ts";
import { rigidFrom } from "./rigid.ts";

/** What error to expect of a line traced in a picture, in mm (two standard deviations). */
export type Foretold = {
  /** At the place where it is largest. */
  readonly worst: Mm;
  /** Root mean square over the piece. */
  readonly usual: Mm;
};

/**
 * Paper that stands up in waves: a place lifted by so much is seen aside by as much at 45°, and by less
 * from above. Counted in full for the worst place, by half as a rule. Ours.
 */
export const withWaves = ({ worst, usual }: Foretold, height: Mm): Foretold => ({
  worst: Math.hypot(worst, height),
  usual: Math.hypot(usual, height / 2),
});

/** How far a tape between two marks may be out, in mm (one standard deviation). Ours. */
const TAPE_UNSURE: Mm = 0.5;
/** Weight of what was assumed beside what the misses show, in readings. Ours. */
const ASSUMED = 4;

/** What a plane was worked out from. */
export type Evidence = {
  readonly marks: readonly SeenMark[];
  readonly distances: readonly Distance[];
  readonly lens: PlaneAsked["lens"];
  readonly plane: Plane;
  readonly misses: readonly number[];
  readonly distanceMisses: readonly Mm[];
};

/** Assumed scatter, made larger or smaller by what is seen, as far as there is anything to see. */
const scatter = (assumed: number, misses: readonly number[], spare: number): number => {
  const seen = misses.reduce((sum, miss) => sum + miss * miss, 0);
  return Math.sqrt((ASSUMED * assumed * assumed + seen) / (ASSUMED + Math.max(0, spare)));
};

const planeFrom = (
  marks: readonly SeenMark[],
  distances: readonly Distance[],
  { lens }: Evidence,
): Plane | null => {
  const placed = placesOf(marks, distances);
  if (!placed) return null;
  const fit = fitPlane({
    marks: marks.map((mark, i) => ({ mark, place: placed.places[i] ?? { x: 0, y: 0 } })),
    edges: [],
    terms: 0,
    lens,
  });
  return fit?.plane ?? null;
};

/** How each place moves when one reading is out by its scatter; turns and shifts of all are no error. */
const movesOf = (
  plane: Plane | null,
  at: readonly Pixel[],
  before: readonly Point[],
): readonly number[] => {
  if (!plane) return at.map(() => Infinity);
  const now = at.map((pixel) => onTable(plane, pixel));
  const back = rigidFrom(now, before);
  return now.map((p, i) => {
    const moved = back.moved(p);
    const was = before[i] ?? moved;
    return (moved.x - was.x) ** 2 + (moved.y - was.y) ** 2;
  });
};

/** Every reading moved by its scatter, one at a time. */
const readings = (evidence: Evidence) => {
  const { marks, distances, misses, distanceMisses } = evidence;
  const sparePixels = 2 * marks.length - 8;
  const spareDistances = distances.length - (2 * marks.length - 3);
  const tape = scatter(TAPE_UNSURE, distanceMisses, spareDistances);
  const shares = misses.map((miss, i) => miss / (marks[i]?.unsure ?? 1));
  const by = scatter(1, shares, sparePixels);
  const moved = (k: number, dx: number, dy: number): readonly SeenMark[] =>
    marks.map((mark, i) =>
      i === k ? { ...mark, at: { x: mark.at.x + dx, y: mark.at.y + dy } } : mark,
    );
  return [
    ...marks.flatMap((mark, k) => [
      { marks: moved(k, by * mark.unsure, 0), distances },
      { marks: moved(k, 0, by * mark.unsure), distances },
    ]),
    ...distances.map((_, k) => ({
      marks,
      distances: distances.map((d, i) => (i === k ? { ...d, length: d.length + tape } : d)),
    })),
  ];
};

/**
 * The error to expect at places of the picture, in mm: every reading (a mark's place in the
 * picture, a distance) is moved by its scatter in turn, the plane worked out anew, and the moves
 * added by their squares (linear propagation of covariance). How the whole is turned or shifted is
 * no error, since a piece has no place on the table. The lens is taken as it was found.
 */
export const foretell = (evidence: Evidence, at: readonly Pixel[]): Foretold => {
  const before = at.map((pixel) => onTable(evidence.plane, pixel));
  const sums = at.map(() => 0);
  for (const { marks, distances } of readings(evidence)) {
    const moves = movesOf(planeFrom(marks, distances, evidence), at, before);
    for (const [i, move] of moves.entries()) sums[i] = (sums[i] ?? 0) + move;
  }
  const mean = sums.reduce((sum, v) => sum + v, 0) / Math.max(1, sums.length);
  return { worst: 2 * Math.sqrt(Math.max(...sums)), usual: 2 * Math.sqrt(mean) };
};
