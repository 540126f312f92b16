import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";

/** Lines that fill an area: how far apart, which way they run, how long a dash and its gap are. */
export type Hatch = {
  readonly apart: Mm;
  /** The way of the lines, of length 1. */
  readonly way: Point;
  /** 0: the lines run through. */
  readonly dash: Mm;
  readonly gap: Mm;
};

type Span = readonly [from: number, to: number];

/** Where a line at `off` beside the origin runs inside a closed run of points (even and odd). */
const spansAt = (points: readonly Point[], { way }: Hatch, off: number): readonly Span[] => {
  const met: number[] = [];
  points.forEach((to, i) => {
    const from = points[i - 1] ?? points[points.length - 1] ?? to;
    const [a, b] = [way.x * from.y - way.y * from.x - off, way.x * to.y - way.y * to.x - off];
    if (a > 0 === b > 0) return;
    const t = a / (a - b);
    met.push(way.x * (from.x + (to.x - from.x) * t) + way.y * (from.y + (to.y - from.y) * t));
  });
  met.sort((a, b) => a - b);
  const spans: Span[] = [];
  for (let i = 0; i + 1 < met.length; i += 2) spans.push([met[i] ?? 0, met[i + 1] ?? 0]);
  return spans;
};

/** Lines stand a hair beside their grid, so that none runs through a corner or along an edge. */
const BESIDE = 1e-6;

/** A span cut into dashes that stand on one grid over the whole picture, every other row shifted. */
const dashed = ([from, to]: Span, { dash, gap }: Hatch, row: number): readonly Span[] => {
  if (dash <= 0) return [[from, to]];
  const step = dash + gap;
  const shift = row % 2 === 0 ? 0 : step / 2;
  const found: Span[] = [];
  for (let k = Math.floor((from - shift) / step); k * step + shift < to; k++) {
    const [a, b] = [Math.max(from, k * step + shift), Math.min(to, k * step + shift + dash)];
    if (b - a > dash / 4) found.push([a, b]);
  }
  return found;
};

/**
 * The straights that hatch the inside of a closed run of points. They stand on one grid, so that
 * areas side by side seem one. Canvas and paper use the same.
 */
export const hatchOf = (
  points: readonly Point[],
  hatch: Hatch,
): readonly (readonly [Point, Point])[] => {
  const { way, apart } = hatch;
  const offs = points.map(({ x, y }) => way.x * y - way.y * x);
  const [least, most] = [Math.min(...offs), Math.max(...offs)];
  const lines: (readonly [Point, Point])[] = [];
  for (let row = Math.ceil(least / apart); row * apart < most; row++) {
    const off = (row + BESIDE) * apart;
    const at = (along: number): Point => ({
      x: way.x * along - way.y * off,
      y: way.y * along + way.x * off,
    });
    for (const span of spansAt(points, hatch, off)) {
      for (const [from, to] of dashed(span, hatch, row)) lines.push([at(from), at(to)]);
    }
  }
  return lines;
};
