import { crossingNearest, meeting, type PlaceOn } from "../geometry/intersect.ts";
import { lengthOf } from "../geometry/length.ts";
import { endOf, endTangent, startOf, startTangent } from "../geometry/path.ts";
import { apart, dot, minus, out, type Point, stepped, times, turn } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import { placeAt } from "../geometry/split.ts";
import { MITRE_LIMIT, RUNS_ON } from "../geometry/tolerance.ts";
import { type Degrees, type Mm, type Radians, radians } from "../geometry/units.ts";
import type { Side } from "./allowances.ts";

/** Where a corner ends one side's offset and begins the next's (null: its own end), and what lies
 * between. Places are on the offsets as they were before any corner was shaped. */
export type Joint = {
  readonly to: PlaceOn | null;
  readonly from: PlaceOn | null;
  readonly between: readonly Point[];
};

/** What a corner is shaped from: the two sides, their offsets, and the turn at the corner. */
type Corner = {
  readonly at: Point;
  readonly before: Path;
  readonly after: Path;
  readonly t1: Point;
  readonly t2: Point;
  readonly a1: Mm;
  readonly a2: Mm;
  readonly psi: Radians;
};

/** An end is mirrored where the corner's turn is neither too flat nor too sharp (method 4). */
const TRUE_FROM: Degrees = 20;
const TRUE_TO: Degrees = 160;

const joint = (between: readonly Point[]): Joint => ({ to: null, from: null, between });

/** A mitre; cut off where it would be a spike, a step where the corner is nearly straight. */
const mitre = (c: Corner): Joint => {
  const end = endOf(c.before);
  const start = startOf(c.after);
  const x = meeting(end, c.t1, start, c.t2);
  if (!x || dot(minus(x, end), c.t1) < 0 || dot(minus(start, x), c.t2) < 0) return joint([]);
  const most = Math.max(c.a1, c.a2);
  if (apart(x, c.at) <= MITRE_LIMIT * most) return joint([x]);
  return joint([stepped(end, c.t1, most), stepped(start, c.t2, -most)]);
};

/** A hollow corner: both offsets end where they cross, or are joined straight. */
const hollow = (c: Corner): Joint => {
  const found = crossingNearest(c.before, c.after, c.at);
  if (!found) return joint([]);
  return { to: found.on, from: found.other, between: [] };
};

/**
 * The end of a seam's allowance as the mirror image, over the seam line, of the crossing edge's cut
 * line, so that it lies flat when pressed open (method 4, "True"; formulas ours). Null where the
 * corner is too flat or too sharp for it.
 */
const trueTo = (c: Corner, seamFollows: boolean): Joint | null => {
  const { psi, at, a1, a2 } = c;
  if (psi < radians(TRUE_FROM) || psi > radians(TRUE_TO)) return null;
  const aSeam = seamFollows ? a2 : a1;
  const aCross = seamFollows ? a1 : a2;
  const crossing = seamFollows ? c.before : c.after;
  const back = aCross / Math.tan(psi);
  const whole = lengthOf(crossing);
  if (back > whole / 2) return null;
  const away = seamFollows ? c.t2 : times(c.t1, -1);
  const outward = out(seamFollows ? c.t2 : c.t1);
  const most = MITRE_LIMIT * Math.max(a1, a2);
  const reach = aCross / Math.sin(psi);
  const onward = Math.min(0, Math.max(-most, -(reach + aSeam / Math.tan(psi))));
  const x = stepped(stepped(at, outward, aSeam), away, onward);
  const m = stepped(at, away, -Math.min(reach, most));
  const between = back > 0 ? [x] : seamFollows ? [m, x] : [x, m];
  if (back <= 0) return joint(between);
  return seamFollows
    ? { to: placeAt(crossing, whole - back), from: null, between }
    : { to: null, from: placeAt(crossing, back), between };
};

/** The corner between two sides, shaped as its style says (method 4). */
export const shapeCorner = (one: Side, next: Side, before: Path, after: Path): Joint => {
  const t1 = endTangent(one.path);
  const t2 = startTangent(next.path);
  const psi = turn(t1, t2);
  const corner: Corner = {
    at: endOf(one.path),
    before,
    after,
    t1,
    t2,
    a1: one.allowance,
    a2: next.allowance,
    psi,
  };
  if (psi < -radians(RUNS_ON)) return hollow(corner);
  if (psi <= radians(RUNS_ON) && one.allowance === next.allowance) return joint([]);
  if (one.corner === "mitre") return mitre(corner);
  return trueTo(corner, one.corner === "seam-follows") ?? mitre(corner);
};
