import type { Garment } from "../../bands/garment.ts";
import type { Piece } from "../../drafting/piece.ts";
import { boundsOf } from "../../geometry/outline.ts";
import { endOf, pathOf, startOf } from "../../geometry/path.ts";
import { type Point, point, stepped } from "../../geometry/point.ts";
import { line, type Path } from "../../geometry/segment.ts";
import { pointAlong } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { cuffMarks, hemMarks, neckbandMarks } from "../bandMarks.ts";
import type { Picture, PictureStroke, PictureWord } from "../picture.ts";
import { AS_DRAWN, followed, moved, type Place, placePoint, TURNED_OVER } from "../place.ts";
import {
  bothHalves,
  cutEdge,
  edgeOf,
  edgeStroke,
  fill,
  pieceOf,
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

/** A front or back and where it lies in a picture. */
type Body = { readonly piece: Piece; readonly place: Place };

/** Front and back side by side, hem down, as the hem band goes round them. */
const hemPlaces = (garment: Garment): readonly [front: Body, back: Body] => {
  const [front, back] = [pieceOf(garment, "front"), pieceOf(garment, "back")];
  const wide = (piece: Piece): Mm => boundsOf(piece.cutLine).right;
  const low = (piece: Piece): Mm => endOf(edgeOf(piece, "hem").path).y;
  const place = moved(wide(front) + wide(back) + 30, low(front) - low(back));
  return [
    { piece: front, place: AS_DRAWN },
    { piece: back, place },
  ];
};

/** Left side, centre and right side of a hem as it lies. */
const hemPoints = ({ piece, place }: Body): readonly [Point, Point, Point] => {
  const hem = edgeOf(piece, "hem").path;
  const { x, y } = startOf(hem);
  return [
    placePoint(place, point(-x, y)),
    placePoint(place, endOf(hem)),
    placePoint(place, point(x, y)),
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
  const [front, back] = hemPlaces(garment);
  const { finishedDepth, finishedLength } = garment.bands.hemBand;
  const [begin, , turn] = hemPoints(front);
  const [, , end] = hemPoints(back);
  const openings = [begin, hemPoints(front)[1], turn, hemPoints(back)[1], end];
  const low = Math.max(...openings.map(({ y }) => y));
  const place = moved((begin.x + end.x - finishedLength) / 2, low + 3 * APART);
  const marks = [...hemMarks(garment).rows, { n: 1, onBand: finishedLength }];
  const { strokes, words } = linked(
    marks.map(({ n, onBand }, i) => ({
      n,
      band: placePoint(place, point(onBand, 0)),
      opening: openings[i] ?? end,
    })),
    { down: finishedDepth + 45, head: 4 * HEAD },
  );
  return {
    title: said("picture.hemMarks"),
    strokes: [
      ...[front, back].flatMap((body) => bodyStrokes(body.piece, body.place)),
      ...bandStrokes(pieceOf(garment, "hemBand"), finishedDepth, place),
      ...strokes,
    ],
    words,
    view: {
      left: begin.x - 40,
      right: end.x + 40,
      top: low - 3 * SHOWN,
      bottom: low + 3 * APART + finishedDepth + 90,
    },
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
