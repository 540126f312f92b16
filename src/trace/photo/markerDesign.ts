import type { Mm } from "../../geometry/units.ts";

/**
 * Our own printed mark: a black disc in a black ring, and three dots round it. The dots stand at
 * three unlike steps of a twelfth of the way round; which steps, and in which order clockwise, is
 * the mark's name. No mark is the mirror image of another, so a mirrored picture is noticed.
 * Radii in mm from its middle. Our own design.
 */
export const MARKER = {
  disc: 10 as Mm,
  ringInner: 16 as Mm,
  ringOuter: 24 as Mm,
  dotsAt: 31 as Mm,
  dot: 4 as Mm,
  /** Short strokes that show where the middle lies, for the tape. */
  tickFrom: 40 as Mm,
  tickTo: 52 as Mm,
  /** A white point in the disc: distances are measured from here. */
  middle: 0.6 as Mm,
} as const;

/** Places round the ring at which a dot may stand. */
export const PLACES_ROUND = 12;

/** Steps between the dots, clockwise. All three unlike, so that none is its own mirror image. */
export const MARKER_STEPS = {
  A: [3, 4, 5],
  B: [2, 4, 6],
  C: [2, 3, 7],
  D: [1, 4, 7],
  E: [1, 5, 6],
  F: [1, 3, 8],
  G: [1, 2, 9],
} as const satisfies Record<string, readonly [number, number, number]>;

export type MarkerName = keyof typeof MARKER_STEPS;
export const MARKER_NAMES: readonly MarkerName[] = ["A", "B", "C", "D", "E", "F", "G"];

/** What three steps clockwise say: a mark, or a mark seen in a mirror, or neither. */
export const markerOf = (
  steps: readonly number[],
): { readonly name: MarkerName; readonly mirrored: boolean } | null => {
  const [a = 0, b = 0, c = 0] = steps;
  const turns = [
    [a, b, c],
    [b, c, a],
    [c, a, b],
  ];
  for (const name of MARKER_NAMES) {
    const [p, q, r] = MARKER_STEPS[name];
    if (turns.some(([x, y, z]) => x === p && y === q && z === r)) return { name, mirrored: false };
    if (turns.some(([x, y, z]) => x === r && y === q && z === p)) return { name, mirrored: true };
  }
  return null;
};
