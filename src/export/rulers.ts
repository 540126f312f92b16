import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { OVERLAP } from "./data/paper.ts";
import { FINE, type PageArt, type Run, ruled, straightRun, wordOf } from "./pageArt.ts";
import type { Grid } from "./tiles.ts";

/** A scale shorter than this would not show a sheet printed a little too small. */
const LEAST: Mm = 150;
const MOST: Mm = 500;
const MULTIPLE: Mm = 50;
/** Left free at the ends for corner marks and names. */
const ENDS: Mm = 30;
/** From the joint at which a scale begins to its nought. */
export const RULER_START: Mm = 10;

const TICKS = { one: 1.2, five: 1.9, ten: 2.7 } as const;
const DIGITS: Mm = 2;
/** From a scale's line to the foot of its digits. */
const DIGITS_DOWN: Mm = 4.5;

/** How long a scale is on a joint of this length. */
const lengthOn = (joint: Mm): Mm =>
  Math.min(MOST, Math.max(LEAST, Math.floor((joint - ENDS) / MULTIPLE) * MULTIPLE));

/** The lengths of the scales along the foot and the right side of a sheet. */
export const rulerLengths = ({ windowWidth, windowHeight }: Grid): readonly [Mm, Mm] => [
  lengthOn(windowWidth - OVERLAP),
  lengthOn(windowHeight - OVERLAP),
];

const tickAt = (mm: number): Mm => {
  if (mm % 10 === 0) return TICKS.ten;
  return mm % 5 === 0 ? TICKS.five : TICKS.one;
};

/**
 * A scale in millimetres from (0, 0): across with its ticks below, or down with its ticks to the
 * right. Every ten are numbered.
 */
export const ruler = (length: Mm, way: "across" | "down"): PageArt => {
  const at = (along: Mm, off: Mm): Point =>
    way === "across" ? { x: along, y: off } : { x: off, y: along };
  const runs: Run[] = [straightRun(at(0, 0), at(length, 0))];
  for (let mm = 0; mm <= length; mm++) runs.push(straightRun(at(mm, 0), at(mm, tickAt(mm))));
  const turn = way === "across" ? 0 : -90;
  const words = Array.from({ length: length / 10 + 1 }, (_, i) =>
    wordOf(String(i * 10), at(i * 10, DIGITS_DOWN), DIGITS, { turn, from: "middle" }),
  );
  const unit = wordOf("mm", at(length + (way === "across" ? 2.6 : 5.6), DIGITS_DOWN), DIGITS, {
    turn,
  });
  return { shapes: [ruled(runs, FINE)], words: [...words, unit] };
};
