import { directionAt, pointAt, secondDerivativeAt, thirdDerivative } from "./curve.ts";
import { pathOf } from "./path.ts";
import { cross, norm, out, type Point, stepped, times } from "./point.ts";
import { type Cubic, cubic, type Path } from "./segment.ts";
import { NO_DIRECTION, OFFSET_ERROR } from "./tolerance.ts";
import type { Mm } from "./units.ts";

const MOST_PARTS = 64;
/** Where along each part the drawn offset is held against the true one: after so many quarters. */
const QUARTERS = [1, 2, 3] as const;

// Both lists serve all curves, filled and read within one call of this file: most are tried in several
// numbers of parts, and a new object for every point would cost more than the sums.
/**
 * The true offset at every 64th of the cubic, as far as it was asked for: x and y of the place, then x
 * and y of its derivative.
 */
const nodes = new Float64Array(4 * (MOST_PARTS + 1));
/** What was looked at last: x and y of the true offset, x and y of B', and its length. */
const seen = new Float64Array(5);

/** Looks at O(t) = B + a·out(T) (method 1.4) after so many quarters of a 64th. */
const lookAt = (quarters: number, c: Cubic, a: Mm): void => {
  const { start: p, startHandle: q, endHandle: r, end: e } = c;
  const t = quarters / (4 * MOST_PARTS);
  const u = 1 - t;
  const a1 = 3 * u * u;
  const b1 = 6 * u * t;
  const c1 = 3 * t * t;
  const dx = a1 * (q.x - p.x) + b1 * (r.x - q.x) + c1 * (e.x - r.x);
  const dy = a1 * (q.y - p.y) + b1 * (r.y - q.y) + c1 * (e.y - r.y);
  const speed = Math.sqrt(dx * dx + dy * dy);
  seen[2] = dx;
  seen[3] = dy;
  seen[4] = speed;
  if (speed <= NO_DIRECTION) {
    const at = stepped(pointAt(c, t), out(directionAt(c, t)), a);
    seen[0] = at.x;
    seen[1] = at.y;
    return;
  }
  const k0 = u * u * u;
  const k1 = 3 * u * u * t;
  const k2 = 3 * u * t * t;
  const k3 = t * t * t;
  const one = 1 / speed;
  seen[0] = k0 * p.x + k1 * q.x + k2 * r.x + k3 * e.x + dy * one * a;
  seen[1] = k0 * p.y + k1 * q.y + k2 * r.y + k3 * e.y - dx * one * a;
};

/**
 * The derivative where a handle has no length: B' is nil and κ has no bound, but their product has the
 * limit T·(B''×B''')/(2|B''|²).
 */
const pointedSlope = (c: Cubic, t: number, a: Mm): Point => {
  const second = secondDerivativeAt(c, t);
  const size = norm(second);
  const grows = size > NO_DIRECTION ? cross(second, thirdDerivative(c)) / (2 * size * size) : 0;
  return times(directionAt(c, t), a * grows);
};

/** Puts the offset and O'(t) = B'(1 + aκ) (method 1.4) at a 64th among the nodes. */
const findNode = (sixtyFourth: number, c: Cubic, a: Mm): void => {
  lookAt(4 * sixtyFourth, c, a);
  const i = 4 * sixtyFourth;
  const t = sixtyFourth / MOST_PARTS;
  nodes[i] = seen[0] ?? 0;
  nodes[i + 1] = seen[1] ?? 0;
  const dx = seen[2] ?? 0;
  const dy = seen[3] ?? 0;
  const speed = seen[4] ?? 0;
  if (speed <= NO_DIRECTION) {
    const slope = pointedSlope(c, t, a);
    nodes[i + 2] = slope.x;
    nodes[i + 3] = slope.y;
    return;
  }
  const { start: p, startHandle: q, endHandle: r, end: e } = c;
  const a2 = 6 * (1 - t);
  const b2 = 6 * t;
  const ddx = a2 * (p.x - 2 * q.x + r.x) + b2 * (q.x - 2 * r.x + e.x);
  const ddy = a2 * (p.y - 2 * q.y + r.y) + b2 * (q.y - 2 * r.y + e.y);
  const grown = 1 + a * ((dx * ddy - dy * ddx) / (speed * speed * speed));
  nodes[i + 2] = dx * grown;
  nodes[i + 3] = dy * grown;
};

/** Whether the cubic with the ends and slopes of the offset from node to node keeps to it. */
const keepsTo = (from: number, step: number, c: Cubic, a: Mm): boolean => {
  const i = 4 * from;
  const k = 4 * (from + step);
  const third = step / MOST_PARTS / 3;
  const startX = nodes[i] ?? 0;
  const startY = nodes[i + 1] ?? 0;
  const startHandleX = startX + (nodes[i + 2] ?? 0) * third;
  const startHandleY = startY + (nodes[i + 3] ?? 0) * third;
  const endX = nodes[k] ?? 0;
  const endY = nodes[k + 1] ?? 0;
  const endHandleX = endX - (nodes[k + 2] ?? 0) * third;
  const endHandleY = endY - (nodes[k + 3] ?? 0) * third;
  for (const quarter of QUARTERS) {
    const t = quarter / 4;
    const v = 1 - t;
    const m0 = v * v * v;
    const m1 = 3 * v * v * t;
    const m2 = 3 * v * t * t;
    const m3 = t * t * t;
    const x = m0 * startX + m1 * startHandleX + m2 * endHandleX + m3 * endX;
    const y = m0 * startY + m1 * startHandleY + m2 * endHandleY + m3 * endY;
    lookAt(4 * from + quarter * step, c, a);
    const offX = x - (seen[0] ?? 0);
    const offY = y - (seen[1] ?? 0);
    if (Math.sqrt(offX * offX + offY * offY) > OFFSET_ERROR) return false;
  }
  return true;
};

/** Finds the nodes of so many parts, until one does not keep to the offset; whether all do, or no more may be tried. */
const isTrueIn = (parts: number, c: Cubic, a: Mm): boolean => {
  const step = MOST_PARTS / parts;
  for (let from = 0; from < MOST_PARTS; from += step) {
    findNode(from + step, c, a);
    if (!keepsTo(from, step, c, a) && parts < MOST_PARTS) return false;
  }
  return true;
};

/** The cubics with the ends and slopes of the offset from node to node. */
const drawnIn = (parts: number): Path => {
  const third = 1 / parts / 3;
  const drawn: Cubic[] = [];
  let from = { x: nodes[0] ?? 0, y: nodes[1] ?? 0 };
  for (let part = 0; part < parts; part++) {
    const i = part * (MOST_PARTS / parts) * 4;
    const k = (part + 1) * (MOST_PARTS / parts) * 4;
    const to = { x: nodes[k] ?? 0, y: nodes[k + 1] ?? 0 };
    drawn.push(
      cubic(
        from,
        { x: from.x + (nodes[i + 2] ?? 0) * third, y: from.y + (nodes[i + 3] ?? 0) * third },
        { x: to.x - (nodes[k + 2] ?? 0) * third, y: to.y - (nodes[k + 3] ?? 0) * third },
        to,
      ),
    );
    from = to;
  }
  return pathOf(drawn);
};

/**
 * A cubic moved `a` mm outward (inward below zero), drawn in as few of 1, 2, 4 ... 64 cubics as keep
 * within OFFSET_ERROR of the true offset where they are tried.
 */
export const offsetCubic = (c: Cubic, a: Mm): Path => {
  findNode(0, c, a);
  let parts = 1;
  while (!isTrueIn(parts, c, a)) parts *= 2;
  return drawnIn(parts);
};
