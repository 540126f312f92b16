import { BLOCK } from "../../drafting/data/blockConstants.ts";
import { dot, minus, norm, out, type Point, stepped, times } from "../../geometry/point.ts";
import { type Cubic, cubic } from "../../geometry/segment.ts";
import { solve } from "../../geometry/solve.ts";
import type { Mm } from "../../geometry/units.ts";
import type { RaglanOffsets } from "./tapeMeasures.ts";

/** A raglan line by its offsets, and how far it misses the one it misses most. */
export type OffsetRaglan = { readonly cubic: Cubic; readonly miss: Mm };

const { start: FIRST, end: LAST } = BLOCK.bodyRaglan;
/** The last handle stands at least this part of the chord before the underarm. */
const LEAST_LAST = 0.08;

/** The parameter at which a cubic whose last handle stands `last` before its end is at a share. */
const parameterAt = (share: number, last: number): number => {
  const of = (t: number): number => {
    const u = 1 - t;
    return 3 * u * u * t * FIRST + 3 * u * t * t * (1 - last) + t * t * t - share;
  };
  return solve({ of, low: 0, high: 1 }) ?? share;
};

/**
 * The raglan from the neck corner to the underarm whose offsets from its chord at the quarters are
 * nearest to those measured: handles at the drafted parts of the chord (the last one as if the line
 * reached the underarm along the unit vector `reach`), their heights by least squares of the three
 * offsets. Our own geometry.
 */
export const raglanByOffsets = (
  r: Point,
  u: Point,
  reach: Point,
  offsets: RaglanOffsets,
): OffsetRaglan => {
  const chord = minus(u, r);
  const size = norm(chord);
  const way = times(chord, 1 / size);
  const final = Math.max(LEAST_LAST, LAST * dot(reach, way));
  const rows = [0.25, 0.5, 0.75].map((share, i) => {
    const t = parameterAt(share, final);
    return {
      a: 3 * (1 - t) * (1 - t) * t,
      b: 3 * (1 - t) * t * t,
      offset: offsets[i] ?? 0,
    };
  });
  const sum = (of: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((total, row) => total + of(row), 0);
  const [aa, ab, bb] = [sum(({ a }) => a * a), sum(({ a, b }) => a * b), sum(({ b }) => b * b)];
  const [ao, bo] = [sum(({ a, offset }) => a * offset), sum(({ b, offset }) => b * offset)];
  const determinant = aa * bb - ab * ab;
  const first = (ao * bb - bo * ab) / determinant;
  const last = (bo * aa - ao * ab) / determinant;
  const handle = (share: number, off: Mm): Point =>
    stepped(stepped(r, way, share * size), out(way), off);
  return {
    cubic: cubic(r, handle(FIRST, first), handle(1 - final, last), u),
    miss: Math.max(...rows.map(({ a, b, offset }) => Math.abs(a * first + b * last - offset))),
  };
};
