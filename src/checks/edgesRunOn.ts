import type { Garment } from "../bands/garment.ts";
import { cornerOf } from "../drafting/block/neckEdge.ts";
import type { Measured } from "../drafting/finishedPieces.ts";
import { asDegrees } from "../drafting/words.ts";
import { type Degrees, degrees } from "../geometry/units.ts";
import type { Check } from "./check.ts";
import { LIMITS } from "./data/limits.ts";
import { atMost, checkOf, verdictOf, type Words } from "./verdict.ts";

const corner = (before: Measured, after: Measured): Degrees =>
  degrees(cornerOf(before.path, after.path));

/** How far two corners that are sewn together turn off straight. */
const offStraight = (one: Degrees, other: Degrees): Degrees => Math.abs(one + other - 180);

const turnCheck = (
  id: string,
  value: Degrees,
  limit: { readonly sound: Degrees; readonly attend: Degrees },
  words: Words,
): Check =>
  checkOf(
    {
      id,
      verdict: verdictOf(atMost(value, limit.sound), atMost(value, limit.attend)),
      value,
      limit: limit.sound,
      unit: "deg",
    },
    {
      measured: `${words.measured} ${asDegrees(value)} off straight; the limit is ${asDegrees(limit.sound)}.`,
      change: words.change,
    },
  );

const sideSlope = (slope: Degrees): Check =>
  checkOf(
    {
      id: "side-seam-move",
      verdict: verdictOf(
        atMost(slope, LIMITS.sideSlope.sound),
        atMost(slope, LIMITS.sideSlope.attend),
      ),
      value: slope,
      limit: LIMITS.sideSlope.sound,
      unit: "deg",
    },
    {
      measured: `The raglan reaches the underarm ${asDegrees(slope)} off level; the limit is ${asDegrees(LIMITS.sideSlope.sound)}.`,
      change: "Draw the block's raglan with a flatter end, or keep the shaped side seams.",
    },
  );

/** Edges run on over the seams that cross them: neckline, underarm, hem, wrist (method 6). */
export const edgesRunOn = (garment: Garment): readonly Check[] => {
  const { front, back, sleeve } = garment.finished;
  const { overFront, overBack } = garment.ring;
  const neckline = degrees(Math.max(Math.abs(overFront), Math.abs(overBack)));
  const underarm = Math.max(
    offStraight(corner(front.raglan, front.side), corner(back.raglan, back.side)),
    offStraight(
      corner(sleeve.raglanFront, sleeve.underarmFront),
      corner(sleeve.underarmBack, sleeve.raglanBack),
    ),
  );
  const hem = offStraight(corner(front.side, front.hem), corner(back.side, back.hem));
  const wrist = offStraight(
    corner(sleeve.underarmFront, sleeve.wrist),
    corner(sleeve.wrist, sleeve.underarmBack),
  );
  return [
    turnCheck("neckline-turn", neckline, LIMITS.turn, {
      measured: "Over a raglan seam the neckline runs on",
      change: "Redraw the sleeve's neck edge, or turn on the neckline alteration, which does it.",
    }),
    turnCheck("underarm-turn", underarm, LIMITS.turn, {
      measured: "Over the side and underarm seam the raglan line runs on",
      change: "Move the side seams by less, or keep the shaped side seams.",
    }),
    turnCheck("hem-turn", hem, LIMITS.turn, {
      measured: "Over the side seam the hem runs on",
      change: "Draw the hem square to the side seam.",
    }),
    turnCheck("wrist-turn", wrist, LIMITS.wristTurn, {
      measured: "Over the underarm seam the wrist edge runs on",
      change: "Make the wrist wider, or the sleeve narrower.",
    }),
    ...(garment.sideSlope === null ? [] : [sideSlope(garment.sideSlope)]),
  ];
};
