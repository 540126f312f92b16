import type { Mm } from "../../geometry/units.ts";
import { type Ellipse, fitEllipse } from "./ellipse.ts";
import { FOUND_UNSURE, type SeenMark } from "./mark.ts";
import { MARKER, markerOf, PLACES_ROUND } from "./markerDesign.ts";
import { greyAt, type Picture, type Pixel } from "./picture.ts";

/** Where a mark is thought to be: its middle, and the map from mm of the mark to pixels. */
export type Guess = Ellipse;

/** A mark read from a picture; mirrored where its dots run the wrong way round. */
export type ReadMark = { readonly mark: SeenMark; readonly mirrored: boolean };

const RAYS = 72;
/** Edges are looked for this far inside and outside the radius where they are thought to be. */
const SEARCH: Mm = 2.5;
const STEPS = 24;
/** Black and white of a mark must differ by this much, of 255. */
const LEAST_CONTRAST = 24;
/** Of the rays, this many must meet the edge. */
const MET = 0.75;

const ANGLES = Array.from({ length: RAYS }, (_, i) => (i * 2 * Math.PI) / RAYS);

/** A place of the mark, by its angle and its distance in mm from the middle, in the picture. */
const at = ({ middle, xx, xy, yy }: Guess, angle: number, radius: Mm): Pixel => {
  const [x, y] = [radius * Math.cos(angle), radius * Math.sin(angle)];
  return { x: middle.x + xx * x + xy * y, y: middle.y + xy * x + yy * y };
};

/** Where the grey crosses the middle of its ends along a ray, between steps by proportion. */
const edgeOn = (picture: Picture, guess: Guess, angle: number, radius: Mm): Pixel | null => {
  const values: number[] = [];
  for (let i = 0; i <= STEPS; i++) {
    const p = at(guess, angle, radius - SEARCH + (i * 2 * SEARCH) / STEPS);
    values.push(greyAt(picture, p.x, p.y));
  }
  const inner = ((values[0] ?? 0) + (values[1] ?? 0) + (values[2] ?? 0)) / 3;
  const outer = ((values[STEPS] ?? 0) + (values[STEPS - 1] ?? 0) + (values[STEPS - 2] ?? 0)) / 3;
  if (Math.abs(inner - outer) < LEAST_CONTRAST) return null;
  const mid = (inner + outer) / 2;
  for (let i = 1; i <= STEPS; i++) {
    const [a, b] = [values[i - 1] ?? 0, values[i] ?? 0];
    if (a !== b && (a - mid) * (b - mid) <= 0) {
      const where = i - 1 + (mid - a) / (b - a);
      return at(guess, angle, radius - SEARCH + (where * 2 * SEARCH) / STEPS);
    }
  }
  return null;
};

const RADII = [MARKER.disc, MARKER.ringInner, MARKER.ringOuter] as const;

type Rings = { readonly guess: Guess; readonly middle: Pixel };

/** The three circles of a mark found again to a part of a pixel; null where one is not there. */
const ringsOf = (picture: Picture, guess: Guess): Rings | null => {
  const fits: Ellipse[] = [];
  for (const radius of RADII) {
    const points = ANGLES.map((angle) => edgeOn(picture, guess, angle, radius)).filter(
      (p) => p !== null,
    );
    const fit = points.length >= MET * RAYS ? fitEllipse(points) : null;
    if (!fit) return null;
    fits.push(fit);
  }
  const outer = fits[fits.length - 1] ?? guess;
  const by = 1 / MARKER.ringOuter;
  let [x, y] = [0, 0];
  for (const { middle } of fits) [x, y] = [x + middle.x / fits.length, y + middle.y / fits.length];
  return {
    guess: { middle: outer.middle, xx: outer.xx * by, xy: outer.xy * by, yy: outer.yy * by },
    middle: { x, y },
  };
};

/** Mean of the squared radii that the middle is taken over. */
const RADIUS_SQUARED = RADII.reduce((sum, r) => sum + (r * r) / RADII.length, 0);

const ROUND = 144;
/** A dot may stand this far off its place, in parts of the step between places. */
const OFF_PLACE = 0.3;

/** Whether it is dark where dots may stand, all the way round. */
const darkRound = (picture: Picture, guess: Guess): readonly boolean[] => {
  const grey = (angle: number, radius: Mm): number => {
    const p = at(guess, angle, radius);
    return greyAt(picture, p.x, p.y);
  };
  const ringMiddle = (MARKER.ringInner + MARKER.ringOuter) / 2;
  return Array.from({ length: ROUND }, (_, i) => {
    const angle = (i * 2 * Math.PI) / ROUND;
    const [black, white] = [
      grey(angle, ringMiddle),
      grey(angle, (MARKER.disc + MARKER.ringInner) / 2),
    ];
    const there = [-1.5, 0, 1.5].reduce(
      (sum, off) => sum + grey(angle, MARKER.dotsAt + off) / 3,
      0,
    );
    return there < (black + white) / 2;
  });
};

/** Middles of the dark runs round a ring, in parts of the whole way round. */
const runsOf = (dark: readonly boolean[]): readonly number[] => {
  const start = dark.findIndex((is, i) => is && !dark[(i + dark.length - 1) % dark.length]);
  if (start < 0) return [];
  const middles: number[] = [];
  let from = -1;
  for (let i = 0; i <= dark.length; i++) {
    const is = i < dark.length && (dark[(start + i) % dark.length] ?? false);
    if (is && from < 0) from = i;
    if (!is && from >= 0) {
      middles.push((start + (from + i - 1) / 2) / dark.length);
      from = -1;
    }
  }
  return middles;
};

/** The steps between three dots, clockwise; null where they stand on no places. */
const stepsOf = (middles: readonly number[]): readonly number[] | null => {
  if (middles.length !== 3) return null;
  const steps = middles.map((middle, i) => {
    const next = middles[(i + 1) % 3] ?? middle;
    const way = (next - middle + 2) % 1;
    return (way > 0 ? way : 1) * PLACES_ROUND;
  });
  const whole = steps.map(Math.round);
  const fits = steps.every((step, i) => Math.abs(step - (whole[i] ?? 0)) <= 2 * OFF_PLACE);
  return fits && whole.reduce((a, b) => a + b, 0) === PLACES_ROUND ? whole : null;
};

/** The mark at a guessed place of a picture, found to a part of a pixel; null where it is none. */
export const readMark = (picture: Picture, guess: Guess): ReadMark | null => {
  const first = ringsOf(picture, guess);
  const second = first && ringsOf(picture, first.guess);
  if (!second) return null;
  const steps = stepsOf(runsOf(darkRound(picture, second.guess)));
  const marker = steps && markerOf(steps);
  if (!marker) return null;
  const mark: SeenMark = {
    name: marker.name,
    at: second.middle,
    radiusSquared: RADIUS_SQUARED,
    unsure: FOUND_UNSURE,
  };
  return { mark, mirrored: marker.mirrored };
};
