import { expect } from "vitest";
import type { BodyEdges, SleeveEdges } from "../../src/drafting/piece.ts";
import { endOf, startOf } from "../../src/geometry/path.ts";
import { apart, type Point } from "../../src/geometry/point.ts";
import type { Path } from "../../src/geometry/segment.ts";

/** Two numbers agree within so much; both are told where they do not. */
export const near = (value: number, wanted: number, within: number, what = ""): void =>
  expect(Math.abs(value - wanted), `${what} ${value} for ${wanted}`).toBeLessThanOrEqual(within);

/** Two points agree within so much; a tenth of a millimetre unless told (method, section 10). */
export const nearPoint = (p: Point, [x, y]: readonly [number, number], within = 0.1): void =>
  expect(apart(p, { x, y }), `(${p.x}, ${p.y}) for (${x}, ${y})`).toBeLessThanOrEqual(within);

/** Each edge begins where the one before ends, round to the first. */
export const expectChained = (edges: readonly Path[], within = 1e-9): void =>
  edges.forEach((edge, i) => {
    const before = edges.at(i - 1);
    const gap = before ? apart(endOf(before), startOf(edge)) : Number.NaN;
    expect(gap, `edge ${i}`).toBeLessThanOrEqual(within);
  });

/** In order round the piece (contract, "Frames"). */
export const edgesOfBody = (body: BodyEdges): readonly Path[] => [
  ...(body.v ? [body.v] : []),
  body.neckline,
  body.raglan,
  body.side,
  body.hem,
  body.centre,
];
export const edgesOfSleeve = (sleeve: SleeveEdges): readonly Path[] => [
  sleeve.neckline,
  sleeve.raglanFront,
  sleeve.underarmFront,
  sleeve.wrist,
  sleeve.underarmBack,
  sleeve.raglanBack,
];
