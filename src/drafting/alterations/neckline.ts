import { lengthOf } from "../../geometry/length.ts";
import { endOf, endTangent, mapPath, startOf, startTangent } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { splitAt } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { cornerOf, drawNeckEdge } from "../block/neckEdge.ts";
import type { Choices } from "../choices.ts";
import { ALTERATION } from "../data/alterationLimits.ts";
import type { Block, BodyEdges, SleeveEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";
import { type Altered, withCentre } from "./altered.ts";

/** A path without its first `length` mm. */
const without = (path: Path, length: Mm): Path => (length > 0 ? splitAt(path, length)[1] : path);
/** A path without its last `length` mm. */
const shortened = (path: Path, length: Mm): Path =>
  length > 0 ? splitAt(path, lengthOf(path) - length)[0] : path;

/** A neckline lowered at the fold and drawn to a new corner; square to the fold as before. */
const redrawn = (neckline: Path, corner: Point, low: Mm): Path => {
  const fold = startOf(neckline).y;
  const old = endOf(neckline);
  const lowered = fold + low;
  if (Math.abs(old.y - fold) < ALTERATION.level) {
    const rise = corner.y - old.y - low;
    return mapPath(neckline, ({ x, y }) => ({
      x: (x * corner.x) / old.x,
      y: y + low + (rise * x) / old.x,
    }));
  }
  const scale = (corner.y - lowered) / (old.y - fold);
  return mapPath(neckline, ({ x, y }) => ({
    x: (x * corner.x) / old.x,
    y: lowered + (y - fold) * scale,
  }));
};

const openBody = (body: BodyEdges, widen: Mm, low: Mm): BodyEdges => {
  const raglan = without(body.raglan, widen);
  return withCentre({ ...body, neckline: redrawn(body.neckline, startOf(raglan), low), raglan });
};

/** The sleeve with its raglans cut and its neck edge drawn anew to meet the body's (method 2.6). */
const openSleeve = (sleeve: SleeveEdges, widen: Mm, body: Omit<Block, "sleeve">): SleeveEdges => {
  const raglanFront = without(sleeve.raglanFront, widen);
  const raglanBack = shortened(sleeve.raglanBack, widen);
  const edge = drawNeckEdge({
    back: endOf(raglanBack),
    front: startOf(raglanFront),
    backRaglan: endTangent(raglanBack),
    frontRaglan: startTangent(raglanFront),
    backCorner: cornerOf(body.back.neckline, body.back.raglan),
    frontCorner: cornerOf(body.front.neckline, body.front.raglan),
  });
  return { ...sleeve, neckline: [edge], raglanFront, raglanBack };
};

/**
 * The neckline lowered and widened (method 3.1). The same length comes off the neck end of all four
 * raglan edges, so what is sewn together stays equal. Lengths in mm.
 */
export const openNeckline = (
  block: Block,
  choice: Choices["alterations"]["neckline"],
): Altered<Block> => {
  const raglans = [
    block.front.raglan,
    block.back.raglan,
    block.sleeve.raglanFront,
    block.sleeve.raglanBack,
  ];
  const most = ALTERATION.widenMost * Math.min(...raglans.map(lengthOf));
  const widen = Math.min(choice.widen, most);
  const front = openBody(block.front, widen, choice.lowerFront);
  const back = openBody(block.back, widen, choice.lowerBack);
  return {
    altered: { front, back, sleeve: openSleeve(block.sleeve, widen, { front, back }) },
    rails: widen < choice.widen ? [widenRail(choice.widen, widen)] : [],
  };
};

const widenRail = (wanted: Mm, used: Mm): Rail => ({
  id: "rail-widen",
  wanted,
  used,
  unit: "mm",
  stops: false,
  message: `The neckline cannot be widened by ${asMm(wanted)}; the shortest raglan seam leaves room for ${asMm(used)}. Widen it by less.`,
});
