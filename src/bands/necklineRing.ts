import { cornerOf } from "../drafting/block/neckEdge.ts";
import type { FinishedPieces, Measured } from "../drafting/finishedPieces.ts";
import { type Point, point } from "../geometry/point.ts";
import { splitAt } from "../geometry/split.ts";
import { turningOf } from "../geometry/turning.ts";
import type { Mm, Radians } from "../geometry/units.ts";
import type { MarkTo } from "./band.ts";

/** Across the fold the neckline runs level: the direction from which its turning is counted. */
const LEVEL: Point = point(1, 0);

/** A point of half the opening: the way from centre back, and the ring's turning on that way. */
export type Station = { readonly to: MarkTo; readonly way: Mm; readonly turning: Radians };

/** The opening of the neck as a ring (method 5.1). Lengths in mm, angles in radians. */
export type NecklineRing = {
  /** Once round. */
  readonly opening: Mm;
  /** Θ: how far the ring turns in all. */
  readonly turning: Radians;
  /** ν: how far the neckline turns over the front and the back raglan seam, off straight. */
  readonly overFront: Radians;
  readonly overBack: Radians;
  /** Five, from centre back to centre front, in the order of method 5.2. */
  readonly stations: readonly Station[];
};

/** How far the neckline turns over a raglan seam, off straight on. */
const overSeam = (body: Radians, sleeve: Radians): Radians => body + sleeve - Math.PI;

/** Turning of the first `length` mm of an edge; none of nothing. */
const turningOfFirst = (edge: Measured, length: Mm, from?: Point): Radians =>
  length > 0 ? turningOf(splitAt(edge.path, length)[0], from) : 0;

/** What the ring is made of: half the opening, piece by piece from centre back. */
type Parts = {
  readonly back: Measured;
  readonly sleeve: Measured;
  /** Before the V was cut. */
  readonly wholeFront: Measured;
  readonly half: Mm;
  readonly backTurn: Radians;
  readonly sleeveTurn: Radians;
  readonly overBack: Radians;
  readonly turning: Radians;
};

/** The ring's turning half way along, which may lie on the back, the sleeve or the front. */
const turningHalfWay = (p: Parts): Radians => {
  const way = p.half / 2;
  if (way <= p.back.length) return -turningOfFirst(p.back, way, LEVEL);
  const onSleeve = way - p.back.length;
  if (onSleeve <= p.sleeve.length) {
    return p.backTurn - p.overBack - turningOfFirst(p.sleeve, onSleeve);
  }
  const left = p.wholeFront.length - (onSleeve - p.sleeve.length);
  return p.turning / 2 + turningOfFirst(p.wholeFront, left, LEVEL);
};

/**
 * The ring of the neck opening on the finished lines (method 5.1; parallel curves after do Carmo,
 * from memory). `wholeFront` is the front neckline before the V.
 */
export const necklineRing = (pieces: FinishedPieces, wholeFront: Measured): NecklineRing => {
  const { front, back, sleeve, vInsert } = pieces;
  const half =
    (vInsert ? vInsert.top.length / 2 : 0) +
    front.neckline.length +
    sleeve.neckline.length +
    back.neckline.length;
  const backTurn = -turningOf(back.neckline.path, LEVEL);
  const sleeveTurn = -turningOf(sleeve.neckline.path);
  const overFront = overSeam(
    cornerOf(front.neckline.path, front.raglan.path),
    cornerOf(sleeve.neckline.path, sleeve.raglanFront.path),
  );
  const overBack = overSeam(
    cornerOf(back.neckline.path, back.raglan.path),
    cornerOf(sleeve.raglanBack.path, sleeve.neckline.path),
  );
  const frontTurn = -turningOf(wholeFront.path, LEVEL);
  const turning = 2 * (frontTurn + backTurn + sleeveTurn - overFront - overBack);
  const halfWay = turningHalfWay({
    back: back.neckline,
    sleeve: sleeve.neckline,
    wholeFront,
    half,
    backTurn,
    sleeveTurn,
    overBack,
    turning,
  });
  const [nB, nS] = [back.neckline.length, sleeve.neckline.length];
  const stations: readonly Station[] = [
    { to: "centre-back", way: 0, turning: 0 },
    { to: "raglan-back", way: nB, turning: backTurn - overBack / 2 },
    { to: "half-way", way: half / 2, turning: halfWay },
    {
      to: "raglan-front",
      way: nB + nS,
      turning: backTurn - overBack + sleeveTurn - overFront / 2,
    },
    { to: "centre-front", way: half, turning: turning / 2 },
  ];
  return { opening: 2 * half, turning, overFront, overBack, stations };
};
