import type { Mm, Radians } from "./units.ts";

/**
 * Where a point lies. All have y pointing down.
 *  piece: x = 0 on the centre line, y = 0 level with the nape (the sleeve: with the underarm).
 *  layout: the one drawing in which all pieces are laid out for paper.
 *  sheet: origin at the top left corner of a printed sheet.
 */
type Frame = "piece" | "layout" | "sheet";

/** Millimetres. The frame exists only for the compiler: it is never set. */
export type Point<F extends Frame = "piece"> = {
  readonly x: Mm;
  readonly y: Mm;
  readonly frame?: F;
};

export const point = (x: Mm, y: Mm): Point => ({ x, y });

export const plus = (a: Point, b: Point): Point => ({ x: a.x + b.x, y: a.y + b.y });
export const minus = (a: Point, b: Point): Point => ({ x: a.x - b.x, y: a.y - b.y });
export const times = (a: Point, by: number): Point => ({ x: a.x * by, y: a.y * by });
/** `from`, moved `distance` along the direction `dir` (a unit vector). */
export const stepped = (from: Point, dir: Point, distance: Mm): Point => ({
  x: from.x + dir.x * distance,
  y: from.y + dir.y * distance,
});

/** The point a share `t` of the way from `a` to `b`. */
export const along = (a: Point, b: Point, t: number): Point => ({
  x: a.x + (b.x - a.x) * t,
  y: a.y + (b.y - a.y) * t,
});

export const norm = (a: Point): number => Math.sqrt(a.x * a.x + a.y * a.y);
export const apart = (a: Point, b: Point): Mm => norm(minus(a, b));
export const dot = (a: Point, b: Point): number => a.x * b.x + a.y * b.y;
export const cross = (a: Point, b: Point): number => a.x * b.y - a.y * b.x;
export const unit = (a: Point): Point => times(a, 1 / norm(a));

/** The direction at `angle`, from the positive x axis towards positive y (clockwise on the page). */
export const dir = (angle: Radians): Point => ({ x: Math.cos(angle), y: Math.sin(angle) });
export const ang = (v: Point): Radians => Math.atan2(v.y, v.x);
/** From direction `u` to direction `v`, in (-pi, pi]; positive turns clockwise on the page. */
export const turn = (u: Point, v: Point): Radians => Math.atan2(cross(u, v), dot(u, v));
/** The outward side of a piece that runs clockwise: to the left of travel. */
export const out = (t: Point): Point => ({ x: t.y, y: -t.x });
export const mirrored = (a: Point): Point => ({ x: -a.x, y: a.y });
