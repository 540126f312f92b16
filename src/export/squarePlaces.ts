import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { clearest, newProbe } from "./clearPlace.ts";
import { crossesBox } from "./clip.ts";
import { TEST_SQUARE } from "./data/paper.ts";
import type { Ink } from "./freeSpace.ts";
import { grown, levelWith, meets } from "./word.ts";

/** From the square to the nearest line. */
const CLEAR: Mm = 0.5;
/** Where the coarse look finds no place, a finer one tries places so far apart. */
const FINE: Mm = 1;
/** And so much nearer to the joints. */
const NEARER: Mm = 4;

/** Lines as runs of points. */
type Lines = readonly (readonly Point[])[];
type Chord = { readonly from: Point; readonly to: Point };

const chordsIn = (lines: Lines, window: Box): readonly Chord[] =>
  lines.flatMap((points) =>
    points.flatMap((to, i): readonly Chord[] => {
      const from = points[i - 1];
      return from && crossesBox(from, to, window) ? [{ from, to }] : [];
    }),
  );

/** Where corner marks may stand. */
const cornersOf = ({ left, top, right, bottom }: Box, overlap: Mm): readonly Box[] =>
  [left, right - overlap].flatMap((x) =>
    [top, bottom - overlap].map((y) => ({
      left: x,
      top: y,
      right: x + overlap,
      bottom: y + overlap,
    })),
  );

/**
 * A place that no line crosses, told from the lines themselves; null: there is none. It may come
 * nearer to the joints than other furniture, but not to the marks at their ends.
 */
const exactPlace = (window: Box, overlap: Mm, lines: Lines, taken: readonly Box[]): Box | null => {
  const chords = chordsIn(lines, window);
  const others = [...taken, ...cornersOf(window, overlap)];
  const wider = grown(window, NEARER);
  const room = grown(wider, -overlap);
  const probe = newProbe();
  const isCrossed = (box: Box): boolean => {
    for (const { from, to } of chords) if (crossesBox(from, to, box)) return true;
    return false;
  };
  for (let bottom = room.bottom; bottom - TEST_SQUARE >= room.top; bottom -= FINE) {
    const top = bottom - TEST_SQUARE;
    const beside = levelWith({ top, bottom }, others);
    probe.top = top - CLEAR;
    probe.bottom = bottom + CLEAR;
    for (let right = room.right; right - TEST_SQUARE >= room.left; right -= FINE) {
      const left = right - TEST_SQUARE;
      if (beside.some((other) => other.left < right && left < other.right)) continue;
      probe.left = left - CLEAR;
      probe.right = right + CLEAR;
      if (!isCrossed(probe)) return { left, top, right, bottom };
    }
  }
  return null;
};

/** What the squares must keep clear of. */
type Field = {
  readonly windows: readonly Box[];
  readonly overlap: Mm;
  readonly ink: Ink;
  readonly lines: Lines;
  /** Words that stand already. */
  readonly taken: readonly Box[];
};

/**
 * Where each sheet's test square stands: where no line crosses it, if any place is free. The squares
 * come before the labels, which have more places to go.
 */
export const squarePlaces = ({ windows, overlap, ink, lines, taken }: Field): readonly Box[] =>
  windows.map((window) => {
    const boxes = taken.filter((box) => meets(box, window));
    const places = {
      window,
      overlap,
      width: TEST_SQUARE,
      height: TEST_SQUARE,
      from: "lower right",
    } as const;
    const coarse = clearest({ ink, boxes }, places);
    if (coarse?.cover === 0) return coarse.box;
    return exactPlace(window, overlap, lines, boxes) ?? coarse?.box ?? window;
  });
