import { faulty, found, type Told } from "../told.ts";
import type { StraightEdge } from "./fitPlane.ts";
import { greyAt, type Picture, type Pixel } from "./picture.ts";

/** The edge is looked for this many pixels to both sides of the straight way between two clicks. */
const REACH = 14;
/** At the clicks themselves it is no further off than this. */
const CLICK_REACH = 6;
/** One look every so many pixels along it. */
const EVERY = 4;
/** A step in grey weaker than this, of 255, or than this share of the strongest, is no edge. */
const LEAST_STEP = 10;
const LEAST_SHARE = 0.35;
/** Steps further off the bow of the others than this many pixels are something else. */
const OFF = 1.2;
/** So many points tell a bend. */
const LEAST_POINTS = 12;
/** Looks near each click, and in the middle, that a bow is laid through. */
const TRIED = 5;

/** Where the grey steps across the way at `p`: pixels to its left, each to a part of a pixel. */
const stepsAcross = (picture: Picture, p: Pixel, across: Pixel): readonly number[] => {
  const slopes: number[] = [];
  for (let i = -REACH; i <= REACH; i++) {
    const a = greyAt(picture, p.x + (i - 1) * across.x, p.y + (i - 1) * across.y);
    const b = greyAt(picture, p.x + (i + 1) * across.x, p.y + (i + 1) * across.y);
    slopes.push(Math.abs(b - a));
  }
  const least = Math.max(LEAST_STEP, LEAST_SHARE * Math.max(...slopes));
  return slopes.flatMap((b, i) => {
    const [a, c] = [slopes[i - 1] ?? Infinity, slopes[i + 1] ?? Infinity];
    if (b < least || b < a || b <= c || a === Infinity || c === Infinity) return [];
    const bend = a - 2 * b + c;
    return [i - REACH + (bend < 0 ? (a - c) / (2 * bend) : 0)];
  });
};

type Looks = readonly (readonly number[])[];

/** How far off the straight way a bent edge runs, by its share of the way. */
type Bow = { readonly at: (t: number) => number };

const bowThrough = (start: number, mid: number, end: number): Bow => {
  const high = mid - (start + end) / 2;
  return { at: (t) => start + (end - start) * t + 4 * high * t * (1 - t) };
};

const nearestStep = (steps: readonly number[], to: number): number | null => {
  let best: number | null = null;
  for (const step of steps) {
    if (
      Math.abs(step - to) <= OFF &&
      (best === null || Math.abs(step - to) < Math.abs(best - to))
    ) {
      best = step;
    }
  }
  return best;
};

const countOn = (looks: Looks, bow: Bow): number => {
  let count = 0;
  for (let i = 0; i < looks.length; i++) {
    if (nearestStep(looks[i] ?? [], bow.at(i / (looks.length - 1))) !== null) count++;
  }
  return count;
};

/** The bow that most looks lie on: it begins and ends near the clicks, which are near the edge. */
const bestBow = (looks: Looks): Bow | null => {
  const nearClick = (part: Looks): readonly number[] =>
    part.flat().filter((step) => Math.abs(step) <= CLICK_REACH);
  const half = Math.floor(looks.length / 2);
  let best: Bow | null = null;
  let most = 0;
  for (const start of nearClick(looks.slice(0, TRIED))) {
    for (const end of nearClick(looks.slice(-TRIED))) {
      for (const mid of looks.slice(half - 2, half + 3).flat()) {
        const bow = bowThrough(start, mid, end);
        const count = countOn(looks, bow);
        if (count > most) [best, most] = [bow, count];
      }
    }
  }
  return best;
};

/**
 * Points along an edge that is straight on the table, between two clicks near it, each to about 0.2
 * pixel. `placePicture` tells the lens's bending from them.
 */
export const findStraightEdge = (picture: Picture, from: Pixel, to: Pixel): Told<StraightEdge> => {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const count = Math.floor(length / EVERY);
  const across = { x: -(to.y - from.y) / (length || 1), y: (to.x - from.x) / (length || 1) };
  const places = Array.from({ length: count + 1 }, (_, i) => {
    const t = count > 0 ? i / count : 0;
    return { x: from.x + (to.x - from.x) * t, y: from.y + (to.y - from.y) * t };
  });
  const looks = places.map((p) => stepsAcross(picture, p, across));
  const bow = looks.length >= LEAST_POINTS ? bestBow(looks) : null;
  const edge = places.flatMap((p, i) => {
    const off = bow && nearestStep(looks[i] ?? [], bow.at(i / count));
    return off === null ? [] : [{ x: p.x + off * across.x, y: p.y + off * across.y }];
  });
  if (edge.length >= LEAST_POINTS && edge.length >= count / 2) return found(edge);
  return faulty(
    "straight edge",
    `${edge.length} points`,
    `Between the two clicks an edge is seen at ${edge.length} of ${count + 1} places; half of them are needed, ${LEAST_POINTS} at least.`,
    "Click both ends of a clear straight edge, such as a ruler's or a sheet's, within 14 pixels of it.",
  );
};
