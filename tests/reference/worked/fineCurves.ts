import { pathOf } from "../../../src/geometry/path.ts";
import { along, type Point, plus, point, times } from "../../../src/geometry/point.ts";
import { cubic, line, type Path, type Segment } from "../../../src/geometry/segment.ts";

/** A cubic from four points in order. */
export const cubicOf = ([a, b, c, d]: readonly Point[]): Path => {
  if (!a || !b || !c || !d) throw new Error("A cubic has four points.");
  return [cubic(a, b, c, d)];
};

/** A parabola raised to a cubic: handles two thirds of the way to its one handle. */
export const parabolaOf = ([a, b, c]: readonly Point[]): Path => {
  if (!a || !b || !c) throw new Error("A parabola has three points.");
  return [cubic(a, along(a, b, 2 / 3), along(c, b, 2 / 3), c)];
};

/** A closed run of straights. */
export const polygon = (points: readonly Point[]): Path =>
  pathOf(points.map((from, i) => line(from, points[(i + 1) % points.length] ?? from)));

/** A curve given by its points and slopes, as many short cubics (Hermite's form). */
const drawn = (at: (t: number) => Point, slope: (t: number) => Point, span: Span): Path => {
  const { from, to, parts } = span;
  const step = (to - from) / parts;
  const segments = Array.from({ length: parts }, (_, i): Segment => {
    const [t, next] = [from + i * step, from + (i + 1) * step];
    return cubic(
      at(t),
      plus(at(t), times(slope(t), step / 3)),
      plus(at(next), times(slope(next), -step / 3)),
      at(next),
    );
  });
  return pathOf(segments);
};
type Span = { readonly from: number; readonly to: number; readonly parts: number };

const PARTS = 1024;

/** An ellipse about the origin, or a part of it, clockwise on the page. Angles in radians. */
export const ellipse = (a: number, b: number, from = 0, to = 2 * Math.PI): Path =>
  drawn(
    (t) => point(a * Math.cos(t), b * Math.sin(t)),
    (t) => point(-a * Math.sin(t), b * Math.cos(t)),
    { from, to, parts: PARTS },
  );

/** Two straights and two half circles, clockwise on the page. */
export const stadium = (straight: number, radius: number): Path => {
  const half = straight / 2;
  const right = ellipse(radius, radius, -Math.PI / 2, Math.PI / 2);
  const left = ellipse(radius, radius, Math.PI / 2, (3 * Math.PI) / 2);
  const moved = (path: Path, by: number): readonly Segment[] =>
    path.map((s) =>
      s.kind === "line"
        ? s
        : cubic(
            plus(s.start, point(by, 0)),
            plus(s.startHandle, point(by, 0)),
            plus(s.endHandle, point(by, 0)),
            plus(s.end, point(by, 0)),
          ),
    );
  return pathOf([
    line(point(-half, -radius), point(half, -radius)),
    ...moved(right, half),
    line(point(half, radius), point(-half, radius)),
    ...moved(left, -half),
  ]);
};
