import type { Point } from "../geometry/point.ts";
import { type Cubic, cubic } from "../geometry/segment.ts";
import type { Mm, Radians } from "../geometry/units.ts";

/** An ellipse's arc: from `from` on by `sweep`, clockwise on the page above nought. */
export type Arc = {
  readonly middle: Point;
  readonly rx: Mm;
  readonly ry: Mm;
  /** How far its x axis is turned. */
  readonly turn: Radians;
  readonly from: Radians;
  readonly sweep: Radians;
};

/** An arc drawn in cubics strays from the true one by no more than this. */
const ARC_ERROR: Mm = 0.0005;

/**
 * The cubic for `angle` of a circle of radius 1 strays by about 4/27 · sin⁶(angle/4) / cos²(angle/4)
 * (Goldapp 1991, from memory; the tests measure it).
 */
const strays = (angle: Radians): number =>
  ((4 / 27) * Math.sin(angle / 4) ** 6) / Math.cos(angle / 4) ** 2;

const partsOf = ({ rx, ry, sweep }: Arc, within: Mm): number => {
  let parts = Math.max(1, Math.ceil(Math.abs(sweep) / (Math.PI / 2)));
  while (strays(sweep / parts) * Math.max(rx, ry) > within && parts < 256) parts++;
  return parts;
};

/** An arc of an ellipse as cubics, within 0.0005 mm where nothing else is asked for. */
export const arcCubics = (arc: Arc, within: Mm = ARC_ERROR): readonly Cubic[] => {
  const { middle, rx, ry, turn, from, sweep } = arc;
  const parts = partsOf(arc, within);
  const step = sweep / parts;
  const handle = (4 / 3) * Math.tan(step / 4);
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const at = (x: number, y: number): Point => ({
    x: middle.x + c * rx * x - s * ry * y,
    y: middle.y + s * rx * x + c * ry * y,
  });
  return Array.from({ length: parts }, (_, i) => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const [ca, sa, cb, sb] = [Math.cos(a), Math.sin(a), Math.cos(b), Math.sin(b)];
    return cubic(
      at(ca, sa),
      at(ca - handle * sa, sa + handle * ca),
      at(cb + handle * sb, sb - handle * cb),
      at(cb, sb),
    );
  });
};

/** A whole circle, clockwise, as a closed run of cubics. */
export const circleCubics = (middle: Point, radius: Mm): readonly Cubic[] =>
  arcCubics({ middle, rx: radius, ry: radius, turn: 0, from: 0, sweep: 2 * Math.PI });
