import { type Point, stepped } from "../../geometry/point.ts";
import { type Cubic, cubic } from "../../geometry/segment.ts";
import { type Degrees, radians } from "../../geometry/units.ts";

export type RaglanShape = { readonly bow: Degrees; readonly start: number; readonly end: number };

/**
 * A raglan line from the neck corner `r` to the underarm `u`, which it reaches along `e`. The bow
 * lifts its start off the straight way: out over the chest, then hollow under the arm, a gentle S
 * (method 2.4, step 12; our own geometry).
 */
export const drawRaglan = (r: Point, u: Point, e: Point, shape: RaglanShape): Cubic => {
  const x = u.x - r.x;
  const y = u.y - r.y;
  const size = Math.sqrt(x * x + y * y);
  const bow = radians(shape.bow);
  const cos = Math.cos(bow);
  const sin = Math.sin(bow);
  const g = { x: (x * cos + y * sin) / size, y: (y * cos - x * sin) / size };
  return cubic(r, stepped(r, g, shape.start * size), stepped(u, e, -shape.end * size), u);
};
