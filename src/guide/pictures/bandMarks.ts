import type { Garment } from "../../bands/garment.ts";
import type { EdgeName, Piece } from "../../drafting/piece.ts";
import { boundsOf } from "../../geometry/outline.ts";
import {
  endOf,
  endTangent,
  pathOf,
  reversed,
  startOf,
  startTangent,
  straight,
} from "../../geometry/path.ts";
import { out, type Point, point, stepped, times } from "../../geometry/point.ts";
import { line, type Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { cuffMarks, hemMarks, neckbandMarks } from "../bandMarks.ts";
import type { Picture, PictureStroke, PictureWord } from "../picture.ts";
import {
  AS_DRAWN,
  followed,
  laidOn,
  moved,
  type Place,
  placePath,
  placePoint,
  TURNED_OVER,
} from "../place.ts";
import {
  bothHalves,
  cutEdge,
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
import { arrow, notch, numberAt } from "./marks.ts";

/** How far a band is drawn from the edge that it meets. */
const APART: Mm = 42;
const NOTCH: Mm = 7;
const HEAD: Mm = 6;
/** How much of a piece is shown beside the edge that a band meets. */
const SHOWN: Mm = 55;

/** A band folded along its middle: what is seen of it, from its open edges down to the fold. */
const foldedBand = (band: Piece, deep: Mm): Path => {
  const [a, b] = [startOf(edgeOf(band, "top").path), endOf(edgeOf(band, "top").path)];
  return pathOf([
    line(a, b),
    line(b, point(b.x, deep)),
    line(point(b.x, deep), point(a.x, deep)),
    line(point(a.x, deep), a),
  ]);
};

const bandStrokes = (band: Piece, deep: Mm, place: Place): readonly PictureStroke[] => [
  fill("rib", foldedBand(band, deep), band.name, place),
  edgeStroke("sew", band, "top", place),
];

/** Links between marks that meet, and their numbers beside the band's. */
type Links = {
  readonly strokes: readonly PictureStroke[];
  readonly words: readonly PictureWord[];
};

const linked = (
  pairs: readonly { readonly n: number; readonly band: Point; readonly opening: Point }[],
  { down, head }: { readonly down: Mm; readonly head: Mm },
): Links => ({
  strokes: pairs.flatMap(({ band, opening }) => arrow(band, opening, head)),
  words: pairs.map(({ n, band }) => numberAt(n, stepped(band, point(0, 1), down))),
});

/** A cuff under the end of its sleeve, quarter mark under quarter mark. */
export const cuffMarksPicture = (garment: Garment): Picture => {
  const sleeve = pieceOf(garment, "sleeve");
  const cuff = pieceOf(garment, "cuff");
  const { finishedDepth, finishedLength } = garment.bands.cuff;
  const wrist = edgeOf(sleeve, "wrist");
  const low = boundsOf(wrist.path).bottom;
  // The wrist runs from right to left, and so does the cuff as it meets it.
  const middle = (startOf(wrist.path).x + endOf(wrist.path).x) / 2;
  const place = followed(TURNED_OVER, moved(middle + finishedLength / 2, low + APART));
  const { rows } = cuffMarks(garment);
  const { strokes, words } = linked(
    [...rows, { n: 1, onBand: finishedLength, onOpening: wrist.length }].map(
      ({ n, onBand, onOpening }) => ({
        n,
        band: placePoint(place, point(onBand, 0)),
        opening: pointAlong(wrist.path, onOpening),
      }),
    ),
    { down: finishedDepth + 10, head: HEAD },
  );
  return {
    title: said("picture.cuffMarks"),
    strokes: [
      fill("right", sleeve.cutLine, "sleeve"),
      stroke("cut", sleeve.cutLine, { piece: "sleeve", line: "cutLine", place: AS_DRAWN }),
      edgeStroke("sew", sleeve, "wrist"),
      ...bandStrokes(cuff, finishedDepth, place),
      ...strokes,
    ],
    words,
    view: {
      left: middle - wrist.length / 2 - 30,
      right: middle + wrist.length / 2 + 30,
      top: low - SHOWN,
      bottom: low + APART + finishedDepth + 20,
    },
  };
};

/** Front and back side by side, hem down, as the hem band goes round them. */
const hemPlaces = (
  garment: Garment,
): readonly { readonly piece: Piece; readonly place: Place }[] => {
  const [front, back] = [pieceOf(garment, "front"), pieceOf(garment, "back")];
  const wide = (piece: Piece): Mm => boundsOf(piece.cutLine).right;
  const low = (piece: Piece): Mm => endOf(edgeOf(piece, "hem").path).y;
  const place = moved(wide(front) + wide(back) + 30, low(front) - low(back));
  return [
    { piece: front, place: AS_DRAWN },
    { piece: back, place },
  ];
};

const bodyStrokes = (piece: Piece, place: Place): readonly PictureStroke[] => {
  const edge = cutEdge(piece);
  const halves = [place, followed(TURNED_OVER, place)];
  return [
    fill("right", bothHalves(edge), piece.name, place),
    ...halves.flatMap((at) => [
      stroke("cut", edge, { piece: piece.name, line: "cutLine", place: at }),
      edgeStroke("sew", piece, "hem", at),
    ]),
  ];
};

/** The hem band under front and back, its marks under the sides and the centres. */
export const hemMarksPicture = (garment: Garment): Picture => {
  const bodies = hemPlaces(garment);
  const [front, back] = bodies;
  const band = pieceOf(garment, "hemBand");
  const { finishedDepth, finishedLength } = garment.bands.hemBand;
  const side = (at: Place, over: -1 | 1, piece: Piece): Point => {
    const hem = edgeOf(piece, "hem").path;
    return placePoint(at, point(over * startOf(hem).x, startOf(hem).y));
  };
  const centre = (at: Place, piece: Piece): Point =>
    placePoint(at, endOf(edgeOf(piece, "hem").path));
  if (!front || !back) throw new Error("A garment has a front and a back.");
  const openings = [
    side(front.place, -1, front.piece),
    centre(front.place, front.piece),
    side(front.place, 1, front.piece),
    centre(back.place, back.piece),
    side(back.place, 1, back.piece),
  ];
  const low = Math.max(...openings.map(({ y }) => y));
  const left = (side(front.place, -1, front.piece).x + side(back.place, 1, back.piece).x) / 2;
  const place = moved(left - finishedLength / 2, low + 3 * APART);
  const { strokes, words } = linked(
    [...hemMarks(garment).rows, { n: 1, onBand: finishedLength }].map(({ n, onBand }, i) => ({
      n,
      band: placePoint(place, point(onBand, 0)),
      opening: openings[i] ?? point(0, 0),
    })),
    { down: finishedDepth + 45, head: 4 * HEAD },
  );
  return {
    title: said("picture.hemMarks"),
    strokes: [
      ...bodies.flatMap(({ piece, place: at }) => bodyStrokes(piece, at)),
      ...bandStrokes(band, finishedDepth, place),
      ...strokes,
    ],
    words,
    view: {
      left: side(front.place, -1, front.piece).x - 40,
      right: side(back.place, 1, back.piece).x + 40,
      top: low - 3 * SHOWN,
      bottom: low + 3 * APART + finishedDepth + 90,
    },
  };
};

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
    if (left <= length + 1e-6 || i === runs.length - 1) {
      const [at, on] = [pointAlong(path, left - 0.01), pointAlong(path, left + 0.01)];
      const tangent = times({ x: on.x - at.x, y: on.y - at.y }, 1);
      const size = Math.hypot(tangent.x, tangent.y) || 1;
      return [pointAlong(path, left), out(times(tangent, 1 / size))];
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

/** The neckband folded, with its eight marks and their numbers. */
export const neckbandMarksPicture = (garment: Garment): Picture => {
  const band = pieceOf(garment, "neckband");
  const { finishedDepth } = garment.bands.neckband;
  const { rows } = neckbandMarks(garment);
  return {
    title: said("picture.neckbandMarks"),
    strokes: [
      ...bandStrokes(band, finishedDepth, AS_DRAWN),
      ...band.notches.map(({ edge, at }) => notch(band, { edge, at, long: NOTCH })),
    ],
    words: rows.map(({ n, onBand }) => numberAt(n, point(onBand, -2.4 * NOTCH))),
    view: viewRound([foldedBand(band, finishedDepth)], 25),
  };
};
