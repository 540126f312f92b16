import type { Point } from "../../geometry/point.ts";

/** x' = ax + cy + e, y' = bx + dy + f, as SVG writes it. */
export type Affine = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
};

export const UNMOVED: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export const movedBy = ({ a, b, c, d, e, f }: Affine, { x, y }: Point): Point => ({
  x: a * x + c * y + e,
  y: b * x + d * y + f,
});

/** `inner` first, then `outer`. */
export const within = (outer: Affine, inner: Affine): Affine => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

/** The most that a length can grow. */
export const mostGrowth = ({ a, b, c, d }: Affine): number => Math.hypot(a, b, c, d);

const turned = (degrees: number): Affine => {
  const angle = (degrees * Math.PI) / 180;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { a: c, b: s, c: -s, d: c, e: 0, f: 0 };
};

const shifted = (e: number, f: number): Affine => ({ ...UNMOVED, e, f });

const tan = (degrees: number): number => Math.tan((degrees * Math.PI) / 180);

/** One named transform; null where its name or the count of its numbers is not SVG's. */
const one = (name: string, n: readonly number[]): Affine | null => {
  const [p = 0, q, r = 0, s = 0, t = 0, u = 0] = n;
  const count = n.length;
  switch (name) {
    case "matrix":
      return count === 6 ? { a: p, b: q ?? 0, c: r, d: s, e: t, f: u } : null;
    case "translate":
      return count === 1 || count === 2 ? shifted(p, q ?? 0) : null;
    case "scale":
      return count === 1 || count === 2 ? { ...UNMOVED, a: p, d: q ?? p } : null;
    case "rotate":
      if (count === 1) return turned(p);
      return count === 3
        ? within(shifted(q ?? 0, r), within(turned(p), shifted(-(q ?? 0), -r)))
        : null;
    case "skewX":
      return count === 1 ? { ...UNMOVED, c: tan(p) } : null;
    case "skewY":
      return count === 1 ? { ...UNMOVED, b: tan(p) } : null;
    default:
      return null;
  }
};

const PART = /\s*,?\s*([A-Za-z]+)\s*\(([^()]*)\)/gy;

/** A list of transforms as one, the last first; null where it cannot be read. */
export const readTransform = (text: string): Affine | null => {
  let whole = UNMOVED;
  let end = 0;
  PART.lastIndex = 0;
  for (;;) {
    const match = PART.exec(text);
    if (!match) break;
    end = PART.lastIndex;
    const numbers = (match[2] ?? "")
      .split(/[\s,]+/u)
      .filter((word) => word !== "")
      .map(Number);
    const next = numbers.every(Number.isFinite) ? one(match[1] ?? "", numbers) : null;
    if (!next) return null;
    whole = within(whole, next);
  }
  return text.slice(end).trim() === "" ? whole : null;
};
