import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { greyAt } from "../photo/picture.ts";
import type { TablePicture } from "../photo/rectify.ts";
import type { Followed } from "./kind.ts";

/** Looks across a line are this far apart. */
const LOOK: Mm = 0.15;
/** Contrast below this, of 255 greys, is grain and no line. */
const LEAST_CONTRAST = 14;
/** Darkness this far (and a cell) from the darkest place still belongs to the same line. */
const LINE_REACH: Mm = 1.2;

const looks = (picture: TablePicture, at: Point, across: Point, reach: Mm): readonly number[] => {
  const { left, top, step } = picture.window;
  const count = Math.round(reach / LOOK);
  const greys: number[] = [];
  for (let i = -count; i <= count; i++) {
    const x = (at.x + i * LOOK * across.x - left) / step;
    const y = (at.y + i * LOOK * across.y - top) / step;
    greys.push(greyAt(picture, x, y));
  }
  return greys;
};

const quantile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(share * (sorted.length - 1))] ?? 0;
};

/** Darkness below this share of the line's own is the paper's grain. */
const GRAIN = 0.12;

/** Of several dark places the one nearest to the middle, walked on to where it is darkest. */
const darkestNear = (greys: readonly number[], limit: number): number => {
  const half = (greys.length - 1) / 2;
  let at = -1;
  for (const [i, grey] of greys.entries()) {
    if (grey <= limit && (at < 0 || Math.abs(i - half) < Math.abs(at - half))) at = i;
  }
  for (;;) {
    const here = greys[at] ?? 0;
    if ((greys[at + 1] ?? 255) < here) at++;
    else if ((greys[at - 1] ?? 255) < here) at--;
    else return at;
  }
};

/** How far off the middle the dark line lies: the centroid of its darkness, `side` looks round it. */
const lineAcross = (greys: readonly number[], side: number): Mm | null => {
  const half = (greys.length - 1) / 2;
  const light = quantile(greys, 0.7);
  const darkest = Math.min(...greys);
  if (light - darkest < LEAST_CONTRAST) return null;
  const middle = darkestNear(greys, (light + darkest) / 2);
  const paper = light - GRAIN * (light - darkest);
  let [weight, sum] = [0, 0];
  for (let i = Math.max(0, middle - side); i <= Math.min(greys.length - 1, middle + side); i++) {
    const dark = Math.max(0, paper - (greys[i] ?? 0));
    weight += dark;
    sum += dark * (i - half);
  }
  return weight > 0 ? (sum / weight) * LOOK : null;
};

/** Looks over which a slope is taken. */
const SPAN = 3;

/** The look at which the grey changes most, within `room` looks of both ends. */
const steepest = (greys: readonly number[], room: number): number => {
  let [best, strongest] = [-1, LEAST_CONTRAST];
  for (let i = room; i + room < greys.length; i++) {
    const slope = Math.abs((greys[i + SPAN] ?? 0) - (greys[i - SPAN] ?? 0));
    if (slope > strongest) [best, strongest] = [i, slope];
  }
  return best;
};

/**
 * How far off the middle the grey steps from one side's to the other's: where it crosses the mean
 * of both sides, each read `side` looks away, beyond the blur of the picture.
 */
const stepAcross = (greys: readonly number[], side: number): Mm | null => {
  const half = (greys.length - 1) / 2;
  const best = steepest(greys, side);
  if (best < 0) return null;
  const mid = ((greys[best - side] ?? 0) + (greys[best + side] ?? 0)) / 2;
  let nearest: number | null = null;
  for (let i = best - side + 1; i <= best + side; i++) {
    const [a, b] = [greys[i - 1] ?? 0, greys[i] ?? 0];
    if (a === b || (a - mid) * (b - mid) > 0) continue;
    const at = i - 1 + (mid - a) / (b - a);
    if (nearest === null || Math.abs(at - best) < Math.abs(nearest - best)) nearest = at;
  }
  return nearest === null ? null : (nearest - half) * LOOK;
};

/** The blur of a picture's edge is over this many cells away from it, and this far at the least. */
const BLUR_CELLS = 2.2;
const BLUR: Mm = 1.2;

/**
 * How far from `at`, along the unit vector `across`, the line or edge lies, in mm; null where none
 * is seen within `reach`. To about a fifth of a cell.
 */
export const offsetAcross = (
  picture: TablePicture,
  what: Followed,
  place: { readonly at: Point; readonly across: Point },
  reach: Mm,
): Mm | null => {
  const wide = LINE_REACH + picture.window.step;
  if (what === "line") {
    return lineAcross(looks(picture, place.at, place.across, reach + 1), Math.round(wide / LOOK));
  }
  const blur = Math.max(BLUR, BLUR_CELLS * picture.window.step);
  return stepAcross(looks(picture, place.at, place.across, reach + blur), Math.round(blur / LOOK));
};
