import { lengthOf } from "../../geometry/length.ts";
import { boundsOf } from "../../geometry/outline.ts";
import { endOf, joined, lastOf, pathOf, reversed, startOf, straight } from "../../geometry/path.ts";
import { apart } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { EDGE_GAP } from "../../geometry/tolerance.ts";
import type { Mm } from "../../geometry/units.ts";
import type { ReadLine } from "../files/drawing.ts";
import { chainLines, drawnOnce } from "../files/joinPages.ts";
import {
  type Assigned,
  assignByName,
  BLOCK_PIECES,
  type BlockPiece,
  plain,
} from "./assignEdges.ts";
import { atCorners, cornerBetween } from "./atCorners.ts";
import { proposeNames } from "./proposeNames.ts";
import type { CornerRing } from "./ring.ts";

/** Lines of a drawing put end to end: what one takes in hand and says what it is. */
export type Shape = {
  readonly path: Path;
  readonly length: Mm;
  /** Between its ends; below 0.5 mm it is closed. */
  readonly gap: Mm;
  /** The piece whose group or layer it stands in, where it is its only outline. */
  readonly named: BlockPiece | null;
};

/** A drawing sorted: edges by their names, what is left as shapes, and which piece each may be. */
export type SortedDrawing = {
  readonly edges: Assigned;
  /** The longest first. */
  readonly shapes: readonly Shape[];
  /** By piece, the place of a shape. */
  readonly likely: ReadonlyMap<BlockPiece, number>;
};

/** Shorter lines are letters, notches and arrows. Ours. */
const SHORTEST: Mm = 40;
/** A straight line shorter than this, across the end of another, is a notch. Ours. */
const TICK: Mm = 12;
/** More shapes are no choice any more. Ours. */
const MOST_SHAPES = 60;
/** A piece of a block is no smaller than this, either way. Ours. */
const SMALLEST: Mm = 120;
/** So many shapes are looked at for what they may be, and none with more corners than this. */
const MOST_TRIED = 16;
const MOST_CORNERS = 9;
/** A shape less like a piece than this is not taken for it. */
const LEAST_LIKE = 0.05;
/** A line with one of these names is the sewing line of its group. */
const SEWN = new Set(["sew", "seam", "sewline", "seamline"]);

export const isClosedShape = ({ gap }: Shape): boolean => gap <= EDGE_GAP;

const shapeOf = (path: Path, named: BlockPiece | null): Shape => ({
  path,
  length: lengthOf(path),
  gap: apart(endOf(path), startOf(path)),
  named,
});

/** The one outline of a piece's group: its sewing line where it names one. */
const outlineOf = (lines: readonly ReadLine[], piece: BlockPiece): readonly ReadLine[] => {
  const mine = lines.filter(({ names }) => names.some((name) => plain(name) === piece));
  const sewn = mine.filter(({ names }) => names.some((name) => SEWN.has(plain(name))));
  const taken = sewn.length > 0 ? sewn : mine;
  return chainLines(taken.map(({ path }) => path)).length === 1 ? taken : [];
};

/** An open line without the notch or tick that stands at its end, across it. */
const withoutTick = (path: Path): Path => {
  const tick = lastOf(path);
  const kept = path.slice(0, -1);
  const before = kept.at(-1);
  const isTick = before !== undefined && tick.kind === "line" && lengthOf([tick]) < TICK;
  return isTick && cornerBetween(before, tick) ? pathOf(kept) : path;
};

const withoutTicks = (path: Path): Path => {
  if (apart(startOf(path), endOf(path)) <= EDGE_GAP) return path;
  return reversed(withoutTick(reversed(withoutTick(path))));
};

const chained = (lines: readonly ReadLine[]): readonly Path[] => {
  const closed = lines.filter(({ isClosed }) => isClosed);
  const open = lines
    .filter(({ isClosed }) => !isClosed)
    .map(({ path }) => ({ path, length: lengthOf(path) }))
    .sort((a, b) => b.length - a.length);
  return [
    ...closed.map(({ path }) => path),
    ...chainLines(open.map(({ path }) => path)).map(withoutTicks),
  ];
};

/** A shape as runs from corner to corner; an open one closed by a straight line, as a fold is. */
export const runsOfShape = (shape: Shape): CornerRing => {
  const { path } = shape;
  return atCorners(
    isClosedShape(shape) ? path : joined(path, straight(endOf(path), startOf(path))),
  );
};

const isLarge = ({ path }: Shape): boolean => {
  const { left, top, right, bottom } = boundsOf(path);
  return right - left >= SMALLEST && bottom - top >= SMALLEST;
};

/** The widest turning that a cut line may lie outside its sewing line. Ours. */
const WIDEST_TURNING: Mm = 45;

/** Whether one shape is the other's cut line: it lies round it, nowhere further than a turning. */
const isRound = (outer: Shape, inner: Shape): boolean => {
  const [o, i] = [boundsOf(outer.path), boundsOf(inner.path)];
  const insets = [i.left - o.left, i.top - o.top, o.right - i.right, o.bottom - i.bottom];
  const isInside = insets.every((inset) => inset >= -EDGE_GAP && inset <= WIDEST_TURNING);
  return isInside && insets.some((inset) => inset > 1);
};

type Likeness = { readonly at: number; readonly piece: BlockPiece; readonly score: number };

const likelyIn = (
  shapes: readonly Shape[],
  drawn: ReadonlySet<BlockPiece>,
): ReadonlyMap<BlockPiece, number> => {
  const likely = new Map<BlockPiece, number>();
  for (const [at, { named }] of shapes.entries()) if (named) likely.set(named, at);
  const tried = [...shapes.entries()].filter(([, s]) => !s.named && isLarge(s));
  const found: Likeness[] = tried
    .map(([at, shape]) => ({ at, runs: runsOfShape(shape) }))
    .filter(({ runs }) => runs.length <= MOST_CORNERS)
    .slice(0, MOST_TRIED)
    .flatMap(({ at, runs }) => proposeNames(runs).map(({ piece, score }) => ({ at, piece, score })))
    .filter(({ score }) => score >= LEAST_LIKE);
  // Where both lines of a piece are drawn, the inner one is sewn.
  const isCutLine = ({ at, piece }: Likeness): boolean =>
    found.some((other) => {
      const [outer, inner] = [shapes[at], shapes[other.at]];
      return other.piece === piece && outer && inner && at !== other.at && isRound(outer, inner);
    });
  const sewn = found.filter((one) => !isCutLine(one)).sort((a, b) => b.score - a.score);
  const taken = new Set(likely.values());
  for (const { at, piece } of sewn) {
    if (taken.has(at) || likely.has(piece) || drawn.has(piece)) continue;
    likely.set(piece, at);
    taken.add(at);
  }
  return likely;
};

/** The pieces of which some edge is named. */
const drawnByEdges = (edges: Assigned): ReadonlySet<BlockPiece> =>
  new Set(
    BLOCK_PIECES.filter((piece) => [...edges.keys()].some((key) => key.startsWith(`${piece}.`))),
  );

/**
 * The lines of a drawing sorted: edges by their names; whole outlines by the group or layer that
 * they stand in; what is left put end to end, with which piece each may be by its shape.
 */
export const sortDrawing = (lines: readonly ReadLine[]): SortedDrawing => {
  const { assigned, left } = assignByName(drawnOnce(lines));
  const drawn = drawnByEdges(assigned);
  const taken = new Set<ReadLine>();
  const named: Shape[] = [];
  for (const piece of BLOCK_PIECES.filter((p) => !drawn.has(p))) {
    const mine = outlineOf(left, piece);
    const [chain] = chainLines(mine.map(({ path }) => path));
    if (chain) named.push(shapeOf(chain, piece));
    for (const line of mine) taken.add(line);
  }
  const others = chained(left.filter((line) => !taken.has(line))).map((p) => shapeOf(p, null));
  const shapes = [...named, ...others.filter(({ length }) => length >= SHORTEST)]
    .sort((a, b) => b.length - a.length)
    .slice(0, MOST_SHAPES);
  return { edges: assigned, shapes, likely: likelyIn(shapes, drawn) };
};
