import { crossingsAlong } from "../../geometry/crossings.ts";
import { lengthOf } from "../../geometry/length.ts";
import {
  endOf,
  endTangent,
  joined,
  mirroredPath,
  reversed,
  startOf,
  straight,
} from "../../geometry/path.ts";
import { dot, minus, mirrored, type Point, point, unit } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { splitAt } from "../../geometry/split.ts";
import type { Mm, Radians } from "../../geometry/units.ts";
import type { Choices } from "../choices.ts";
import { ALTERATION } from "../data/alterationLimits.ts";
import type { BodyEdges, InsertEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { type Altered, withCentre } from "./altered.ts";
import { allowanceRail, cutRail, depthRail, tooDeepRail, widthRail } from "./vRails.ts";

type Choice = Choices["alterations"]["vInsert"];

/** A front with its V, the insert, and the allowance that the V could take. */
export type WithV = {
  readonly front: BodyEdges;
  readonly insert: InsertEdges;
  readonly allowance: Mm;
};

/** The V as drawn, before it is known how it is sewn. Lengths in mm. */
type DrawnV = {
  /** On the neckline. */
  readonly top: Point;
  /** On the fold. */
  readonly tip: Point;
  readonly halfAngle: Radians;
  /** The neckline's first part, from the centre to the top, and the rest. */
  readonly inner: Path;
  readonly rest: Path;
  readonly hemAtFold: Mm;
};

/** The least level of the tip: below the top, and below where the neckline's tangent there meets
 * the fold; a shallower V would cross the neckline. */
const leastTip = (inner: Path): Mm => {
  const top = endOf(inner);
  const tangent = endTangent(inner);
  const below = top.y + ALTERATION.vLeast;
  if (tangent.x <= 1e-6) return below;
  return Math.max(below, top.y - (top.x * tangent.y) / tangent.x + ALTERATION.vLeast);
};

const drawV = (front: BodyEdges, choice: Choice): Altered<DrawnV> => {
  const { neckline } = front;
  const halfWidth = Math.min(choice.halfWidth, ALTERATION.vWidthMost * lengthOf(neckline));
  const [inner, rest] = splitAt(neckline, halfWidth);
  const top = endOf(inner);
  const centre = startOf(neckline).y;
  const hemAtFold = endOf(front.hem).y;
  const most = hemAtFold - ALTERATION.vAboveHem - centre;
  const least = leastTip(inner) - centre;
  const depth = Math.max(Math.min(choice.depth, most), least);
  const tip = point(0, centre + depth);
  const rails = [
    ...(halfWidth < choice.halfWidth ? [widthRail(choice.halfWidth, halfWidth)] : []),
    ...(depth !== choice.depth ? [depthRail(choice.depth, depth)] : []),
    ...(depth > most ? [tooDeepRail(depth, most)] : []),
  ];
  const halfAngle = Math.atan2(top.x, tip.y - top.y);
  return { altered: { top, tip, halfAngle, inner, rest, hemAtFold }, rails };
};

/** The allowance, held so that it neither lies over the fold nor brings the tip to the hem. */
const allowanceOf = (v: DrawnV, { allowance, method }: Choice): Altered<Mm> => {
  const overFold = ALTERATION.vAllowanceMost * v.top.x * Math.cos(v.halfAngle);
  const room = v.hemAtFold - ALTERATION.cutAwayAboveHem - v.tip.y;
  const aboveHem = method === "cut-away" ? Math.max(0, room * Math.sin(v.halfAngle)) : Infinity;
  const altered = Math.min(allowance, overFold, aboveHem);
  return { altered, rails: altered < allowance ? [allowanceRail(allowance, altered)] : [] };
};

/** The insert, whole, x = 0 its centre: its top follows the neckline's curve. */
const insertOf = ({ inner, top, tip }: DrawnV): InsertEdges => ({
  top: joined(reversed(mirroredPath(inner)), inner),
  right: straight(top, tip),
  left: straight(tip, mirrored(top)),
});

/** The sewing line of a V that was cut away: the drawn one moved into the garment (method 3.5). */
const cutAwayFront = (v: DrawnV, allowance: Mm) => {
  if (allowance === 0) return { v: straight(v.tip, v.top), neckline: v.rest, missing: false };
  const along = unit(minus(v.top, v.tip));
  const intoGarment = point(-along.y, along.x);
  const [first] = crossingsAlong(v.rest, intoGarment, dot(intoGarment, v.tip) + allowance);
  const neckline = first === undefined ? v.rest : splitAt(v.rest, first)[1];
  const tip = point(0, v.tip.y + allowance / Math.sin(v.halfAngle));
  return { v: straight(tip, startOf(neckline)), neckline, missing: first === undefined };
};

/** A V cut into the front's neckline and the insert that fills it (method 3.5; our geometry). */
export const insertV = (front: BodyEdges, choice: Choice): Altered<WithV> => {
  const { altered: v, rails } = drawV(front, choice);
  const { altered: allowance, rails: held } = allowanceOf(v, choice);
  const insert = insertOf(v);
  if (choice.method === "true") {
    const cut = withCentre({ ...front, v: straight(v.tip, v.top), neckline: v.rest });
    return { altered: { front: cut, insert, allowance }, rails: [...rails, ...held] };
  }
  const { missing, ...edges } = cutAwayFront(v, allowance);
  const missed: readonly Rail[] = missing ? [cutRail(allowance)] : [];
  return {
    altered: { front: withCentre({ ...front, ...edges }), insert, allowance },
    rails: [...rails, ...held, ...missed],
  };
};
