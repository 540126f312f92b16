import type { Pixel } from "./picture.ts";

const sideOf = (a: Pixel, b: Pixel, p: Pixel): number =>
  (b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x);

const halfHull = (sorted: readonly Pixel[]): readonly Pixel[] => {
  const hull: Pixel[] = [];
  for (const p of sorted) {
    for (;;) {
      const [a, b] = [hull[hull.length - 2], hull[hull.length - 1]];
      if (!a || !b || sideOf(a, b, p) > 0) break;
      hull.pop();
    }
    hull.push(p);
  }
  return hull.slice(0, -1);
};

/** The convex hull of points, clockwise on the page (Andrew's monotone chain, from memory). */
export const hullOf = (points: readonly Pixel[]): readonly Pixel[] => {
  const sorted = [...points].sort((a, b) => a.x - b.x || a.y - b.y);
  return [...halfHull(sorted), ...halfHull(sorted.reverse())];
};

/** Area inside a ring of points; above nought where it runs clockwise on the page. */
export const areaInside = (ring: readonly Pixel[]): number => {
  let twice = 0;
  for (const [i, p] of ring.entries()) {
    const q = ring[(i + 1) % ring.length] ?? p;
    twice += p.x * q.y - q.x * p.y;
  }
  return twice / 2;
};
