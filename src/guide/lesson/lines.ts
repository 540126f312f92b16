import type { EdgeName, Piece, PieceName } from "../../drafting/piece.ts";
import { lengthOf } from "../../geometry/length.ts";
import { pathOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { along, type Point } from "../../geometry/point.ts";
import { line, type Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { Mm, Ratio } from "../../geometry/units.ts";
import { edgesOfState, type State } from "./state.ts";

/** The edges of pieces of body cloth, in the order in which they run round a piece. */
const IN_ORDER = [
  "top",
  "right",
  "left",
  "v",
  "neckline",
  "raglan",
  "raglanFront",
  "underarmFront",
  "wrist",
  "underarmBack",
  "raglanBack",
  "side",
  "hem",
  "centre",
] as const satisfies EdgeName[];

/** A piece as the class sees it: its lines by name. */
export type LessonPiece = {
  readonly piece: PieceName;
  readonly lines: readonly { readonly name: EdgeName | "cutLine"; readonly path: Path }[];
};

/** A length beside its line; it is left off while the class works it out. */
export type LessonNumber = {
  readonly piece: PieceName;
  readonly edge: EdgeName;
  readonly at: Point;
  readonly value: Mm;
};

const linesOf = (edges: { readonly [Name in EdgeName]?: Path }): LessonPiece["lines"] =>
  IN_ORDER.flatMap((name) => {
    const path = edges[name];
    return path ? [{ name, path }] : [];
  });

/** The pieces of body cloth in a state, line by line. */
export const piecesOfState = (state: State): readonly LessonPiece[] =>
  edgesOfState(state).map(([piece, edges]) => ({ piece, lines: linesOf(edges) }));

/** A piece of the finished garment: its seam lines, or the line to cut as well. */
export const finishedPiece = (piece: Piece, withCutLine: boolean): LessonPiece => ({
  piece: piece.name,
  lines: [
    ...piece.edges.map(({ name, path }) => ({ name, path })),
    ...(withCutLine ? [{ name: "cutLine" as const, path: piece.cutLine }] : []),
  ],
});

const sameLines = (a: LessonPiece, b: LessonPiece): boolean =>
  a.lines.length === b.lines.length &&
  a.lines.every(({ path }, i) => {
    const other = b.lines[i];
    return other !== undefined && toPathData(path) === toPathData(other.path);
  });

/** Only the pieces that a step changes: as they were, and as they are then. */
export const changedPieces = (
  before: readonly LessonPiece[],
  after: readonly LessonPiece[],
): { readonly before: readonly LessonPiece[]; readonly after: readonly LessonPiece[] } => {
  const changed = after.filter((piece) => {
    const old = before.find((one) => one.piece === piece.piece);
    return !old || !sameLines(old, piece);
  });
  return {
    before: before.filter(({ piece }) => changed.some((one) => one.piece === piece)),
    after: changed,
  };
};

/** The length of every seam line that is new, at its middle. The fold is no seam. */
export const newNumbers = (
  before: readonly LessonPiece[],
  after: readonly LessonPiece[],
): readonly LessonNumber[] =>
  after.flatMap(({ piece, lines }) => {
    const old = before.find((one) => one.piece === piece)?.lines ?? [];
    return lines.flatMap(({ name, path }) => {
      if (name === "cutLine" || name === "centre") return [];
      const was = old.find((one) => one.name === name);
      if (was && toPathData(was.path) === toPathData(path)) return [];
      const value = lengthOf(path);
      return [{ piece, edge: name, at: pointAlong(path, value / 2), value }];
    });
  });

/** How many straights a moving line is drawn with. */
const PARTS = 48;

/** The line a share of the way from an old line to its new one, as straights: for a class to see it move. */
export const lineBetween = (before: Path, after: Path, share: Ratio): Path => {
  const [from, to] = [lengthOf(before), lengthOf(after)];
  const at = (i: number): Point =>
    along(pointAlong(before, (from * i) / PARTS), pointAlong(after, (to * i) / PARTS), share);
  return pathOf(Array.from({ length: PARTS }, (_, i) => line(at(i), at(i + 1))));
};
