import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import { DIGITS } from "./data/digits.ts";
import { FINE, type PageArt, type Run, ruled, straightRun } from "./pageArt.ts";
import type { Grid } from "./tiles.ts";

/** A scale shorter than this would not show a sheet printed a little too small. */
const LEAST: Mm = 150;
const MOST: Mm = 500;
const MULTIPLE: Mm = 50;
/** Left free at the ends for corner marks and names. */
const ENDS: Mm = 30;
/** From the joint at which a scale begins to its nought. */
export const RULER_START: Mm = 8;

const TICKS = { one: 1.2, five: 1.9, ten: 2.6 } as const;
/** One square of the grid on which figures are drawn, and from one figure to the next. */
const SQUARE: Mm = 0.24;
const ADVANCE: Mm = 1.34;
/** From a scale's line to the top of its figures. */
const FIGURES_DOWN: Mm = 2.95;

/** How long a scale is on a joint of this length. */
const lengthOn = (joint: Mm): Mm =>
  Math.min(MOST, Math.max(LEAST, Math.floor((joint - ENDS) / MULTIPLE) * MULTIPLE));

/** The lengths of the scales along the foot and the right side of a sheet. */
export const rulerLengths = ({ stepX, stepY }: Grid): readonly [Mm, Mm] => [
  lengthOn(stepX),
  lengthOn(stepY),
];

const tickAt = (mm: number): Mm => {
  if (mm % 10 === 0) return TICKS.ten;
  return mm % 5 === 0 ? TICKS.five : TICKS.one;
};

/** A text in single strokes, its middle at the top at `at`; `turned` reads it up the page. */
const figureRuns = (text: string, at: Point, turned: boolean): readonly Run[] => {
  const start = (-(text.length - 1) * ADVANCE) / 2 - 2 * SQUARE;
  return [...text].flatMap((figure, i) =>
    (DIGITS[figure] ?? []).map((stroke) => {
      const points = stroke.flatMap((value, k) => {
        if (k % 2 === 1) return [];
        const along = start + i * ADVANCE + value * SQUARE;
        const down = (stroke[k + 1] ?? 0) * SQUARE;
        return [turned ? { x: at.x + down, y: at.y - along } : { x: at.x + along, y: at.y + down }];
      });
      return { points, closed: false };
    }),
  );
};

/**
 * A scale in millimetres from (0, 0): across with its ticks below, or down with its ticks to the
 * right. Every ten are numbered.
 */
export const ruler = (length: Mm, way: "across" | "down"): PageArt => {
  const turned = way === "down";
  const at = (along: Mm, off: Mm): Point => (turned ? { x: off, y: along } : { x: along, y: off });
  const ticks = Array.from({ length: length + 1 }, (_, mm) =>
    straightRun(at(mm, 0), at(mm, tickAt(mm))),
  );
  const numbers = Array.from({ length: length / 10 + 1 }, (_, i) =>
    figureRuns(String(i * 10), at(i * 10, FIGURES_DOWN), turned),
  ).flat();
  const unit = figureRuns("mm", at(length + 4.6, FIGURES_DOWN), turned);
  const line = straightRun(at(0, 0), at(length, 0));
  return {
    shapes: [ruled([line, ...ticks], FINE), ruled([...numbers, ...unit], 0.15)],
    words: [],
  };
};
