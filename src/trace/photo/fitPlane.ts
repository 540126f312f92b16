import type { Point } from "../../geometry/point.ts";
import { leastSquares } from "../algebra/leastSquares.ts";
import {
  after,
  depthOf,
  fitHomography,
  type Homography,
  inverse,
  SAME,
  seen,
} from "./homography.ts";
import { bent, type Lens, unbent } from "./lens.ts";
import type { SeenMark } from "./mark.ts";
import type { Pixel } from "./picture.ts";
import { type Plane, planeOf } from "./plane.ts";

/** A mark and where it lies on the table, in mm. */
export type PlacedMark = { readonly mark: SeenMark; readonly place: Point };

/** Points seen along an edge that is straight on the table. */
export type StraightEdge = readonly Pixel[];

export type PlaneAsked = {
  readonly marks: readonly PlacedMark[];
  readonly edges: readonly StraightEdge[];
  /** How many of the lens's terms to work out; 0 where the camera straightens by itself. */
  readonly terms: 0 | 1 | 2;
  /** Its centre and radius are taken; its bending is where the search begins. */
  readonly lens: Lens;
};

export type PlaneFit = {
  readonly plane: Plane;
  /** How far each mark is seen from where the plane shows it, in pixels, in the marks' order. */
  readonly misses: readonly number[];
  /** How far straight edges stray from straight once the lens is taken away, root mean square, px. */
  readonly crooked: number;
};

/** Lenses bend no more than about this at the picture's corners; readings may say otherwise. Ours. */
const USUAL_BENDING = 0.1;
/** A point on an edge may be out by this much, in pixels. Measured on pictures made by program. */
const EDGE_UNSURE = 0.2;

/**
 * The point whose picture is the middle of the picture of a circle round `place`. From the dual
 * conic of the circle: the middle is the pole of the line at infinity (Hartley and Zisserman, 2.2).
 */
export const apparent = (m: Homography, place: Point, radiusSquared: number): Point => {
  const by = radiusSquared / depthOf(m, place);
  return { x: place.x - by * m.g, y: place.y - by * m.h };
};

/** How far each point lies from the line through them all, in pixels (least squares across it). */
export const offLine = (points: readonly Pixel[]): readonly number[] => {
  let [x, y] = [0, 0];
  for (const p of points) [x, y] = [x + p.x / points.length, y + p.y / points.length];
  let [xx, xy, yy] = [0, 0, 0];
  for (const p of points) {
    xx += (p.x - x) * (p.x - x);
    xy += (p.x - x) * (p.y - y);
    yy += (p.y - y) * (p.y - y);
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2;
  const across = { x: -Math.sin(angle), y: Math.cos(angle) };
  return points.map((p) => (p.x - x) * across.x + (p.y - y) * across.y);
};

/** Table and picture brought to about 1, so that all unknowns are of one size. */
const scalesOf = ({ marks, lens }: PlaneAsked) => {
  const far = Math.max(...marks.flatMap(({ place }) => [Math.abs(place.x), Math.abs(place.y)]), 1);
  const table: Homography = { ...SAME, a: far, e: far };
  const { centre, radius } = lens;
  const picture: Homography = { ...SAME, a: radius, c: centre.x, e: radius, f: centre.y };
  return { table, picture };
};

const eight = (m: Homography): readonly number[] =>
  [m.a, m.b, m.c, m.d, m.e, m.f, m.g, m.h].map((v) => v / m.i);

const homographyOf = (x: readonly number[]): Homography => {
  const at = (i: number): number => x[i] ?? 0;
  return { a: at(0), b: at(1), c: at(2), d: at(3), e: at(4), f: at(5), g: at(6), h: at(7), i: 1 };
};

const lensOf = (x: readonly number[], { lens, terms }: PlaneAsked): Lens => ({
  ...lens,
  k1: terms > 0 ? (x[8] ?? 0) : lens.k1,
  k2: terms > 1 ? (x[9] ?? 0) : lens.k2,
});

const missOf = (plane: Homography, lens: Lens, { mark, place }: PlacedMark): Pixel => {
  const there = bent(lens, seen(plane, apparent(plane, place, mark.radiusSquared)));
  return { x: there.x - mark.at.x, y: there.y - mark.at.y };
};

const crookedOf = (edges: readonly StraightEdge[], lens: Lens): readonly number[] =>
  edges.flatMap((edge) => offLine(edge.map((p) => unbent(lens, p))));

const rootMeanSquare = (values: readonly number[]): number =>
  values.length === 0 ? 0 : Math.sqrt(values.reduce((sum, v) => sum + v * v, 0) / values.length);

/**
 * The plane of a table from marks of known place: homography and lens together, so that the marks'
 * misses in pixels and the bends of straight edges are least, each weighted by how sure it is. Null
 * where the marks do not fix a plane (three of four on one line).
 */
export const fitPlane = (asked: PlaneAsked): PlaneFit | null => {
  const { marks, edges, terms, lens } = asked;
  const begun = fitHomography(
    marks.map(({ mark, place }) => ({ from: place, to: unbent(lens, mark.at) })),
  );
  if (!begun) return null;
  const { table, picture } = scalesOf(asked);
  const whole = (x: readonly number[]): Homography =>
    after(after(inverse(table), homographyOf(x)), picture);
  const start = [...eight(after(after(table, begun), inverse(picture))), lens.k1, lens.k2].slice(
    0,
    8 + terms,
  );
  const { at } = leastSquares({
    start,
    steps: start.map(() => 1e-6),
    residuals: (x) => {
      const plane = whole(x);
      const bending = lensOf(x, asked);
      const misses = marks.flatMap((placed) => {
        const miss = missOf(plane, bending, placed);
        return [miss.x / placed.mark.unsure, miss.y / placed.mark.unsure];
      });
      const bends = terms > 0 ? crookedOf(edges, bending).map((v) => v / EDGE_UNSURE) : [];
      const usual = terms > 0 ? [bending.k1 / USUAL_BENDING, bending.k2 / USUAL_BENDING] : [];
      return [...misses, ...bends, ...usual];
    },
  });
  const [plane, bending] = [whole(at), lensOf(at, asked)];
  return {
    plane: planeOf(plane, bending),
    misses: marks.map((placed) => {
      const { x, y } = missOf(plane, bending, placed);
      return Math.hypot(x, y);
    }),
    crooked: rootMeanSquare(crookedOf(edges, bending)),
  };
};
