import { lengthOf } from "../../geometry/length.ts";
import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { cellOf, placeOf, type TablePicture } from "../photo/rectify.ts";
import { faulty, found, type Told } from "../told.ts";
import { type Strengths, strengthAt, strengthsIn, wholeOf } from "./coarse.ts";
import { cornersOf } from "./corners.ts";
import { fitOutline, type Outline } from "./fitOutline.ts";
import type { Followed } from "./kind.ts";
import { resampled, smoothed } from "./polyline.ts";
import { refined } from "./refine.ts";
import {
  areaOfRegion,
  borderOf,
  closedUp,
  flooded,
  type Region,
  thickened,
  wallsOf,
} from "./region.ts";

/** A proposed outline and the corners that were found, to be mended by the maker. */
export type ProposedOutline = Outline & {
  readonly corners: readonly Point[];
  /** Share of the outline at which the line itself was seen. */
  readonly seen: number;
};

/** Cells of the search, about. */
const CELL: Mm = 0.75;
/** Strengths tried as walls, as parts of the strongest, and how far gaps are closed, in cells. */
const TRIED = [
  [0.4, 0],
  [0.25, 0],
  [0.15, 0],
  [0.25, 1],
  [0.15, 2],
  [0.12, 4],
] as const;
/** Weaker than this, of 255, is grain. */
const LEAST_STRENGTH = 10;
/** Bays narrower than twice this are notches, not the outline. */
const BAY: Mm = 2;
/** A region smaller than this is no piece, mm². */
const LEAST_AREA = 5000;
/** The rough outline lies within this of the line. */
const REACH: Mm = 3.5;
/** Nearer to a corner than this the direction across a line is not sure: runs are met there. */
const CORNER_CLEAR: Mm = 6.5;
/** And once the run is known, nearer than this. */
const SURE_CLEAR: Mm = 2;
const SURE_REACH: Mm = 1.5;
/** So much of an outline must show the line. */
const LEAST_SEEN = 0.6;

/** The piece's cells round a seed: walls from strong lines first, then weaker, then with gaps closed. */
const regionRound = (strengths: Strengths, seed: number): Region | null => {
  const { width, height, step } = strengths.window;
  const strongest = strengthAt(strengths, 0.997);
  for (const [share, gap] of TRIED) {
    const wall = wallsOf(strengths, Math.max(LEAST_STRENGTH, share * strongest));
    const region = flooded(thickened(wall, width, height, gap), width, height, seed);
    if (region && areaOfRegion(region) * step * step >= LEAST_AREA) {
      return closedUp(region, Math.round(BAY / step) + gap);
    }
  }
  return null;
};

/** The rough outline in mm, evenly spaced, smooth to about a cell. */
const roughOutline = ({ window }: Strengths, region: Region): readonly Point[] => {
  const cells = borderOf(region).map((cell) =>
    placeOf(window, { x: (cell % window.width) + 0.5, y: Math.floor(cell / window.width) + 0.5 }),
  );
  const [first] = cells;
  if (!first) return [];
  return resampled(smoothed([...cells, first], 2, false), 1).slice(0, -1);
};

/** The part of a ring between two of its places, without what lies too near to them. */
const between = (ring: readonly Point[], from: number, to: number): readonly Point[] => {
  const count = ring.length;
  const length = (to - from + count) % count || count;
  const clear = Math.round(CORNER_CLEAR);
  return Array.from(
    { length: Math.max(0, length - 2 * clear + 1) },
    (_, i) => i + from + clear,
  ).flatMap((i) => ring[i % count] ?? []);
};

/** A fitted run looked at again: its directions are sure now, nearer to its corners too. */
const lookedAgain = (picture: TablePicture, what: Followed, run: Path): readonly Point[] => {
  const whole = lengthOf(run);
  const room = Math.min(SURE_CLEAR, whole / 5);
  const count = Math.max(4, Math.floor(whole - 2 * room));
  const points = Array.from({ length: count + 1 }, (_, i) =>
    pointAlong(run, room + (i * (whole - 2 * room)) / count),
  );
  const again = refined(picture, what, points, SURE_REACH);
  return again.length >= count / 2 ? again : points;
};

const notClosed: Told<never> = faulty(
  "outline",
  "open",
  "No closed outline was found round the place that you clicked: the line has gaps wider than 6 mm, or runs off the picture.",
  "Click inside the piece, take the picture with all of it inside the marks, or trace it from corner to corner.",
);

const hardlySeen = (seen: number): Told<never> =>
  faulty(
    "outline",
    `${Math.round(seen * 100)} %`,
    `The line was seen along ${Math.round(seen * 100)} % of the outline; ${LEAST_SEEN * 100} % is the least.`,
    "Draw over the line with a darker pen, or trace it from corner to corner.",
  );

/** Shares of the work done after each part of it, as it takes on a large picture. */
const DONE = { strengths: 0.35, region: 0.5, rough: 0.55, fitted: 0.8 } as const;

/**
 * The whole outline round a place inside a piece, proposed from the picture: corners found, each run
 * between them moved onto the line and fitted with few cubics (mm). The maker mends it. Yields the
 * share done, so that a worker can report.
 */
export function* proposing(
  picture: TablePicture,
  what: Followed,
  inside: Point,
): Generator<number, Told<ProposedOutline>> {
  const strengths = strengthsIn(picture, what, wholeOf(picture), CELL);
  yield DONE.strengths;
  const { window } = strengths;
  const cell = cellOf(window, inside);
  const [x, y] = [Math.floor(cell.x), Math.floor(cell.y)];
  if (!(x > 0 && y > 0 && x < window.width - 1 && y < window.height - 1)) return notClosed;
  const region = regionRound(strengths, y * window.width + x);
  if (!region) return notClosed;
  yield DONE.region;
  const ring = roughOutline(strengths, region);
  const corners = cornersOf(ring, 1);
  const places = corners.length > 0 ? corners : [0];
  const rough = places.map((from, i) =>
    between(ring, from, places[(i + 1) % places.length] ?? from),
  );
  yield DONE.rough;
  const runs = rough.map((points) => refined(picture, what, points, REACH));
  const looked = rough.reduce((sum, points) => sum + points.length, 0);
  const seen = runs.reduce((sum, points) => sum + points.length, 0) / Math.max(1, looked);
  if (seen < LEAST_SEEN) return hardlySeen(seen);
  const kept = runs.map((points, i) => (points.length >= 2 ? points : (rough[i] ?? points)));
  const first = fitOutline(kept.filter((points) => points.length >= 2));
  yield DONE.fitted;
  const outline = fitOutline(first.runs.map((run) => lookedAgain(picture, what, run)));
  return found({
    ...outline,
    corners: corners.flatMap((i) => ring[i] ?? []),
    seen: Math.min(1, seen),
  });
}

/** The same at once. */
export const proposeOutline = (
  picture: TablePicture,
  what: Followed,
  inside: Point,
): Told<ProposedOutline> => {
  const work = proposing(picture, what, inside);
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
};
