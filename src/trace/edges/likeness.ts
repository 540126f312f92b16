import { pointAt } from "../../geometry/curve.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, endTangent, startOf, startTangent } from "../../geometry/path.ts";
import { apart, minus, type Point, turn } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { degrees } from "../../geometry/units.ts";
import type { CornerRing } from "./ring.ts";

/** What a shape is expected to show: a value, and how far off it is still usual. Ours. */
export type Trait = { readonly value: number; readonly usual: number; readonly spread: number };

const EIGHTHS = [0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875] as const;

/** How far a run leaves its chord, as a part of the chord; above nought to the left (outward). */
const bowOf = (path: Path): number => {
  const [a, b] = [startOf(path), endOf(path)];
  const size = apart(a, b) || 1;
  let most = 0;
  for (const s of path) {
    for (const t of EIGHTHS) {
      const p = pointAt(s, t);
      const off = ((b.y - a.y) * (p.x - a.x) - (b.x - a.x) * (p.y - a.y)) / (size * size);
      if (Math.abs(off) > Math.abs(most)) most = off;
    }
  }
  return most;
};

const chordOf = (path: Path): number => apart(startOf(path), endOf(path));

/** The corner between two runs in degrees: 90 for a right angle of the piece. */
const cornerOf = (before: Path | undefined, after: Path | undefined): number =>
  before && after ? degrees(turn(endTangent(before), startTangent(after))) : 0;

/** How unlike traits are, in all: the sum of squares of how many spreads each is off. */
export const unlike = (traits: readonly Trait[]): number =>
  traits.reduce((sum, { value, usual, spread }) => sum + ((value - usual) / spread) ** 2, 0);

const trait = (value: number, usual: number, spread: number): Trait => ({ value, usual, spread });

/** A point in the frame of a line from `from` (down along it) and square to it (out to the right). */
const inFrame = (p: Point, from: Point, to: Point): Point => {
  const size = apart(from, to) || 1;
  const down = { x: (to.x - from.x) / size, y: (to.y - from.y) / size };
  const way = minus(p, from);
  return { x: way.x * down.y - way.y * down.x, y: way.x * down.x + way.y * down.y };
};

/** Usual depth of a neckline at its centre below its raglan corner, as a part of its width. */
const DEPTH = { front: 0.75, back: 0.15 } as const;

/**
 * Traits of a half front or back: neckline, raglan, side, hem, centre, begun at the neckline's
 * centre. Values of drafted and textbook blocks; spreads are wide. Ours.
 */
export const halfTraits = (ring: CornerRing, half: "front" | "back"): readonly Trait[] => {
  const [neckline, raglan, side, hem, centre] = ring;
  if (!neckline || !raglan || !side || !hem || !centre) return [trait(1, 0, 0.01)];
  const [top, foot] = [startOf(neckline), startOf(centre)];
  const of = (path: Path): Point => inFrame(startOf(path), top, foot);
  const [r, u, h] = [of(raglan), of(side), of(hem)];
  const wide = u.x || 1;
  return [
    trait(bowOf(centre), 0, 0.01),
    trait(cornerOf(centre, neckline), 90, 12),
    trait(cornerOf(hem, centre), 90, 12),
    trait(r.x / wide, 0.28, 0.12),
    trait((u.y - r.y) / wide, 0.8, 0.3),
    trait((h.y - u.y) / wide, 1.2, 0.6),
    trait(h.x / wide, 1, 0.1),
    trait(bowOf(side), 0, 0.03),
    trait(-r.y / (r.x || 1), DEPTH[half], 0.2),
  ];
};

/**
 * Traits of a whole front or back: neckline, raglan, side, hem, side, raglan, begun at the left end
 * of the neckline.
 */
export const wholeTraits = (ring: CornerRing, half: "front" | "back"): readonly Trait[] => {
  const [neckline, right, rightSide, hem, leftSide, left] = ring;
  if (!neckline || !right || !rightSide || !hem || !leftSide || !left) return [trait(1, 0, 0.01)];
  const wide = apart(startOf(rightSide), endOf(leftSide)) || 1;
  const neck = chordOf(neckline);
  return [
    trait(neck / wide, 0.28, 0.07),
    trait(chordOf(hem) / wide, 1, 0.1),
    trait(evenness(right, left), 0, 0.03),
    trait(evenness(rightSide, leftSide), 0, 0.03),
    trait(chordOf(right) / wide, 0.56, 0.12),
    trait(chordOf(rightSide) / wide, 0.6, 0.3),
    trait(bowOf(rightSide), 0, 0.03),
    // The neckline dips into the piece: to the right of travel, so below nought.
    trait(-bowOf(neckline) * 2, DEPTH[half], 0.2),
  ];
};

/** How unlike two lengths are, as a part of their mean. */
const evenness = (a: Path, b: Path): number => {
  const [one, other] = [lengthOf(a), lengthOf(b)];
  return (2 * (one - other)) / (one + other || 1);
};

/**
 * Traits of a sleeve: neckline, raglan front, underarm, wrist, underarm, raglan back. That the back
 * raglan is the longer one is the only thing that tells front from back.
 */
export const sleeveTraits = (ring: CornerRing): readonly Trait[] => {
  const [neckline, front, underarmFront, wrist, underarmBack, back] = ring;
  if (!neckline || !front || !underarmFront || !wrist || !underarmBack || !back)
    return [trait(1, 0, 0.01)];
  const wide = apart(startOf(underarmFront), endOf(underarmBack)) || 1;
  return [
    trait(chordOf(neckline) / wide, 0.15, 0.06),
    trait(chordOf(wrist) / wide, 0.55, 0.17),
    trait(evenness(underarmFront, underarmBack), 0, 0.03),
    trait(evenness(back, front), 0.05, 0.07),
    trait(chordOf(front) / wide, 0.72, 0.15),
    trait(chordOf(underarmFront) / wide, 1, 0.45),
    trait(bowOf(underarmFront), 0, 0.03),
    trait(bowOf(wrist), 0, 0.04),
  ];
};
