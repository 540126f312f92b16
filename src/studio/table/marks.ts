import type { DrawnEdge, Piece } from "../../drafting/piece.ts";
import { boundsOf } from "../../geometry/outline.ts";
import { endOf, endTangent, pathOf } from "../../geometry/path.ts";
import { out } from "../../geometry/point.ts";
import { splitAt } from "../../geometry/split.ts";
import { type Frame, px, toPx } from "./frame.ts";

/** A figure set along an edge, outside the piece, upright enough to be read. */
export type EdgeFigure = {
  readonly edge: DrawnEdge;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
};

/** How far along its edge a figure stands: clear of the notch in the middle. */
const ALONG = 0.4;
const OUTSIDE = 17;

export const edgeFigure = (edge: DrawnEdge, frame: Frame, turning: number): EdgeFigure => {
  const [before] = splitAt(edge.path, edge.length * ALONG);
  const way = endTangent(before);
  const at = toPx(frame, endOf(before));
  const outward = out(way);
  const gap = turning * frame.scale + OUTSIDE;
  const turn = (Math.atan2(way.y, way.x) * 180) / Math.PI;
  return {
    edge,
    x: at.x + outward.x * gap,
    y: at.y + outward.y * gap,
    turn: turn > 90 || turn < -90 ? turn + 180 : turn,
  };
};

/** An arrow head of a fixed size on the screen, as path data. */
const head = (x: number, y: number, dx: number, dy: number): string =>
  `M${px(x - dx * 9 - dy * 4)} ${px(y - dy * 9 + dx * 4)}L${px(x)} ${px(y)}L${px(x - dx * 9 + dy * 4)} ${px(y - dy * 9 - dx * 4)}`;

/** The grain with both its heads, in px. */
export const grainMark = ({ grain }: Piece, frame: Frame): string => {
  const [a, b] = [toPx(frame, grain.from), toPx(frame, grain.to)];
  const long = Math.hypot(b.x - a.x, b.y - a.y) || 1;
  const [dx, dy] = [(b.x - a.x) / long, (b.y - a.y) / long];
  return `M${px(a.x)} ${px(a.y)}L${px(b.x)} ${px(b.y)}${head(b.x, b.y, dx, dy)}${head(a.x, a.y, -dx, -dy)}`;
};

/** The bracket whose two arrows touch the fold, in px, and where its word stands. */
export const foldMark = (
  { edges }: Piece,
  frame: Frame,
): { readonly path: string; readonly x: number; readonly y: number } | null => {
  const fold = edges.find((edge) => edge.name === "centre");
  if (!fold) return null;
  const { top, bottom } = boundsOf(fold.path);
  const tall = bottom - top;
  const [a, b] = [
    toPx(frame, { x: 0, y: top + tall * 0.24 }),
    toPx(frame, { x: 0, y: top + tall * 0.8 }),
  ];
  const inner = px(a.x + 15);
  return {
    path: `M${px(a.x + 2)} ${px(a.y)}H${inner}V${px(b.y)}H${px(b.x + 2)}${head(a.x + 2, a.y, -1, 0)}${head(b.x + 2, b.y, -1, 0)}`,
    x: a.x + 28,
    y: (a.y + b.y) / 2,
  };
};

/** The box of what is sewn, and of what is cut. */
export const sewBox = ({ edges }: Piece) => boundsOf(pathOf(edges.flatMap(({ path }) => path)));
export const cutBox = ({ cutLine }: Piece) => boundsOf(cutLine);
