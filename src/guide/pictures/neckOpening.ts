import type { Garment } from "../../bands/garment.ts";
import type { EdgeName, Piece } from "../../drafting/piece.ts";
import {
  endOf,
  endTangent,
  reversed,
  startOf,
  startTangent,
  straight,
} from "../../geometry/path.ts";
import { out, type Point, point, stepped, times } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { splitAt } from "../../geometry/split.ts";
import { AT_JOINT } from "../../geometry/tolerance.ts";
import type { Mm } from "../../geometry/units.ts";
import { neckbandMarks } from "../bandMarks.ts";
import type { Picture, PictureStroke } from "../picture.ts";
import { AS_DRAWN, laidOn, type Place, placePath } from "../place.ts";
import {
  edgeOf,
  edgeStroke,
  fill,
  hasPiece,
  pieceOf,
  sewnEdge,
  stroke,
  viewRound,
} from "../shapes.ts";
import { said } from "../words/told.ts";
import { numberAt } from "./marks.ts";

const NOTCH: Mm = 7;
/** How much of the pieces is shown beside the opening. */
const SHOWN: Mm = 55;

/** One run of the neck opening where it lies: the neckline of a piece, from centre back on. */
type Run = {
  readonly piece: Piece;
  readonly edge: EdgeName;
  readonly place: Place;
  readonly path: Path;
};

/** The half opening laid flat, each piece on along the raglan seam that joins it to the last. */
const neckRuns = (garment: Garment): readonly Run[] => {
  const [back, sleeve, front] = (["back", "sleeve", "front"] as const).map((name) =>
    pieceOf(garment, name),
  );
  if (!back || !sleeve || !front) throw new Error("A garment has a front, a back and sleeves.");
  const backLine = edgeOf(back, "neckline").path;
  const onSleeve = laidOn(
    {
      at: startOf(edgeOf(sleeve, "neckline").path),
      way: times(endTangent(edgeOf(sleeve, "raglanBack").path), -1),
    },
    { at: endOf(backLine), way: startTangent(edgeOf(back, "raglan").path) },
  );
  const sleeveLine = placePath(onSleeve, edgeOf(sleeve, "neckline").path);
  const raglan = placePath(onSleeve, edgeOf(sleeve, "raglanFront").path);
  // The wearer's right half: the front, too, is turned over.
  const onFront = laidOn(
    { at: endOf(edgeOf(front, "neckline").path), way: startTangent(edgeOf(front, "raglan").path) },
    { at: startOf(raglan), way: startTangent(raglan) },
    true,
  );
  const frontLine = reversed(placePath(onFront, edgeOf(front, "neckline").path));
  return [
    { piece: back, edge: "neckline", place: AS_DRAWN, path: backLine },
    { piece: sleeve, edge: "neckline", place: onSleeve, path: sleeveLine },
    { piece: front, edge: "neckline", place: onFront, path: frontLine },
    ...insertRun(garment, onFront),
  ];
};

const insertRun = (garment: Garment, place: Place): readonly Run[] => {
  if (!hasPiece(garment, "vInsert")) return [];
  const insert = pieceOf(garment, "vInsert");
  const path = reversed(placePath(place, edgeOf(insert, "top").path));
  return [{ piece: insert, edge: "top", place, path }];
};

/** The point of the laid-out opening so far along it from centre back, and the way out of it. */
const pointOnRuns = (runs: readonly Run[], way: Mm): readonly [Point, Point] => {
  let left = way;
  for (const [i, { piece, edge, path }] of runs.entries()) {
    const { length } = edgeOf(piece, edge);
    if (left <= length + AT_JOINT || i === runs.length - 1) {
      const [before, after] = splitAt(path, left);
      const way = left < length ? startTangent(after) : endTangent(before);
      return [startOf(after), out(way)];
    }
    left -= length;
  }
  return [point(0, 0), point(0, -1)];
};

/** Half the neck opening laid flat, from centre back to centre front, with its five marks. */
export const neckOpeningPicture = (garment: Garment): Picture => {
  const runs = neckRuns(garment);
  const { rows } = neckbandMarks(garment);
  const half = rows.slice(0, rows.length / 2 + 1);
  const marks = half.map(({ n, onOpening }) => ({ n, place: pointOnRuns(runs, onOpening) }));
  const outlines = runs.map(({ piece, place }) => placePath(place, sewnEdge(piece)));
  return {
    title: said("picture.neckOpening"),
    strokes: [
      ...runs.flatMap(({ piece, place }) => [
        fill("right", sewnEdge(piece), piece.name, place),
        stroke("sewn", sewnEdge(piece), { piece: piece.name, line: "any", place }),
      ]),
      ...runs.map(({ piece, edge, place }) => edgeStroke("stitching", piece, edge, place)),
      ...marks.map(
        ({ place: [at, way] }): PictureStroke => ({
          kind: "notch",
          path: straight(at, stepped(at, way, NOTCH)),
          closed: false,
          origin: null,
        }),
      ),
    ],
    words: marks.map(({ n, place: [at, way] }) => numberAt(n, stepped(at, way, 2.2 * NOTCH))),
    view: clippedView(
      runs.map(({ path }) => path),
      outlines,
    ),
  };
};

/** Round the opening itself, with a hand's breadth of the pieces. */
const clippedView = (opening: readonly Path[], outlines: readonly Path[]): Picture["view"] => {
  const [near, all] = [viewRound(opening, SHOWN / 2), viewRound(outlines, 10)];
  return {
    left: Math.max(near.left, all.left - SHOWN),
    right: Math.min(near.right, all.right + SHOWN),
    top: near.top,
    bottom: near.bottom,
  };
};
