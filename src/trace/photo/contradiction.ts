import { asMm } from "../../drafting/words.ts";
import type { Mm } from "../../geometry/units.ts";
import { faulty, type Told } from "../told.ts";
import { fitHomography, type Homography } from "./homography.ts";
import { type Lens, unbent } from "./lens.ts";
import type { Distance, SeenMark } from "./mark.ts";
import { placesOf } from "./places.ts";

/**
 * Distances contradict each other when they cannot be met to this, root mean square of what is left
 * over a spare distance. One slip of 4 mm among the six of four marks leaves about as much. Ours.
 */
const LEFT_OVER: Mm = 1.6;
/** Or to this share of their mean length: long tapes sag. Ours. */
const LEFT_OVER_SHARE = 0.002;

/** What the other distances say of one distance. */
type Doubt = {
  readonly distance: Distance;
  readonly foretold: Mm;
  /** How unlike a camera the picture is if the others are right; 0 for a camera. */
  readonly unlike: number;
};

/** Focal lengths tried, in parts of the picture's half diagonal: from very wide to a long lens. */
const FOCAL_LENGTHS = Array.from({ length: 60 }, (_, i) => 0.8 * 1.06 ** i);

/**
 * How far a homography is from one that a camera with square pixels and its eye over the picture's
 * middle can give, at the focal length that suits best (Zhang's two rules on the columns; Hartley
 * and Zisserman, 8.8, from memory). 0 is a camera.
 */
const unlikeCamera = (m: Homography, { centre, radius }: Lens): number => {
  const column = (x: number, y: number, w: number) => ({
    x: (x - centre.x * w) / radius,
    y: (y - centre.y * w) / radius,
    w,
  });
  const one = column(m.a, m.d, m.g);
  const two = column(m.b, m.e, m.h);
  return Math.min(
    ...FOCAL_LENGTHS.map((focal) => {
      const f2 = focal * focal;
      const first = (one.x * one.x + one.y * one.y) / f2 + one.w * one.w;
      const second = (two.x * two.x + two.y * two.y) / f2 + two.w * two.w;
      const both = (one.x * two.x + one.y * two.y) / f2 + one.w * two.w;
      return Math.hypot(both / Math.sqrt(first * second), (first - second) / (first + second));
    }),
  );
};

const doubtOf = (
  marks: readonly SeenMark[],
  distances: readonly Distance[],
  at: number,
  lens: Lens,
): Doubt | null => {
  const distance = distances[at];
  const others = placesOf(
    marks,
    distances.filter((_, i) => i !== at),
  );
  if (!distance || !others) return null;
  const place = (name: string) => others.places[marks.findIndex((mark) => mark.name === name)];
  const [from, to] = [place(distance.from), place(distance.to)];
  if (!from || !to) return null;
  const plane = fitHomography(
    marks.map((mark, i) => ({ from: others.places[i] ?? from, to: unbent(lens, mark.at) })),
  );
  return {
    distance,
    foretold: Math.hypot(from.x - to.x, from.y - to.y),
    // With other distances still at odds the answer is no better: their misses count too.
    unlike:
      (plane ? unlikeCamera(plane, lens) : Infinity) +
      Math.max(...others.misses.map(Math.abs)) / Math.max(1, distance.length),
  };
};

/** What the distances leave over when all are met as well as can be, and how much they may. */
const leftOver = (
  marks: readonly SeenMark[],
  distances: readonly Distance[],
): { readonly left: Mm; readonly limit: Mm } => {
  const spare = distances.length - (2 * marks.length - 3);
  const misses = spare > 0 ? (placesOf(marks, distances)?.misses ?? []) : [];
  const squares = misses.reduce((sum, miss) => sum + miss * miss, 0);
  const mean = distances.reduce((sum, { length }) => sum + length, 0) / distances.length;
  return {
    left: Math.sqrt(squares / Math.max(1, spare)),
    limit: Math.max(LEFT_OVER, LEFT_OVER_SHARE * mean),
  };
};

/**
 * The distance that contradicts the others, told by name with what they foretell; null where they
 * agree. Six distances of four marks show that one is wrong but not which: the picture does, since
 * with the right five it is one that a camera can take.
 */
export const contradiction = (
  marks: readonly SeenMark[],
  distances: readonly Distance[],
  lens: Lens,
): Told<never> | null => {
  const { left, limit } = leftOver(marks, distances);
  if (left <= limit) return null;
  const doubts = distances
    .map((_, i) => doubtOf(marks, distances, i, lens))
    .filter((doubt) => doubt !== null);
  if (doubts.length === 0) return null;
  const { distance, foretold } = doubts.reduce((a, b) => (b.unlike < a.unlike ? b : a));
  const name = `${distance.from}–${distance.to}`;
  return faulty(
    `distance ${name}`,
    asMm(distance.length),
    `The distances contradict each other, ${name} most likely: it is given as ${asMm(distance.length)} and the others make it ${asMm(foretold)}; what is left over is ${asMm(left)}, and the limit is ${asMm(limit)}.`,
    `Measure ${name} again, from the middle of one mark to the middle of the other.`,
  );
};
