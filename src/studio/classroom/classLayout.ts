import type { EdgeName, PieceName } from "../../drafting/piece.ts";
import { lengthOf } from "../../geometry/length.ts";
import { type Box, boundsOf } from "../../geometry/outline.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { ang, dot, minus, norm, type Point, point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import { SEAM_MEETS } from "../../geometry/tolerance.ts";
import { type LessonNumber, type LessonPiece, lineBetween } from "../../guide/lesson/lines.ts";
import type { LessonStep } from "../../guide/lesson/step.ts";
import type { Size } from "../table/view.ts";

/** A piece of a step where it lies on the screen: px = mm × scale + shift. */
type Placed = {
  readonly piece: PieceName;
  readonly before: LessonPiece | null;
  readonly after: LessonPiece;
  readonly box: Box;
  readonly x: number;
  readonly y: number;
};
export type ClassLayout = { readonly scale: number; readonly placed: readonly Placed[] };

/** Between pieces, and above each for its name. In px. */
const APART = 44;
const NAME = 34;

type Boxed = Omit<Placed, "x" | "y">;

const boxRound = (pieces: readonly LessonPiece[]): Box => {
  const boxes = pieces.flatMap(({ lines }) => lines.map(({ path }) => boundsOf(path)));
  return {
    left: Math.min(...boxes.map(({ left }) => left)),
    top: Math.min(...boxes.map(({ top }) => top)),
    right: Math.max(...boxes.map(({ right }) => right)),
    bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
  };
};

const boxedPieces = ({ before, after }: LessonStep): readonly Boxed[] =>
  after.map((piece) => {
    const old = before.find((one) => one.piece === piece.piece) ?? null;
    return {
      piece: piece.piece,
      before: old,
      after: piece,
      box: boxRound(old ? [old, piece] : [piece]),
    };
  });

const wide = ({ box }: Boxed): number => box.right - box.left;
const high = ({ box }: Boxed): number => box.bottom - box.top;
const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** A piece much smaller than the widest still has room for its name and numbers beside it, in px. */
const SMALL = { share: 0.25, room: 110 } as const;

const isSmall = (piece: Boxed, all: readonly Boxed[]): boolean =>
  wide(piece) < SMALL.share * Math.max(...all.map(wide));

const inRow = (pieces: readonly Boxed[], scale: number, room: Size): readonly Placed[] => {
  const roomOf = (piece: Boxed): number =>
    isSmall(piece, pieces) ? SMALL.room : wide(piece) * scale;
  const used = total(pieces.map(roomOf)) + APART * (pieces.length - 1);
  let left = (room.width - used) / 2;
  return pieces.map((piece) => {
    const { box } = piece;
    const x = left + (roomOf(piece) - wide(piece) * scale) / 2 - box.left * scale;
    left += roomOf(piece) + APART;
    const over = (room.height - NAME - high(piece) * scale) / 2;
    return { ...piece, x, y: NAME + over - box.top * scale };
  });
};

const inColumn = (pieces: readonly Boxed[], scale: number, room: Size): readonly Placed[] => {
  const used = total(pieces.map(high)) * scale + (NAME + APART) * pieces.length - APART;
  let top = (room.height - used) / 2;
  return pieces.map((piece) => {
    const { box } = piece;
    const y = top + NAME - box.top * scale;
    top += high(piece) * scale + NAME + APART;
    return { ...piece, x: (room.width - wide(piece) * scale) / 2 - box.left * scale, y };
  });
};

/** The pieces of a step as large as they fit, side by side or one below the other. */
export const classLayout = (step: LessonStep, room: Size): ClassLayout => {
  const pieces = boxedPieces(step);
  const gaps = pieces.length - 1;
  const large = pieces.filter((piece) => !isSmall(piece, pieces));
  const small = (pieces.length - large.length) * SMALL.room;
  const row = Math.min(
    (room.width - small - APART * gaps) / total(large.map(wide)),
    (room.height - NAME) / Math.max(...pieces.map(high)),
  );
  const column = Math.min(
    room.width / Math.max(...pieces.map(wide)),
    (room.height - (NAME + APART) * pieces.length + APART) / total(pieces.map(high)),
  );
  return column > row
    ? { scale: column, placed: inColumn(pieces, column, room) }
    : { scale: row, placed: inRow(pieces, row, room) };
};

type Line = LessonPiece["lines"][number];

/** A line of the drawing: it stays, it moves from its old one, it is new, or it is the old one. */
export type ClassLine = { readonly name: Line["name"]; readonly path: Path } & (
  | { readonly kind: "stays" | "new" | "old" }
  | { readonly kind: "moves"; readonly from: Path }
);

/** What becomes of each line of a piece; the old lines first, so that the new lie over them. */
export const linesOf = ({
  before,
  after,
}: Pick<Placed, "before" | "after">): readonly ClassLine[] => {
  const same = (a: Line, b: Line) => toPathData(a.path) === toPathData(b.path);
  const old = before?.lines ?? [];
  const gone = old.filter(
    (line) => !after.lines.some((one) => one.name === line.name && same(one, line)),
  );
  return [
    ...gone.map((line): ClassLine => ({ ...line, kind: "old" })),
    ...after.lines.map((line): ClassLine => {
      const was = old.find(({ name }) => name === line.name);
      if (!was) return { ...line, kind: before ? "new" : "stays" };
      return same(was, line)
        ? { ...line, kind: "stays" }
        : { ...line, kind: "moves", from: was.path };
    }),
  ];
};

/** The line as it stands a share of the way through the step. */
export const pathAt = (line: ClassLine, share: number): Path =>
  line.kind === "moves" && share < 1 ? lineBetween(line.from, line.path, share) : line.path;

/** Edges that are as long as the one across from them: one number says both. */
const ACROSS: Readonly<Record<string, EdgeName>> = { top: "bottom", left: "right", endA: "endB" };

/** A piece's numbers, without those that only say again what the edge across says. */
export const toldNumbers = (numbers: readonly LessonNumber[]): readonly LessonNumber[] =>
  numbers.filter(
    (one) =>
      !numbers.some(
        (other) =>
          other.piece === one.piece &&
          other.edge === ACROSS[one.edge] &&
          Math.abs(other.value - one.value) < SEAM_MEETS,
      ),
  );

/** Between a number's middle and its line, in px. */
const BESIDE = 20;

/**
 * How far outside a piece a number stands. Where a V is cut, the old corner stands outside: the V's
 * number goes inside, and the neckline's keeps clear of the corner.
 */
const outside = ({ after }: Pick<Placed, "after">, { edge }: LessonNumber): number => {
  const hasV = after.lines.some(({ name }) => name === "v");
  if (!hasV || (edge !== "v" && edge !== "neckline")) return BESIDE;
  return edge === "v" ? -BESIDE : 1.7 * BESIDE;
};

/** The way of a line at its number: from a little before it to a little after. */
const wayAt = ({ after }: Pick<Placed, "after">, { edge }: LessonNumber): Point => {
  const path = after.lines.find(({ name }) => name === edge)?.path;
  if (!path) return point(1, 0);
  const long = lengthOf(path);
  const way = minus(pointAlong(path, long * 0.55), pointAlong(path, long * 0.45));
  const size = norm(way) || 1;
  return point(way.x / size, way.y / size);
};

/** Where a number stands, and how far it is turned so that it runs along its line, in degrees. */
type Spot = Point & { readonly turn: number };

/** Along its line, beside it: a number may not lie on what it measures, nor on another. */
export const numberSpot = (
  number: LessonNumber,
  placed: Pick<Placed, "after" | "box" | "x" | "y">,
  scale: number,
): Spot => {
  const { box, x, y } = placed;
  const { at } = number;
  const way = wayAt(placed, number);
  const middle = point((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const side = dot(point(-way.y, way.x), minus(middle, at)) < 0 ? 1 : -1;
  const away = side * outside(placed, number);
  const upright = way.x < 0 || (way.x === 0 && way.y > 0) ? point(-way.x, -way.y) : way;
  return {
    x: at.x * scale + x - way.y * away,
    y: at.y * scale + y + way.x * away,
    turn: (ang(upright) * 180) / Math.PI,
  };
};

/** A piece at least so large bears its name in its middle, in px. */
const BEARS = 100;
/** Else the name stands above it, further where a number may come between. */
const ABOVE = 44;

/** Where the middle of a piece's name stands. */
export const nameSpot = ({ box, x, y }: Pick<Placed, "box" | "x" | "y">, scale: number): Point => {
  const middle = ((box.left + box.right) / 2) * scale + x;
  const isLarge = Math.min(box.right - box.left, box.bottom - box.top) * scale >= BEARS;
  return isLarge
    ? point(middle, ((box.top + box.bottom) / 2) * scale + y)
    : point(
        middle,
        box.top * scale + y - (box.bottom - box.top > box.right - box.left ? ABOVE : 14),
      );
};
