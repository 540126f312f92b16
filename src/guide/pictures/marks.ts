import type { Piece } from "../../drafting/piece.ts";
import { endTangent, pathOf, startOf, startTangent, straight } from "../../geometry/path.ts";
import { minus, out, type Point, plus, stepped, times, unit } from "../../geometry/point.ts";
import { line } from "../../geometry/segment.ts";
import { splitAt } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import type { PictureStroke, PictureWord } from "../picture.ts";
import { AS_DRAWN, type Place, placePoint } from "../place.ts";
import { edgeOf, free } from "../shapes.ts";
import { count, type Told, told } from "../words/told.ts";

/** The head of an arrow as a part of its size: how far back it reaches, and half its width. */
const HEAD_BACK = 1;
const HEAD_HALF = 0.4;

/** An arrow with its head at `to`, as two bent lines. `head` in mm. */
export const arrow = (from: Point, to: Point, head: Mm): readonly PictureStroke[] => {
  const way = unit(minus(to, from));
  const back = stepped(to, way, -HEAD_BACK * head);
  const side = times(out(way), HEAD_HALF * head);
  return [
    free("arrow", straight(from, to)),
    free("arrow", pathOf([line(plus(back, side), to), line(to, minus(back, side))])),
  ];
};

/** Where a mark of an edge stands: on the sew line, and the way out of the piece there. */
type EdgeMark = { readonly at: Point; readonly outward: Point };

const markOn = (piece: Piece, edge: Piece["notches"][number]["edge"], at: Mm): EdgeMark => {
  const { path, length } = edgeOf(piece, edge);
  const [before, after] = splitAt(path, at);
  const way = at < length ? startTangent(after) : endTangent(before);
  return { at: startOf(after), outward: out(way) };
};

/** The notches of one seam on an edge, in order along it. */
export const notchesOn = (
  { notches }: Piece,
  edge: Piece["notches"][number]["edge"],
  seam: string,
): readonly Mm[] =>
  notches
    .filter((notch) => notch.edge === edge && notch.seam === seam)
    .map(({ at }) => at)
    .sort((a, b) => a - b);

/** The place in the picture of a mark on an edge. */
export const markPlace = (
  piece: Piece,
  edge: Piece["notches"][number]["edge"],
  at: Mm,
  place: Place = AS_DRAWN,
): Point => placePoint(place, markOn(piece, edge, at).at);

/** A short line from the sew line outward, at a mark of an edge. `long` in mm. */
export const notch = (
  piece: Piece,
  {
    edge,
    at,
    long,
  }: { readonly edge: Piece["notches"][number]["edge"]; readonly at: Mm; readonly long: Mm },
  place: Place = AS_DRAWN,
): PictureStroke => {
  const mark = markOn(piece, edge, at);
  const [foot, tip] = [mark.at, stepped(mark.at, mark.outward, long)];
  return {
    kind: "notch",
    path: straight(placePoint(place, foot), placePoint(place, tip)),
    closed: false,
    origin: { piece: piece.name, line: edge, place },
  };
};

/** A point to stop at, as a line of no length: it is drawn as a dot. */
export const stopAt = (at: Point): PictureStroke => free("stop", straight(at, at));

/** A word of a picture. */
export const wordAt = (
  sentence: Told,
  at: Point,
  from: PictureWord["from"] = "middle",
): PictureWord => ({ told: sentence, at, from });

/** The number of a mark, as in the table of the step. */
export const numberAt = (n: number, at: Point): PictureWord =>
  wordAt(told("mark.number", { n: count(n) }), at);
