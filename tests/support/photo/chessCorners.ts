import { greyAt, type Picture, type Pixel } from "../../../src/trace/photo/picture.ts";

/** The look round a corner reaches so many pixels to each side. */
const REACH = 4;
const ROUNDS = 20;

/**
 * A corner of a chessboard to a part of a pixel, begun within a few of it: the place q for which every
 * gradient g seen at p stands across the way from q to p, by least squares of g·(p - q) (Förstner and
 * Gülch 1987, from memory). Knows nothing of any other corner, nor of planes.
 */
export const chessCorner = (picture: Picture, begun: Pixel): Pixel => {
  let at = begun;
  for (let round = 0; round < ROUNDS; round++) {
    let [xx, xy, yy, x, y] = [0, 0, 0, 0, 0];
    for (let dy = -REACH; dy <= REACH; dy++) {
      for (let dx = -REACH; dx <= REACH; dx++) {
        const p = { x: at.x + dx, y: at.y + dy };
        const gx = greyAt(picture, p.x + 1, p.y) - greyAt(picture, p.x - 1, p.y);
        const gy = greyAt(picture, p.x, p.y + 1) - greyAt(picture, p.x, p.y - 1);
        xx += gx * gx;
        xy += gx * gy;
        yy += gy * gy;
        x += gx * (gx * p.x + gy * p.y);
        y += gy * (gx * p.x + gy * p.y);
      }
    }
    const by = xx * yy - xy * xy;
    const next = { x: (x * yy - y * xy) / by, y: (y * xx - x * xy) / by };
    const moved = Math.hypot(next.x - at.x, next.y - at.y);
    at = next;
    if (moved < 1e-4) break;
  }
  return at;
};
