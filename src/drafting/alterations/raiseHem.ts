import { crossingsOf } from "../../geometry/crossings.ts";
import { asCubic } from "../../geometry/curve.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, mapPath, pathOf, startOf, straight } from "../../geometry/path.ts";
import { type Point, point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { take } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { ALTERATION } from "../data/alterationLimits.ts";
import type { Block, BodyEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";
import { type Altered, withCentre } from "./altered.ts";

/** How high the hem is raised, and whether the sides were moved and stand vertical. */
export type HemChange = { readonly by: Mm; readonly sidesMoved: boolean };

/** The hem brought to a new side end: its shape kept, square to the fold as before (method 3.3). */
const joinedHem = (hem: Path, end: Point, by: Mm): Path => {
  const old = startOf(hem);
  const lift = end.y - (old.y - by);
  return mapPath(hem, ({ x, y }) => ({ x: (x * end.x) / old.x, y: y - by + (lift * x) / old.x }));
};

const underarmOf = (body: BodyEdges): Point => endOf(body.raglan);

/** The side kept as drawn, up to its last crossing with the new hem level. */
const keptSide = (side: Path, level: Mm): Path => {
  const crossings = crossingsOf(side, "y", level);
  const last = crossings[crossings.length - 1];
  return last === undefined ? side : take(side, last);
};

const raiseBody = (body: BodyEdges, { by, sidesMoved }: HemChange): BodyEdges => {
  if (!sidesMoved && by === 0) return body;
  const level = endOf(body.side).y - by;
  const underarm = underarmOf(body);
  const side = sidesMoved
    ? straight(underarm, point(underarm.x, level))
    : keptSide(body.side, level);
  return withCentre({ ...body, side, hem: joinedHem(body.hem, endOf(side), by) });
};

/** A half whose side is drawn to `length`: the outer third of its hem moves with it (method 3.3). */
const sideDrawnTo = (body: BodyEdges, length: Mm): BodyEdges => {
  const end = endOf(body.side);
  const change = length - lengthOf(body.side);
  const hem = mapPath(pathOf(body.hem.map(asCubic)), ({ x, y }) => ({
    x,
    y: y + change * Math.max(0, ((3 * x) / end.x - 1) / 2),
  }));
  const side = straight(startOf(body.side), point(end.x, end.y + change));
  return withCentre({ ...body, side, hem });
};

/** Vertical sides of unlike length, as own blocks give them, both drawn to their mean. */
const sidesEvened = (block: Block): Block => {
  const [front, back] = [lengthOf(block.front.side), lengthOf(block.back.side)];
  if (Math.abs(front - back) <= ALTERATION.sidesApart) return block;
  const mean = (front + back) / 2;
  return {
    ...block,
    front: sideDrawnTo(block.front, mean),
    back: sideDrawnTo(block.back, mean),
  };
};

/** The hem raised, and joined to the sides where they were moved (method 3.3). Lengths in mm. */
export const raiseHem = (block: Block, change: HemChange): Altered<Block> => {
  const rooms = [block.front, block.back].map((half) => endOf(half.side).y - underarmOf(half).y);
  const by = Math.min(change.by, Math.max(0, Math.min(...rooms) - ALTERATION.sideLeft));
  const held = { ...change, by };
  const raised = {
    ...block,
    front: raiseBody(block.front, held),
    back: raiseBody(block.back, held),
  };
  return {
    altered: change.sidesMoved ? sidesEvened(raised) : raised,
    rails: by < change.by ? [raiseRail(change.by, by)] : [],
  };
};

const raiseRail = (wanted: Mm, used: Mm): Rail => ({
  id: "rail-raise-hem",
  wanted,
  used,
  unit: "mm",
  stops: false,
  message: `The hem cannot be raised by ${asMm(wanted)}; the side leaves room for ${asMm(used)}. Raise it by less, or draft the block longer.`,
});
