import type { Garment } from "../bands/garment.ts";
import { cutLineOffFold } from "../drafting/fold.ts";
import type { DrawnEdge, EdgeName, Piece, PieceName } from "../drafting/piece.ts";
import { crossingsOf } from "../geometry/crossings.ts";
import { type Box, boundsOf } from "../geometry/outline.ts";
import {
  endOf,
  joined,
  mirroredPath,
  pathOf,
  reversed,
  startOf,
  straight,
} from "../geometry/path.ts";
import type { Path } from "../geometry/segment.ts";
import { splitAt } from "../geometry/split.ts";
import type { Mm } from "../geometry/units.ts";
import type { FillKind, MarkKind, Origin, PictureStroke } from "./picture.ts";
import { AS_DRAWN, type Place, placePath } from "./place.ts";

/** A piece that every garment has. To ask for one that it has not is our own mistake. */
export const pieceOf = ({ pieces }: Pick<Garment, "pieces">, name: PieceName): Piece => {
  const piece = pieces.find((one) => one.name === name);
  if (!piece) throw new Error(`The garment has no ${name}.`);
  return piece;
};

/** Whether the garment has such a piece: only the V-insert may be missing. */
export const hasPiece = ({ pieces }: Pick<Garment, "pieces">, name: PieceName): boolean =>
  pieces.some((one) => one.name === name);

/** An edge by its name, where the piece has it. */
export const findEdge = ({ edges }: Piece, name: EdgeName): DrawnEdge | undefined =>
  edges.find((edge) => edge.name === name);

/** An edge that the piece has. To ask for one that it has not is our own mistake. */
export const edgeOf = (piece: Piece, name: EdgeName): DrawnEdge => {
  const edge = findEdge(piece, name);
  if (!edge) throw new Error(`The ${piece.name} has no edge ${name}.`);
  return edge;
};

/** The edge as it is cut, without the fold: from the top of the fold round to its foot. */
export const cutEdge = (piece: Piece): Path => cutLineOffFold(piece);

/** The line as it is sewn, without the fold. */
export const sewnEdge = ({ edges, onFold }: Piece): Path =>
  pathOf(edges.filter(({ name }) => name !== onFold).flatMap(({ path }) => path));

/** Both halves of a line that runs from the fold to the fold: its mirror image, then itself. */
export const bothHalves = (half: Path): Path => joined(reversed(mirroredPath(half)), half);

/** A sleeve folded along its centre line: what is seen of it from the front, closed. */
export type HalfSleeve = {
  /** From the shoulder fold to the raglan. */
  readonly neckline: Path;
  readonly raglan: Path;
  readonly underarm: Path;
  /** From the underarm to the fold. */
  readonly wrist: Path;
  readonly outline: Path;
  readonly fold: Path;
};

/** Where a line meets the sleeve's centre line, along it; the middle where it does not. */
const atCentre = ({ path, length }: DrawnEdge): Mm => crossingsOf(path, "x", 0)[0] ?? length / 2;

/** The front half of a sleeve folded along its centre (drawn lines, turnings folded in). */
export const frontOfSleeve = (sleeve: Piece): HalfSleeve => {
  const [necklineEdge, wristEdge] = [edgeOf(sleeve, "neckline"), edgeOf(sleeve, "wrist")];
  const neckline = splitAt(necklineEdge.path, atCentre(necklineEdge))[1];
  const wrist = splitAt(wristEdge.path, atCentre(wristEdge))[0];
  const raglan = edgeOf(sleeve, "raglanFront").path;
  const underarm = edgeOf(sleeve, "underarmFront").path;
  const open = joined(neckline, raglan, underarm, wrist);
  const fold = straight(endOf(wrist), startOf(neckline));
  return { neckline, raglan, underarm, wrist, outline: joined(open, fold), fold };
};

const from = (piece: PieceName, line: Origin["line"], place: Place): Origin => ({
  piece,
  line,
  place,
});

/** A line of a piece as a stroke where the piece lies. */
export const stroke = (
  kind: MarkKind,
  path: Path,
  { piece, line, place }: Origin,
): PictureStroke => ({
  kind,
  path: placePath(place, path),
  closed: false,
  origin: from(piece, line, place),
});

/** An area of a piece where it lies. */
export const fill = (
  kind: FillKind,
  outline: Path,
  piece: PieceName,
  place: Place = AS_DRAWN,
): PictureStroke => ({
  kind,
  path: placePath(place, outline),
  closed: true,
  origin: from(piece, "any", place),
});

/** An edge by its name, on the piece as it lies. */
export const edgeStroke = (
  kind: MarkKind,
  piece: Piece,
  name: EdgeName,
  place: Place = AS_DRAWN,
): PictureStroke =>
  stroke(kind, edgeOf(piece, name).path, { piece: piece.name, line: name, place });

/** A line that belongs to no piece. */
export const free = (kind: MarkKind | FillKind, path: Path, closed = false): PictureStroke => ({
  kind,
  path,
  closed,
  origin: null,
});

const grownBy = (box: Box, by: Mm): Box => ({
  left: box.left - by,
  top: box.top - by,
  right: box.right + by,
  bottom: box.bottom + by,
});

/** The part of a picture that holds all of these, and some room round them. */
export const viewRound = (paths: readonly Path[], room: Mm): Box => {
  const boxes = paths.map(boundsOf);
  return grownBy(
    {
      left: Math.min(...boxes.map(({ left }) => left)),
      top: Math.min(...boxes.map(({ top }) => top)),
      right: Math.max(...boxes.map(({ right }) => right)),
      bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
    },
    room,
  );
};
