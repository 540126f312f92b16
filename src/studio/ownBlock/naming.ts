import { startOf } from "../../geometry/path.ts";
import { apart, type Point } from "../../geometry/point.ts";
import { EDGES_OF, likenessOf, type NamedOutline } from "../../trace/edges/proposeNames.ts";
import { type CornerRing, clockwise, turnedOver, withCorners } from "../../trace/edges/ring.ts";
import type { Naming, OwnPiece } from "./ownBlock.ts";

/** The outline as it is named: clockwise, turned over where it lay with its other side up. */
export const ringOf = (runs: CornerRing, isTurnedOver: boolean): CornerRing =>
  isTurnedOver ? turnedOver(clockwise(runs)) : clockwise(runs);

/** The edges that a piece has, in order round it. */
export const edgesOf = (piece: OwnPiece, isWhole: boolean): readonly string[] => {
  if (piece === "sleeve") return EDGES_OF.sleeve;
  return isWhole ? EDGES_OF.whole : EDGES_OF.half;
};

const nearestCorner = (ring: CornerRing, to: Point): number => {
  let best = 0;
  for (const [i, run] of ring.entries()) {
    if (apart(startOf(run), to) < apart(startOf(ring[best] ?? run), to)) best = i;
  }
  return best;
};

/** A proposal as the corners that it chose. */
export const namingOf = (
  runs: CornerRing,
  { isWhole, isTurnedOver, ring }: Pick<NamedOutline, "isWhole" | "isTurnedOver" | "ring">,
): Naming => {
  const whole = ringOf(runs, isTurnedOver);
  return { isWhole, isTurnedOver, corners: ring.map((run) => nearestCorner(whole, startOf(run))) };
};

/** Whether corners stand in order round the ring, none twice. */
export const inOrder = (corners: readonly number[], count: number): boolean => {
  const [first = 0] = corners;
  const round = corners.map((at) => (at - first + count) % count);
  return round.every((at, i) => i === 0 || at > (round[i - 1] ?? 0));
};

/** The outline with its edges as named; null while its corners are not in order. */
export const namedOf = (
  piece: OwnPiece,
  runs: CornerRing,
  { isWhole, isTurnedOver, corners }: Naming,
): NamedOutline | null => {
  const whole = ringOf(runs, isTurnedOver);
  const count = edgesOf(piece, isWhole).length;
  if (corners.length !== count || !inOrder(corners, whole.length)) return null;
  const named = { piece, isWhole, isTurnedOver, ring: withCorners(whole, corners) };
  return { ...named, score: likenessOf(named) };
};
