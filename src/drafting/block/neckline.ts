import { lengthOf } from "../../geometry/length.ts";
import { endOf } from "../../geometry/path.ts";
import { type Point, point, stepped } from "../../geometry/point.ts";
import { cubic, type Path } from "../../geometry/segment.ts";
import { splitAt } from "../../geometry/split.ts";
import { type Mm, radians } from "../../geometry/units.ts";
import { BLOCK } from "../data/blockConstants.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";

/** The two necklines up to the raglan corners, and what the sleeve needs of them. */
export type Necklines = {
  readonly front: Path;
  readonly back: Path;
  readonly frontCorner: Point;
  readonly backCorner: Point;
  /** How far the neck point was moved out along the shoulder from the neck base, across. */
  readonly widened: Mm;
  readonly rails: readonly Rail[];
};

/** From the fold, square to it, to the neck point, square to the shoulder (method 2.2, step 5). */
const drawNeckline = (
  depth: Mm,
  neckPoint: Point,
  handles: { readonly first: number; readonly second: number },
): Path => {
  const slope = radians(BLOCK.slope);
  const down = point(-Math.sin(slope), Math.cos(slope));
  const below = depth - neckPoint.y;
  return [
    cubic(
      point(0, depth),
      point(handles.first * neckPoint.x, depth),
      stepped(neckPoint, down, handles.second * below),
      neckPoint,
    ),
  ];
};

const upToCorner = (whole: Path, beyond: Mm): Path => splitAt(whole, lengthOf(whole) - beyond)[0];

/** Both necklines of the block, from the girth of the neck base (method 2.2; 16 rules of thumb from
 * memory, the handles our own). `quarter` is the quarter of the finished chest, in mm. */
export const drawNecklines = (neckBase: Mm, quarter: Mm): Necklines => {
  const base = neckBase / BLOCK.neckDiv;
  const wanted = base + BLOCK.neckOut;
  const half = Math.min(wanted, BLOCK.neckWidthMost * quarter);
  const rise = neckBase / BLOCK.riseDiv;
  const neckPoint = point(half, -rise + (half - base) * Math.tan(radians(BLOCK.slope)));
  const depth = -rise + base + BLOCK.frontOut + BLOCK.neckOut;
  const wholeFront = drawNeckline(depth, neckPoint, { first: BLOCK.nf1, second: BLOCK.nf2 });
  const wholeBack = drawNeckline(BLOCK.backDrop, neckPoint, {
    first: BLOCK.nb1,
    second: BLOCK.nb2,
  });
  const front = upToCorner(wholeFront, BLOCK.cornerFront * neckBase);
  const back = upToCorner(wholeBack, BLOCK.cornerBack * neckBase);
  return {
    front,
    back,
    frontCorner: endOf(front),
    backCorner: endOf(back),
    widened: half - base,
    rails: half < wanted ? [neckWidthRail(wanted, half)] : [],
  };
};

const neckWidthRail = (wanted: Mm, used: Mm): Rail => ({
  id: "rail-neck-width",
  wanted,
  used,
  unit: "mm",
  stops: false,
  message: `The neckline would reach ${asMm(wanted)} to each side; the chest leaves room for ${asMm(used)}. Measure neck base and chest again, or give the chest more ease.`,
});
