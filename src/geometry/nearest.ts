import { derivativeAt, pointAt, secondDerivativeAt } from "./curve.ts";
import { cubicLength, segmentLength } from "./length.ts";
import { apart, dot, minus, type Point } from "./point.ts";
import type { Path, Segment } from "./segment.ts";
import type { Mm } from "./units.ts";

const SAMPLES = 32;
const STARTS = 3;
const ROUNDS = 20;

type Candidate = { readonly t: number; readonly away: Mm };

/** Newton's rule on (B(t) - q)·B'(t) = 0, t held to the segment. */
const improved = (s: Segment, q: Point, from: number): Candidate => {
  let t = from;
  for (let round = 0; round < ROUNDS; round++) {
    const [gap, first] = [minus(pointAt(s, t), q), derivativeAt(s, t)];
    const slope = dot(first, first) + dot(gap, secondDerivativeAt(s, t));
    if (slope <= 0) break;
    const next = Math.min(1, Math.max(0, t - dot(gap, first) / slope));
    if (next === t) break;
    t = next;
  }
  return { t, away: apart(pointAt(s, t), q) };
};

const nearestOn = (s: Segment, q: Point): Candidate => {
  const tried = Array.from({ length: SAMPLES + 1 }, (_, i) => {
    const t = i / SAMPLES;
    return { t, away: apart(pointAt(s, t), q) };
  }).sort((a, b) => a.away - b.away);
  const better = tried.slice(0, STARTS).map(({ t }) => improved(s, q, t));
  return [...better, ...tried.slice(0, 1)].reduce((a, b) => (b.away < a.away ? b : a));
};

/** The point of a path nearest to `q`, how far along it lies, and how far away (method 1.5). */
export const nearestOnPath = (
  path: Path,
  q: Point,
): { readonly point: Point; readonly along: Mm; readonly away: Mm } => {
  let before = 0;
  let best = { point: path[0].start, along: 0, away: apart(path[0].start, q) };
  for (const segment of path) {
    const { t, away } = nearestOn(segment, q);
    const whole = segmentLength(segment);
    if (away < best.away) {
      const on = segment.kind === "line" ? t * whole : cubicLength(segment, 0, t);
      best = { point: pointAt(segment, t), along: before + on, away };
    }
    before += whole;
  }
  return best;
};
