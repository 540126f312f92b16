import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { greyAt } from "../photo/picture.ts";
import type { TablePicture } from "../photo/rectify.ts";
import type { Followed } from "./kind.ts";

/** Looks across a line are this far apart. */
const LOOK: Mm = 0.15;
/** Contrast below this, of 255 greys, is grain and no line. */
const LEAST_CONTRAST = 14;
/** Darkness this far from the darkest place still belongs to the same line. */
const LINE_REACH: Mm = 1.6;

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

/** How far off the middle the dark line lies: the centroid of what is darker than half way. */
const lineAcross = (greys: readonly number[]): Mm | null => {
  const half = (greys.length - 1) / 2;
  const light = quantile(greys, 0.7);
  const darkest = Math.min(...greys);
  if (light - darkest < LEAST_CONTRAST) return null;
  const limit = (light + darkest) / 2;
  // Of several dark places the one nearest to the middle is meant, if it is dark enough.
  let best = -1;
  for (const [i, grey] of greys.entries()) {
    if (grey > limit) continue;
    if (best < 0 || Math.abs(i - half) < Math.abs(best - half)) best = i;
  }
  let [weight, sum] = [0, 0];
  for (const [i, grey] of greys.entries()) {
    if (grey >= light || Math.abs(i - best) * LOOK > LINE_REACH) continue;
    const w = Math.max(0, (light + limit) / 2 - grey);
    weight += w;
    sum += w * (i - half);
  }
  return weight > 0 ? (sum / weight) * LOOK : null;
};

/** How far off the middle the grey steps from one side's to the other's. */
const stepAcross = (greys: readonly number[]): Mm | null => {
  const half = (greys.length - 1) / 2;
  const span = 3;
  let [best, strongest] = [-1, 0];
  for (let i = span; i + span < greys.length; i++) {
    const slope = Math.abs((greys[i + span] ?? 0) - (greys[i - span] ?? 0));
    if (slope > strongest) [best, strongest] = [i, slope];
  }
  if (strongest < LEAST_CONTRAST) return null;
  const reach = Math.round(1.2 / LOOK);
  const one = greys[Math.max(0, best - reach)] ?? 0;
  const other = greys[Math.min(greys.length - 1, best + reach)] ?? 0;
  const mid = (one + other) / 2;
  let nearest: number | null = null;
  for (let i = Math.max(1, best - reach); i <= Math.min(greys.length - 1, best + reach); i++) {
    const [a, b] = [greys[i - 1] ?? 0, greys[i] ?? 0];
    if (a === b || (a - mid) * (b - mid) > 0) continue;
    const at = i - 1 + (mid - a) / (b - a);
    if (nearest === null || Math.abs(at - best) < Math.abs(nearest - best)) nearest = at;
  }
  return nearest === null ? null : (nearest - half) * LOOK;
};

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
  const greys = looks(picture, place.at, place.across, reach);
  return what === "line" ? lineAcross(greys) : stepAcross(greys);
};
