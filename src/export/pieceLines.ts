import type { DrawnEdge, EdgeName, Notch, Piece, PieceName } from "../drafting/piece.ts";
import { parametersWhere } from "../geometry/crossings.ts";
import { pointAt } from "../geometry/curve.ts";
import { endTangent, pathOf, startOf, startTangent, straight } from "../geometry/path.ts";
import {
  apart,
  dot,
  minus,
  out,
  type Point,
  plus,
  stepped,
  times,
  unit,
} from "../geometry/point.ts";
import { line, type Path, type Segment } from "../geometry/segment.ts";
import { splitAt } from "../geometry/split.ts";
import type { Mm } from "../geometry/units.ts";
import type { LineKind } from "./data/lineStyles.ts";

/** A line of a drawing. Whoever writes the drawing gives it the width and dash of its kind. */
export type Stroke = {
  readonly kind: LineKind;
  readonly path: Path;
  /** Ends where it starts, and has a corner there as anywhere. */
  readonly closed: boolean;
};

/** A cut line that lies this near to x = 0 along its whole length is the fold. */
const ON_FOLD: Mm = 1e-4;
/** How far a notch looks for its cut line; wider turnings are not drawn across whole. */
const NOTCH_REACH: Mm = 60;
/** The length of a notch where no cut line lies outside it. */
const NOTCH_ALONE: Mm = 6;
const ARROW: Mm = 5;
const ARROW_HALF: Mm = 1.6;
/** A shorter grain gives no direction. */
const NO_ARROW: Mm = 1e-6;
/** How far inside the fold its bracket stands. */
const BRACKET_IN: Mm = 9;
/** How much of the fold's length is left free at either end of its bracket. */
const BRACKET_SHARE = 0.28;
const SHORT_OF_FOLD: Mm = 0.8;

const BANDS: readonly PieceName[] = ["neckband", "cuff", "hemBand"];
export const isBand = (piece: Piece): boolean => BANDS.includes(piece.name);

const isOnFold = (s: Segment): boolean =>
  Math.abs(s.start.x) < ON_FOLD && Math.abs(s.end.x) < ON_FOLD && s.kind === "line";

const stroke = (kind: LineKind, path: Path, closed = false): Stroke => ({ kind, path, closed });

/** The cut line; where the piece lies on the fold, its fold edge is told apart. */
const outline = ({ cutLine, onFold }: Piece): readonly Stroke[] => {
  const onIt = cutLine.map(isOnFold);
  // The fold may run over the place where the cut line begins and ends.
  const first = onIt.findIndex((on, i) => on && !onIt[(i || onIt.length) - 1]);
  if (onFold === null || first < 0) return [stroke("cut", cutLine, true)];
  const round = [...cutLine.slice(first), ...cutLine.slice(0, first)];
  const edge = round.findIndex((s) => !isOnFold(s));
  return [stroke("cut", pathOf(round.slice(edge))), stroke("fold", pathOf(round.slice(0, edge)))];
};

/** The edges that are sewn. The fold is no seam. */
export const seamEdges = ({ edges, onFold }: Piece): readonly DrawnEdge[] =>
  edges.filter(({ name }) => name !== onFold);

const sewn = (piece: Piece): Stroke =>
  stroke("sew", pathOf(seamEdges(piece).flatMap(({ path }) => path)), piece.onFold === null);

/** How far from `from` along `way` a closed line is first met, or null. */
const reachOf = (lines: Path, from: Point, way: Point): Mm | null => {
  const across = { x: -way.y, y: way.x };
  let nearest: Mm | null = null;
  for (const segment of lines) {
    for (const t of parametersWhere(segment, across, dot(across, from))) {
      const reach = dot(way, minus(pointAt(segment, t), from));
      if (reach > 0.01 && reach < NOTCH_REACH && (nearest === null || reach < nearest)) {
        nearest = reach;
      }
    }
  }
  return nearest;
};

/** Where a notch stands on its sew line, and the way that leads out of the piece there. */
export type NotchPlace = { readonly notch: Notch; readonly at: Point; readonly outward: Point };

const edgeOf = (edges: readonly DrawnEdge[], name: EdgeName): DrawnEdge | undefined =>
  edges.find((edge) => edge.name === name);

export const notchPlaces = (piece: Piece): readonly NotchPlace[] =>
  piece.notches.flatMap((notch) => {
    const edge = edgeOf(piece.edges, notch.edge);
    if (!edge) return [];
    const [before, after] = splitAt(edge.path, notch.at);
    const way = notch.at < edge.length ? startTangent(after) : endTangent(before);
    return [{ notch, at: startOf(after), outward: out(way) }];
  });

/** A short stroke across the turning, from the sew line to the cut line. */
const notchStroke = ({ cutLine }: Piece, { at, outward }: NotchPlace): Stroke => {
  const reach = reachOf(cutLine, at, outward) ?? NOTCH_ALONE;
  return stroke("notch", straight(at, stepped(at, outward, reach)));
};

/** An arrow head at `tip`, pointing along `way`, as one bent line. */
const head = (tip: Point, way: Point): Path => {
  const back = stepped(tip, way, -ARROW);
  const side = times(out(way), ARROW_HALF);
  const [left, right] = [plus(back, side), minus(back, side)];
  return [line(left, tip), line(tip, right)];
};

/** The grain: two heads, for the piece may lie either way round until the nap says otherwise. */
const grainArrow = ({ grain: { from, to } }: Piece): readonly Stroke[] => {
  if (apart(from, to) < NO_ARROW) return [];
  const way = unit(minus(to, from));
  return [
    stroke("grain", straight(from, to)),
    stroke("grain", head(to, way)),
    stroke("grain", head(from, times(way, -1))),
  ];
};

/** The upright of the bracket along the fold, from top to bottom; null where there is no fold. */
export const foldEnds = (piece: Piece): readonly [Point, Point] | null => {
  const fold = outline(piece).find(({ kind }) => kind === "fold");
  if (!fold) return null;
  const ys = fold.path.flatMap((s) => [s.start.y, s.end.y]);
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const short = (bottom - top) * BRACKET_SHARE;
  return [
    { x: BRACKET_IN, y: top + short },
    { x: BRACKET_IN, y: bottom - short },
  ];
};

/** A bracket whose two arrows point to the fold, in the middle of its length. */
const foldBracket = (piece: Piece): readonly Stroke[] => {
  const ends = foldEnds(piece);
  if (!ends) return [];
  const [top, bottom] = ends;
  const [a, b] = [
    { x: SHORT_OF_FOLD, y: top.y },
    { x: SHORT_OF_FOLD, y: bottom.y },
  ];
  return [
    stroke("bracket", [line(a, top), line(top, bottom), line(bottom, b)]),
    stroke("bracket", head(a, { x: -1, y: 0 })),
    stroke("bracket", head(b, { x: -1, y: 0 })),
  ];
};

/** A band is folded along the middle, from end to end of what is sewn. */
export const bandCrease = (piece: Piece): readonly Stroke[] => {
  const [top, bottom] = [edgeOf(piece.edges, "top"), edgeOf(piece.edges, "bottom")];
  if (!isBand(piece) || !top || !bottom) return [];
  const [a, b] = [top.path[0].start, top.path[top.path.length - 1]?.end ?? top.path[0].end];
  const y = (a.y + bottom.path[0].start.y) / 2;
  return [stroke("crease", straight({ x: a.x, y }, { x: b.x, y }))];
};

/** Every line of a piece, in the piece's own frame. */
export const pieceLines = (piece: Piece): readonly Stroke[] => [
  ...outline(piece),
  sewn(piece),
  ...bandCrease(piece),
  ...notchPlaces(piece).map((place) => notchStroke(piece, place)),
  ...grainArrow(piece),
  ...foldBracket(piece),
];
