import { lengthOf } from "../../geometry/length.ts";
import { joined, startOf } from "../../geometry/path.ts";
import { apart, type Point } from "../../geometry/point.ts";
import { splitAt } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
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

/** A corner comes no nearer than this to the next. */
const CORNERS_APART: Mm = 1;

/** The outline with one of its corners moved along it (mm, on the way round); its lines stay. */
export const cornerMoved = (ring: CornerRing, at: number, by: Mm): CornerRing => {
  const [before, after] = [ring[(at - 1 + ring.length) % ring.length], ring[at]];
  if (!before || !after || before === after) return ring;
  const [one, other] = [lengthOf(before), lengthOf(after)];
  const place = Math.min(one + other - CORNERS_APART, Math.max(CORNERS_APART, one + by));
  const [first, second] = splitAt(joined(before, after), place);
  return ring.map((run) => (run === before ? first : run === after ? second : run));
};

/** The outline with one more corner, `along` mm after the start of a run. */
export const cornerAdded = (ring: CornerRing, at: number, along: Mm): CornerRing =>
  ring.flatMap((run, i) => (i === at ? splitAt(run, along) : [run]));

/** Whether corners stand in order round the ring, none twice. */
const inOrder = (corners: readonly number[], count: number): boolean => {
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
