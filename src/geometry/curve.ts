import { along, minus, type Point, unit } from "./point.ts";
import { type Cubic, cubic, line, type Segment } from "./segment.ts";
import { NO_DIRECTION } from "./tolerance.ts";

/** The point at `t`: 0 is the start, 1 is the end. Bernstein's form (Farin, from memory). */
export const pointAt = (s: Segment, t: number): Point => {
  if (s.kind === "line") return along(s.start, s.end, t);
  const u = 1 - t;
  const a = u * u * u;
  const b = 3 * u * u * t;
  const c = 3 * u * t * t;
  const d = t * t * t;
  return {
    x: a * s.start.x + b * s.startHandle.x + c * s.endHandle.x + d * s.end.x,
    y: a * s.start.y + b * s.startHandle.y + c * s.endHandle.y + d * s.end.y,
  };
};

/** dB/dt, in mm. */
export const derivativeAt = (s: Segment, t: number): Point => {
  if (s.kind === "line") return minus(s.end, s.start);
  const u = 1 - t;
  const a = 3 * u * u;
  const b = 6 * u * t;
  const c = 3 * t * t;
  const { start: p, startHandle: q, endHandle: r, end: e } = s;
  return {
    x: a * (q.x - p.x) + b * (r.x - q.x) + c * (e.x - r.x),
    y: a * (q.y - p.y) + b * (r.y - q.y) + c * (e.y - r.y),
  };
};

/** d2B/dt2, in mm. */
export const secondDerivativeAt = (s: Segment, t: number): Point => {
  if (s.kind === "line") return { x: 0, y: 0 };
  const { start: p, startHandle: q, endHandle: r, end: e } = s;
  const a = 6 * (1 - t);
  const b = 6 * t;
  return {
    x: a * (p.x - 2 * q.x + r.x) + b * (q.x - 2 * r.x + e.x),
    y: a * (p.y - 2 * q.y + r.y) + b * (q.y - 2 * r.y + e.y),
  };
};

/** d3B/dt3, in mm: the same all along. */
export const thirdDerivative = (c: Cubic): Point => ({
  x: 6 * (c.end.x - 3 * c.endHandle.x + 3 * c.startHandle.x - c.start.x),
  y: 6 * (c.end.y - 3 * c.endHandle.y + 3 * c.startHandle.y - c.start.y),
});

const hasDirection = (way: Point): boolean =>
  way.x * way.x + way.y * way.y > NO_DIRECTION * NO_DIRECTION;

/** The first of three ways that is long enough to have a direction, made a unit vector. */
const firstDirection = (first: Point, second: Point, third: Point): Point => {
  if (hasDirection(first)) return unit(first);
  if (hasDirection(second)) return unit(second);
  return hasDirection(third) ? unit(third) : { x: 1, y: 0 };
};

/** The direction in which a segment leaves its start (method 1.1). */
export const startDirection = (s: Segment): Point => {
  const chord = minus(s.end, s.start);
  if (s.kind === "line") return firstDirection(chord, chord, chord);
  return firstDirection(minus(s.startHandle, s.start), minus(s.endHandle, s.start), chord);
};

/** The direction in which a segment reaches its end (method 1.1). */
export const endDirection = (s: Segment): Point => {
  const chord = minus(s.end, s.start);
  if (s.kind === "line") return firstDirection(chord, chord, chord);
  return firstDirection(minus(s.end, s.endHandle), minus(s.end, s.startHandle), chord);
};

/** The unit tangent at `t`; at an end with a handle of no length, as rule 1.1 has it. */
export const directionAt = (s: Segment, t: number): Point => {
  if (t <= 0) return startDirection(s);
  if (t >= 1) return endDirection(s);
  const chord = minus(s.end, s.start);
  return firstDirection(derivativeAt(s, t), chord, chord);
};

/** Both parts of a segment cut at `t`. De Casteljau's steps (Farin, from memory). */
export const splitSegment = (s: Segment, t: number): readonly [Segment, Segment] => {
  if (s.kind === "line") {
    const mid = along(s.start, s.end, t);
    return [line(s.start, mid), line(mid, s.end)];
  }
  const a = along(s.start, s.startHandle, t);
  const b = along(s.startHandle, s.endHandle, t);
  const c = along(s.endHandle, s.end, t);
  const ab = along(a, b, t);
  const bc = along(b, c, t);
  const mid = along(ab, bc, t);
  return [cubic(s.start, a, ab, mid), cubic(mid, bc, c, s.end)];
};

export const reversedSegment = (s: Segment): Segment =>
  s.kind === "line" ? line(s.end, s.start) : cubic(s.end, s.endHandle, s.startHandle, s.start);

/** Every point of a segment, handles too, moved by `move`. Right for affine moves. */
export const mapSegment = (s: Segment, move: (p: Point) => Point): Segment =>
  s.kind === "line"
    ? line(move(s.start), move(s.end))
    : cubic(move(s.start), move(s.startHandle), move(s.endHandle), move(s.end));

/** A straight drawn as a cubic, handles at its thirds, so that it can be bent. */
export const asCubic = (s: Segment): Cubic =>
  s.kind === "cubic"
    ? s
    : cubic(s.start, along(s.start, s.end, 1 / 3), along(s.start, s.end, 2 / 3), s.end);

/** A segment drawn from `start`, whatever it started from; its direction there turns with it. */
export const startingAt = (s: Segment, start: Point): Segment =>
  s.kind === "line" ? line(start, s.end) : cubic(start, s.startHandle, s.endHandle, s.end);
export const endingAt = (s: Segment, end: Point): Segment =>
  s.kind === "line" ? line(s.start, end) : cubic(s.start, s.startHandle, s.endHandle, end);

/** A vector that runs from the segment's start to its end. */
export const chordOf = (s: Segment): Point => minus(s.end, s.start);
