import { endOf, endTangent, pathOf, startOf, startTangent } from "../../geometry/path.ts";
import { ang, dir, type Point, stepped } from "../../geometry/point.ts";
import { line, type Path } from "../../geometry/segment.ts";
import { type Degrees, degrees, type Mm, type Radians, radians } from "../../geometry/units.ts";
import type { Choices } from "../choices.ts";
import { ALTERATION } from "../data/alterationLimits.ts";
import type { Block, BodyEdges } from "../piece.ts";

/** How far off level a raglan reaches the underarm, down positive, and as far as it is followed. */
const followed = (angle: Radians): Radians => {
  const most = radians(ALTERATION.steepest);
  return Math.min(most, Math.max(-most, angle));
};

const raglanEnd = (body: BodyEdges): Radians => ang(endTangent(body.raglan));

/** A straight put on at the end of a path. `by` 0 adds nothing. */
const longer = (path: Path, towards: Point, by: Mm): Path => {
  if (by === 0) return path;
  const end = endOf(path);
  return pathOf([...path, line(end, stepped(end, towards, by))]);
};

/** A straight put on before the start of a path. */
const longerBefore = (path: Path, by: Mm): Path => {
  if (by === 0) return path;
  const start = startOf(path);
  return pathOf([line(stepped(start, startTangent(path), -by), start), ...path]);
};

/**
 * The underarm point of front and back moved `by` mm outward along the raglan's own end; the
 * sleeve's raglans grow by as much, so each stays as long as what it is sewn to (method 3.2). The
 * sides are made vertical by the hem, the sleeve's underarm straight by the sleeve's end.
 */
export const moveSideSeams = (
  block: Block,
  { by }: Choices["alterations"]["moveSideSeams"],
): Block => {
  const front = followed(raglanEnd(block.front));
  const back = followed(raglanEnd(block.back));
  const [addFront, addBack] = [by / Math.cos(front), by / Math.cos(back)];
  const { sleeve } = block;
  return {
    front: { ...block.front, raglan: longer(block.front.raglan, dir(front), addFront) },
    back: { ...block.back, raglan: longer(block.back.raglan, dir(back), addBack) },
    sleeve: {
      ...sleeve,
      raglanFront: longer(sleeve.raglanFront, endTangent(sleeve.raglanFront), addFront),
      raglanBack: longerBefore(sleeve.raglanBack, addBack),
    },
  };
};

/** The larger angle off level in which the two raglans reach the underarm. */
export const raglanSlope = ({ front, back }: Block): Degrees =>
  degrees(Math.max(Math.abs(raglanEnd(front)), Math.abs(raglanEnd(back))));
