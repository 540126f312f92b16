import { endTangent, startTangent } from "../../geometry/path.ts";
import { ang, dir, minus, norm, type Point, stepped, turn } from "../../geometry/point.ts";
import { type Cubic, cubic, type Path } from "../../geometry/segment.ts";
import { type Radians, radians } from "../../geometry/units.ts";
import { BLOCK } from "../data/blockConstants.ts";

/** The corner angle of two edges that follow each other round a piece (method 1.1). */
export const cornerOf = (before: Path, after: Path): Radians =>
  turn(endTangent(before), startTangent(after));

/** The angle brought into (-pi, pi]. */
const wrapped = (angle: Radians): Radians => {
  const once = angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI));
  return once <= -Math.PI ? once + 2 * Math.PI : once;
};

/** A direction no further off the chord than neckMax, on whichever side it lies. */
const heldTo = (chord: Radians, direction: Radians): Radians => {
  const most = radians(BLOCK.neckMax);
  return chord + Math.min(most, Math.max(-most, wrapped(direction - chord)));
};

/** What the sleeve's neck edge runs between, and the corners it must run on from. */
export type NeckEdgeEnds = {
  readonly back: Point;
  readonly front: Point;
  /** The end tangent of raglanBack, which runs up, and the start tangent of raglanFront. */
  readonly backRaglan: Point;
  readonly frontRaglan: Point;
  /** The corner angles at the neck of the body's back and front. */
  readonly backCorner: Radians;
  readonly frontCorner: Radians;
};

/**
 * The sleeve's neck edge, drawn so that the neckline runs straight on over both raglan seams: the
 * corner angles of two pieces sewn together add to 180° (method 2.6; our own geometry).
 */
export const drawNeckEdge = (ends: NeckEdgeEnds): Cubic => {
  const chord = minus(ends.front, ends.back);
  const along = ang(chord);
  const size = norm(chord);
  const atBack = heldTo(along, ang(ends.backRaglan) + (Math.PI - ends.backCorner));
  const atFront = heldTo(along, ang(ends.frontRaglan) - (Math.PI - ends.frontCorner));
  const handle = BLOCK.neckEdge * size;
  return cubic(
    ends.back,
    stepped(ends.back, dir(atBack), handle),
    stepped(ends.front, dir(atFront), -handle),
    ends.front,
  );
};
