import { faulty, found, type Told } from "../told.ts";
import { type DarkPart, type DarkParts, darkPartsOf } from "./darkParts.ts";
import { rootOfMoments } from "./ellipse.ts";
import type { SeenMark } from "./mark.ts";
import { MARKER } from "./markerDesign.ts";
import { type Picture, reduced } from "./picture.ts";
import { type Guess, type ReadMark, readMark } from "./readMark.ts";

/** Marks are looked for first in a picture made this small, where a ring is still 30 pixels wide. */
const LOOKED_THROUGH = 1600;
/** And once more at twice the size where fewer than this many were found. */
const ENOUGH = 4;
/** A disc fills this share of its moments' ellipse. */
const FILLS_FROM = 0.85;
const FILLS_TO = 1.15;
/** The ring's box against the disc's, as the mark is drawn, and how far it may be off. */
const RING_TO_DISC = MARKER.ringOuter / MARKER.disc;
const OFF_RATIO = 0.3;
/** The slant at which a mark is no longer read: its short way is this part of its long way. */
const FLATTEST = 0.25;

/** The map from mm to pixels that a disc's moments tell: for a solid disc they are r²/4. */
const guessOf = ({ x, y, xx, xy, yy, area }: DarkPart): Guess | null => {
  const by = 4 / (MARKER.disc * MARKER.disc);
  const map = rootOfMoments(xx * by, xy * by, yy * by);
  if (!map) return null;
  const filled = area / (4 * Math.PI * Math.sqrt(xx * yy - xy * xy));
  if (!(filled > FILLS_FROM && filled < FILLS_TO)) return null;
  const trace = map.xx + map.yy;
  const flat = (map.xx * map.yy - map.xy * map.xy) / ((trace * trace) / 4);
  // For half axes p, q this is 4pq / (p + q)²; 0.64 where one is a quarter of the other.
  if (flat < (4 * FLATTEST) / ((1 + FLATTEST) * (1 + FLATTEST))) return null;
  return { middle: { x, y }, ...map };
};

/** The part that a disc's right side looks at across the white: its ring. */
const ringRound = (
  disc: DarkPart,
  { labels }: DarkParts,
  byLabel: Map<number, DarkPart>,
  width: number,
) => {
  const reach = Math.ceil((disc.right - disc.left) * 1.2);
  const row = Math.floor(disc.y) * width;
  for (let x = disc.right; x < Math.min(width, disc.right + reach); x++) {
    const label = labels[row + x] ?? 0;
    if (label !== 0 && label !== disc.label) return byLabel.get(label) ?? null;
  }
  return null;
};

const isRingOf = (ring: DarkPart, disc: DarkPart): boolean => {
  const across = (ring.right - ring.left) / (disc.right - disc.left) / RING_TO_DISC;
  const down = (ring.bottom - ring.top) / (disc.bottom - disc.top) / RING_TO_DISC;
  const size = disc.right - disc.left;
  return (
    Math.abs(across - 1) < OFF_RATIO &&
    Math.abs(down - 1) < OFF_RATIO &&
    Math.abs(ring.x - disc.x) < 0.25 * size &&
    Math.abs(ring.y - disc.y) < 0.25 * (disc.bottom - disc.top)
  );
};

/** Where marks may be in a picture, by discs in rings. */
const guessesIn = (picture: Picture): readonly Guess[] => {
  const parts = darkPartsOf(picture);
  const byLabel = new Map(parts.parts.map((part) => [part.label, part]));
  return parts.parts.flatMap((disc) => {
    const guess = guessOf(disc);
    const ring = guess && ringRound(disc, parts, byLabel, picture.width);
    return guess && ring && isRingOf(ring, disc) ? [guess] : [];
  });
};

/** A guess in a reduced picture, as it stands in the whole one. */
const enlarged = ({ middle, xx, xy, yy }: Guess, by: number): Guess => ({
  middle: { x: middle.x * by, y: middle.y * by },
  xx: xx * by,
  xy: xy * by,
  yy: yy * by,
});

const marksAt = (picture: Picture, side: number): readonly ReadMark[] => {
  const by = Math.max(1, Math.floor(Math.max(picture.width, picture.height) / side));
  return guessesIn(reduced(picture, by)).flatMap((guess) => {
    const mark = readMark(picture, enlarged(guess, by));
    return mark ? [mark] : [];
  });
};

/** The range of greys within which a picture shows nothing at all. */
const BLANK = 12;

const blank = ({ grey }: Picture): Told<never> | null => {
  let [low, high] = [255, 0];
  const stride = Math.max(1, Math.floor(grey.length / 100_000));
  for (let k = 0; k < grey.length; k += stride) {
    const value = grey[k] ?? 0;
    if (value < low) low = value;
    if (value > high) high = value;
  }
  if (high - low > BLANK) return null;
  const what = high < 64 ? "black" : low > 192 ? "white" : "one grey";
  return faulty(
    "picture",
    what,
    `The picture is all ${what}: its greys span ${high - low} of 255.`,
    "Take it again in more light, with the lens free.",
  );
};

const mirroredFault = (names: string): Told<never> =>
  faulty(
    "picture",
    "mirrored",
    `The picture is mirrored: the dots of mark ${names} run the wrong way round.`,
    "Turn mirroring off in the camera, or flip the picture from left to right.",
  );

const noMarks: Told<never> = faulty(
  "picture",
  "no marks",
  "No printed mark was found in the picture.",
  "Print the marker sheets, lay one at each corner flat and in the light, or click four points of known distance.",
);

/**
 * The printed marks of a picture, by name, each to a part of a pixel. Told where the picture is
 * blank, mirrored, or shows none. A mark that is cut off by the picture's edge is not read.
 */
export const findMarks = (picture: Picture): Told<readonly SeenMark[]> => {
  const empty = blank(picture);
  if (empty) return empty;
  const coarse = marksAt(picture, LOOKED_THROUGH);
  const read = coarse.length >= ENOUGH ? coarse : marksAt(picture, 2 * LOOKED_THROUGH);
  const best = read.length >= coarse.length ? read : coarse;
  if (best.length === 0) return noMarks;
  const wrong = best.filter(({ mirrored }) => mirrored);
  if (wrong.length > best.length / 2) {
    return mirroredFault(wrong.map(({ mark }) => mark.name).join(", "));
  }
  const marks = best.filter(({ mirrored }) => !mirrored).map(({ mark }) => mark);
  return found([...marks].sort((a, b) => (a.name < b.name ? -1 : 1)));
};
