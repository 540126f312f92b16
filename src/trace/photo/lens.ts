import type { Pixel } from "./picture.ts";

/**
 * How a lens bends straight lines: a place at r (in parts of `radius` from `centre`) is seen at
 * r (1 + k1 r² + k2 r⁴). Below nought a barrel, above a cushion (Brown's radial terms; Hartley and
 * Zisserman, 7.4, from memory).
 */
export type Lens = {
  readonly centre: Pixel;
  /** Half the picture's diagonal, in pixels: r is 1 in its corners. */
  readonly radius: number;
  readonly k1: number;
  readonly k2: number;
};

/** A lens that bends nothing, for a picture of this size. */
export const straightLens = (width: number, height: number): Lens => ({
  centre: { x: width / 2, y: height / 2 },
  radius: Math.hypot(width, height) / 2,
  k1: 0,
  k2: 0,
});

/** Where the lens shows what a lens without bending would show at `p`. */
export const bent = ({ centre, radius, k1, k2 }: Lens, p: Pixel): Pixel => {
  const x = p.x - centre.x;
  const y = p.y - centre.y;
  const r2 = (x * x + y * y) / (radius * radius);
  const by = 1 + r2 * (k1 + k2 * r2);
  return { x: centre.x + x * by, y: centre.y + y * by };
};

const ROUNDS = 20;

/** Where a lens without bending would show what this one shows at `p`. Newton's rule on r. */
export const unbent = ({ centre, radius, k1, k2 }: Lens, p: Pixel): Pixel => {
  if (k1 === 0 && k2 === 0) return p;
  const x = p.x - centre.x;
  const y = p.y - centre.y;
  const wanted = Math.sqrt(x * x + y * y) / radius;
  if (wanted === 0) return p;
  let r = wanted;
  for (let round = 0; round < ROUNDS; round++) {
    const r2 = r * r;
    const over = r * (1 + r2 * (k1 + k2 * r2)) - wanted;
    const slope = 1 + r2 * (3 * k1 + 5 * k2 * r2);
    if (!(slope > 0.1)) break;
    r -= over / slope;
    if (Math.abs(over) < 1e-13) break;
  }
  const by = r / wanted;
  return { x: centre.x + x * by, y: centre.y + y * by };
};
