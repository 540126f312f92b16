import { solveLinear } from "../algebra/linear.ts";
import type { Pixel } from "./picture.ts";

/**
 * An ellipse by its middle and the map that makes it of a circle of radius 1: p = middle + M u, M
 * symmetric.
 */
export type Ellipse = {
  readonly middle: Pixel;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
};

/** The symmetric map whose square is [[xx, xy], [xy, yy]]; null where it is no ellipse's. */
export const rootOfMoments = (
  xx: number,
  xy: number,
  yy: number,
): Omit<Ellipse, "middle"> | null => {
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 0) || !(xx > 0)) return null;
  // √M = (M + √det) / √(trace + 2√det), the square root of a 2 by 2 matrix.
  const root = Math.sqrt(determinant);
  const by = 1 / Math.sqrt(xx + yy + 2 * root);
  return { xx: (xx + root) * by, xy: xy * by, yy: (yy + root) * by };
};

const middleAndSize = (points: readonly Pixel[]) => {
  let [x, y] = [0, 0];
  for (const p of points) [x, y] = [x + p.x / points.length, y + p.y / points.length];
  let size = 0;
  for (const p of points) size += Math.hypot(p.x - x, p.y - y) / points.length;
  return { x, y, size: size > 0 ? size : 1 };
};

/**
 * The ellipse nearest to points all round it: the conic ax² + bxy + cy² + dx + ey = 1 of least
 * squares, on points brought to about 1. Null where the conic is no ellipse.
 */
export const fitEllipse = (points: readonly Pixel[]): Ellipse | null => {
  if (points.length < 6) return null;
  const { x: mx, y: my, size } = middleAndSize(points);
  const normal = [0, 1, 2, 3, 4].map(() => [0, 0, 0, 0, 0]);
  const right = [0, 0, 0, 0, 0];
  for (const p of points) {
    const x = (p.x - mx) / size;
    const y = (p.y - my) / size;
    const row = [x * x, x * y, y * y, x, y];
    for (let i = 0; i < 5; i++) {
      const line = normal[i];
      for (let k = 0; line && k < 5; k++) line[k] = (line[k] ?? 0) + (row[i] ?? 0) * (row[k] ?? 0);
      right[i] = (right[i] ?? 0) + (row[i] ?? 0);
    }
  }
  const conic = solveLinear(normal, right);
  if (!conic) return null;
  const [a = 0, b = 0, c = 0, d = 0, e = 0] = conic;
  const four = 4 * a * c - b * b;
  if (!(four > 0)) return null;
  const x = (b * e - 2 * c * d) / four;
  const y = (b * d - 2 * a * e) / four;
  // About its middle the conic is ax² + bxy + cy² = level: M² is its inverse.
  const level = 1 + a * x * x + b * x * y + c * y * y;
  const shape = rootOfMoments(
    (4 * c * level) / four,
    (-2 * b * level) / four,
    (4 * a * level) / four,
  );
  if (!shape) return null;
  return {
    middle: { x: mx + x * size, y: my + y * size },
    xx: shape.xx * size,
    xy: shape.xy * size,
    yy: shape.yy * size,
  };
};
