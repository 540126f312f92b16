import { mapPath } from "../geometry/path.ts";
import { cross, dot, minus, norm, type Point, point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";

/**
 * Where a piece lies in a picture: turned, perhaps turned over, and moved, never stretched, so
 * every line in a picture is as long as on the piece. (x, y) goes to (a·x + c·y + e, b·x + d·y + f).
 */
export type Place = {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
};

/** As the piece is drawn: neither turned nor moved. */
export const AS_DRAWN: Place = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };
/** Turned over about the line x = 0. */
export const TURNED_OVER: Place = { a: -1, b: 0, c: 0, d: 1, e: 0, f: 0 };
/** Moved, not turned. In mm. */
export const moved = (x: number, y: number): Place => ({ ...AS_DRAWN, e: x, f: y });

/** Where a point of the piece lies in the picture. */
export const placePoint = ({ a, b, c, d, e, f }: Place, p: Point): Point =>
  point(a * p.x + c * p.y + e, b * p.x + d * p.y + f);

/** Where a line of the piece lies in the picture. */
export const placePath = (place: Place, path: Path): Path =>
  place === AS_DRAWN ? path : mapPath(path, (p) => placePoint(place, p));

/** First `inner`, followed `outer`. */
export const followed = (inner: Place, outer: Place): Place => ({
  a: outer.a * inner.a + outer.c * inner.b,
  b: outer.b * inner.a + outer.d * inner.b,
  c: outer.a * inner.c + outer.c * inner.d,
  d: outer.b * inner.c + outer.d * inner.d,
  e: outer.a * inner.e + outer.c * inner.f + outer.e,
  f: outer.b * inner.e + outer.d * inner.f + outer.f,
});

/** Where a point of the picture lies on the piece itself: the way back. */
export const liftPoint = (place: Place, p: Point): Point => {
  const { a, b, c, d, e, f } = place;
  const turned = a * d - b * c;
  const [x, y] = [p.x - e, p.y - f];
  return point((d * x - c * y) / turned, (a * y - b * x) / turned);
};

/** Two points, or a point and the way on from it. */
export type Bearing = { readonly at: Point; readonly way: Point };

/** Lays `from` onto `onto`: point on point, way along way. Turned over where asked. */
export const laidOn = (from: Bearing, onto: Bearing, turnedOver = false): Place => {
  const way = turnedOver ? point(-from.way.x, from.way.y) : from.way;
  const size = norm(way) * norm(onto.way);
  const cos = dot(way, onto.way) / size;
  const sin = cross(way, onto.way) / size;
  const turn: Place = { a: cos, b: sin, c: -sin, d: cos, e: 0, f: 0 };
  const placed = turnedOver ? followed(TURNED_OVER, turn) : turn;
  const move = minus(onto.at, placePoint(placed, from.at));
  return { ...placed, e: move.x, f: move.y };
};
