import type { Point } from "./point.ts";

/** A straight part of an edge. */
export type Line = { readonly kind: "line"; readonly start: Point; readonly end: Point };

/** A cubic Bézier part of an edge. It passes through its ends; the handles only pull it. */
export type Cubic = {
  readonly kind: "cubic";
  readonly start: Point;
  readonly startHandle: Point;
  readonly endHandle: Point;
  readonly end: Point;
};

export type Segment = Line | Cubic;

/** An open run of segments, each starting where the one before ends. Never empty. */
export type Path = readonly [Segment, ...Segment[]];

export const line = (start: Point, end: Point): Line => ({ kind: "line", start, end });
export const cubic = (start: Point, startHandle: Point, endHandle: Point, end: Point): Cubic => ({
  kind: "cubic",
  start,
  startHandle,
  endHandle,
  end,
});
