import { asMm } from "../../drafting/words.ts";
import { crossingsOf } from "../../geometry/crossings.ts";
import { endingAt, startingAt } from "../../geometry/curve.ts";
import { lengthOf } from "../../geometry/length.ts";
import {
  endOf,
  lastOf,
  mapPath,
  mirroredPath,
  pathOf,
  reversed,
  startOf,
} from "../../geometry/path.ts";
import { apart, type Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { pointAlong, splitAt } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { fitRun } from "../follow/fitRun.ts";
import { faulty, found, type Told } from "../told.ts";
import type { CornerRing } from "./ring.ts";

/** The open edges of a half piece, its fold on x = 0. */
export type HalfEdges = {
  readonly neckline: Path;
  readonly raglan: Path;
  readonly side: Path;
  readonly hem: Path;
};

/** A whole piece folded: the mean of both its halves, and how far they were apart. */
export type Folded = {
  readonly edges: HalfEdges;
  /** How far the two halves of each edge lay apart at most, mm. */
  readonly apart: { readonly [Edge in keyof HalfEdges]: Mm };
  /** How far the mean, drawn with few cubics, strays from itself. */
  readonly error: Mm;
};

/** Halves further apart than this belong to no whole piece. Ours. */
const MOST_APART: Mm = 15;
/** Halves nearer than this are one: the right half is taken as it is. */
const SAME: Mm = 0.05;
/** Places along an edge at which its two halves are compared. */
const PLACES = 64;

const middle = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });

/** Pairs of corners that lie on each other once the piece is folded. */
const pairsIn = (ring: CornerRing): readonly (readonly [Point, Point])[] => {
  const [neckline, right, side, hem, otherSide, otherRaglan] = ring.map(startOf);
  if (!neckline || !right || !side || !hem || !otherSide || !otherRaglan) return [];
  return [
    [neckline, right],
    [otherRaglan, side],
    [otherSide, hem],
  ];
};

/** The fold: through the middle of all pairs, square to the way between partners. */
const ontoAxis = (ring: CornerRing): ((p: Point) => Point) => {
  const pairs = pairsIn(ring);
  let [x, y, ax, ay] = [0, 0, 0, 0];
  for (const [left, right] of pairs) {
    const mid = middle(left, right);
    x += mid.x / pairs.length;
    y += mid.y / pairs.length;
    ax += right.x - left.x;
    ay += right.y - left.y;
  }
  const size = Math.hypot(ax, ay) || 1;
  const [c, s] = [ax / size, ay / size];
  return (p) => ({ x: c * (p.x - x) + s * (p.y - y), y: -s * (p.x - x) + c * (p.y - y) });
};

/** The part of an edge on each side of the fold, both as they run on the right side. */
const cutInTwo = (path: Path): readonly [Path, Path] | null => {
  const at = crossingsOf(path, "x", 0);
  const [only] = at;
  // Where two parts of the edge meet on the fold, both cross it at the same place.
  if (only === undefined || at.some((other) => other - only > SAME)) return null;
  const [first, second] = splitAt(path, only);
  return [first, second];
};

const meanOf = (
  right: Path,
  left: Path,
): { readonly path: Path; readonly apart: Mm; readonly error: Mm } => {
  const [one, other] = [lengthOf(right), lengthOf(left)];
  let far = 0;
  const points = Array.from({ length: PLACES + 1 }, (_, i) => {
    const a = pointAlong(right, (one * i) / PLACES);
    const b = pointAlong(left, (other * i) / PLACES);
    far = Math.max(far, apart(a, b));
    return middle(a, b);
  });
  if (far <= SAME) return { path: right, apart: far, error: 0 };
  const { path, error } = fitRun(points, 0.1);
  return { path, apart: far, error };
};

const notWhole = (why: string, value: string): Told<never> =>
  faulty(
    "piece",
    value,
    `The piece cannot be folded: ${why}.`,
    "Name its corners by hand, or trace one half only.",
  );

/** Both halves of each edge, as they run on the right of the fold. */
const halvesOf = (
  ring: CornerRing,
): Readonly<Record<keyof HalfEdges, readonly [Path, Path]>> | null => {
  const move = ontoAxis(ring);
  const [neckline, raglan, side, hem, otherSide, otherRaglan] = ring.map((run) =>
    mapPath(run, move),
  );
  if (!neckline || !raglan || !side || !hem || !otherSide || !otherRaglan) return null;
  const top = cutInTwo(neckline);
  const foot = cutInTwo(hem);
  if (!top || !foot) return null;
  const over = (path: Path): Path => reversed(mirroredPath(path));
  return {
    neckline: [top[1], over(top[0])],
    raglan: [raglan, over(otherRaglan)],
    side: [side, over(otherSide)],
    hem: [foot[0], over(foot[1])],
  };
};

/** Corners that were drawn apart are brought together at their middle. */
const chained = ({ neckline, raglan, side, hem }: HalfEdges): HalfEdges => {
  const at = (p: Path, start: Point, end: Point): Path => {
    const begun = pathOf([startingAt(p[0], start), ...p.slice(1)]);
    return pathOf([...begun.slice(0, -1), endingAt(lastOf(begun), end)]);
  };
  const corners = [
    middle(endOf(neckline), startOf(raglan)),
    middle(endOf(raglan), startOf(side)),
    middle(endOf(side), startOf(hem)),
  ] as const;
  const fold = (p: Point): Point => ({ x: 0, y: p.y });
  return {
    neckline: at(neckline, fold(startOf(neckline)), corners[0]),
    raglan: at(raglan, corners[0], corners[1]),
    side: at(side, corners[1], corners[2]),
    hem: at(hem, corners[2], fold(endOf(hem))),
  };
};

/**
 * A whole front or back folded on its own axis: every edge becomes the mean of its two halves, and
 * how far they lay apart is told (mm). Refused where the halves are no mirror images.
 */
export const foldWhole = (ring: CornerRing): Told<Folded> => {
  const halves = halvesOf(ring);
  if (!halves) return notWhole("its neckline or hem does not cross the middle once", "no fold");
  const means = {
    neckline: meanOf(...halves.neckline),
    raglan: meanOf(...halves.raglan),
    side: meanOf(...halves.side),
    hem: meanOf(...halves.hem),
  };
  const all = [means.neckline, means.raglan, means.side, means.hem];
  const far = Math.max(...all.map((mean) => mean.apart));
  if (far > MOST_APART) {
    return notWhole(
      `its two halves lie up to ${asMm(far)} apart, and ${asMm(MOST_APART)} is the most`,
      asMm(far),
    );
  }
  return found({
    edges: chained({
      neckline: means.neckline.path,
      raglan: means.raglan.path,
      side: means.side.path,
      hem: means.hem.path,
    }),
    apart: {
      neckline: means.neckline.apart,
      raglan: means.raglan.apart,
      side: means.side.apart,
      hem: means.hem.apart,
    },
    error: Math.max(...all.map(({ error }) => error)),
  });
};
