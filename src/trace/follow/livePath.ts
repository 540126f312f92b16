import { asMm } from "../../drafting/words.ts";
import { apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { cellOf, placeOf, type TablePicture } from "../photo/rectify.ts";
import { faulty, found, type Told } from "../told.ts";
import { cheapestWay } from "./cheapest.ts";
import { type CellBox, type Strengths, strengthAt, strengthsIn } from "./coarse.ts";
import type { Followed } from "./kind.ts";
import { refined } from "./refine.ts";

/** The way is looked for this far round the straight line between two clicks, or a third of it. */
const ROOM: Mm = 20;
const ROOM_SHARE = 1 / 3;
/** Cells of the search, about. */
const CELL: Mm = 0.5;
/** A cell without any line costs this many times one on the line. Ours. */
const OFF_LINE = 40;
/** The rough way lies within this of the line. */
const REACH: Mm = 2.5;

const boxRound = (picture: TablePicture, from: Point, to: Point): CellBox => {
  const room = Math.max(ROOM, apart(from, to) * ROOM_SHARE) / picture.window.step;
  const [a, b] = [cellOf(picture.window, from), cellOf(picture.window, to)];
  const held = (v: number, most: number): number => Math.round(Math.min(most, Math.max(0, v)));
  return {
    left: held(Math.min(a.x, b.x) - room, picture.width),
    right: held(Math.max(a.x, b.x) + room, picture.width),
    top: held(Math.min(a.y, b.y) - room, picture.height),
    bottom: held(Math.max(a.y, b.y) + room, picture.height),
  };
};

/** Costs from strengths: 1 on the strongest line, OFF_LINE where there is none. */
const costsOf = (strengths: Strengths): Uint16Array => {
  const full = Math.max(10, strengthAt(strengths, 0.985));
  const cost = new Uint16Array(strengths.strength.length);
  for (let k = 0; k < cost.length; k++) {
    const share = Math.min(1, (strengths.strength[k] ?? 0) / full);
    cost[k] = 1 + Math.round((OFF_LINE - 1) * (1 - share) * (1 - share));
  }
  return cost;
};

const indexIn = ({ window }: Strengths, p: Point): number => {
  const { x, y } = cellOf(window, p);
  const held = (v: number, most: number): number => Math.min(most - 1, Math.max(0, Math.floor(v)));
  return held(y, window.height) * window.width + held(x, window.width);
};

/**
 * The way along the line or edge between two clicks, mm, one point a millimetre: the cheapest way
 * over the picture's strengths, then moved onto the line itself. Told where the clicks lie outside
 * the picture or no line is seen between them.
 */
export const livePath = (
  picture: TablePicture,
  what: Followed,
  from: Point,
  to: Point,
): Told<readonly Point[]> => {
  const box = boxRound(picture, from, to);
  if (box.right - box.left < 4 || box.bottom - box.top < 4) {
    return faulty(
      "tracing",
      asMm(apart(from, to)),
      "The two clicks lie outside the picture, so there is no line to follow.",
      "Click on the line within the picture.",
    );
  }
  const strengths = strengthsIn(picture, what, box, CELL);
  const { window } = strengths;
  const cells = cheapestWay(
    { cost: costsOf(strengths), width: window.width, height: window.height },
    indexIn(strengths, from),
    indexIn(strengths, to),
  );
  const rough = cells.map((cell) =>
    placeOf(window, {
      x: (cell % window.width) + 0.5,
      y: Math.floor(cell / window.width) + 0.5,
    }),
  );
  const line = refined(picture, what, [from, ...rough.slice(1, -1), to], REACH);
  if (line.length >= 4) return found(line);
  return faulty(
    "tracing",
    `${line.length} points`,
    `Between the two clicks a ${what} is seen at ${line.length} places only, ${asMm(apart(from, to))} apart.`,
    "Click closer together, or draw this part by hand.",
  );
};
