import { cubicLength, segmentLength } from "./length.ts";
import { dot, type Point } from "./point.ts";
import { rootsBetween } from "./roots.ts";
import type { Path, Segment } from "./segment.ts";
import { PARAMETER_SLACK } from "./tolerance.ts";
import type { Mm } from "./units.ts";

/** So much of its own spread a cubic may lie off a value and be worked out: more than the slack is worth. */
const NEAR = 1e-3;

const held = (t: number): number => Math.min(1, Math.max(0, t));

/** The parameters at which `axis`·B(t) has the value, held to [0, 1], in order. */
export const parametersWhere = (s: Segment, axis: Point, value: number): readonly number[] => {
  const [p, e] = [dot(axis, s.start), dot(axis, s.end)];
  if (s.kind === "line") {
    if (p === e) return [];
    const t = (value - p) / (e - p);
    return t >= -PARAMETER_SLACK && t <= 1 + PARAMETER_SLACK ? [held(t)] : [];
  }
  const [q, r] = [dot(axis, s.startHandle), dot(axis, s.endHandle)];
  // No curve leaves the hull of its ends and handles: most are nowhere near.
  const [low, high] = [Math.min(p, q, r, e), Math.max(p, q, r, e)];
  const near = NEAR * (high - low);
  if (value < low - near || value > high + near) return [];
  const cubic = { a: e - 3 * r + 3 * q - p, b: 3 * (r - 2 * q + p), c: 3 * (q - p), d: p - value };
  return rootsBetween(cubic, -PARAMETER_SLACK, 1 + PARAMETER_SLACK).map(held);
};

/** The lengths along a path at which `axis`·point has the value, in order (method 1.3). */
export const crossingsAlong = (path: Path, axis: Point, value: number): readonly Mm[] => {
  const found: Mm[] = [];
  let before = 0;
  for (const segment of path) {
    const whole = segmentLength(segment);
    for (const t of parametersWhere(segment, axis, value)) {
      const on = segment.kind === "line" ? t * whole : cubicLength(segment, 0, t);
      found.push(before + on);
    }
    before += whole;
  }
  return found;
};

const X: Point = { x: 1, y: 0 };
const Y: Point = { x: 0, y: 1 };

/** The lengths along a path at which x (or y) has the value, in order. */
export const crossingsOf = (path: Path, axis: "x" | "y", value: Mm): readonly Mm[] =>
  crossingsAlong(path, axis === "x" ? X : Y, value);
