import type { Garment } from "../../bands/garment.ts";
import type { EdgeName, Piece } from "../../drafting/piece.ts";
import { endOf, reversed, startOf } from "../../geometry/path.ts";
import { minus, type Point, point, times, unit } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { Picture, PictureStroke } from "../picture.ts";
import {
  AS_DRAWN,
  type Bearing,
  followed,
  laidOn,
  moved,
  type Place,
  placePath,
  TURNED_OVER,
} from "../place.ts";
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
import { arrow, markPlace, notch, notchesOn } from "./marks.ts";

/** How far apart the pieces are drawn, and the marks' sizes: seen on a picture 80 wide. */
const APART: Mm = 55;
const NOTCH: Mm = 26;
const HEAD: Mm = 22;
const ROOM: Mm = 20;

/** One raglan seam: the body's piece, and the sleeve's edge that is sewn to it. */
type RaglanSide = {
  readonly body: "front" | "back";
  readonly sleeveEdge: EdgeName;
  readonly seam: "raglan-front" | "raglan-back";
  /** The body's half to which the sleeve as drawn, the wearer's right one, belongs. */
  readonly half: Place;
};

const SIDES: Readonly<Record<"front" | "back", RaglanSide>> = {
  front: {
    body: "front",
    sleeveEdge: "raglanFront",
    seam: "raglan-front",
    half: TURNED_OVER,
  },
  back: { body: "back", sleeveEdge: "raglanBack", seam: "raglan-back", half: AS_DRAWN },
};

const chord = (path: Path): Bearing => ({
  at: startOf(path),
  way: minus(endOf(path), startOf(path)),
});

/** The sleeve's raglan as it runs down from the neck. */
const sleeveRaglan = (sleeve: Piece, edge: EdgeName): Path => {
  const { path } = edgeOf(sleeve, edge);
  return edge === "raglanBack" ? reversed(path) : path;
};

/** The wearer's right sleeve laid beside its half of the body, neck to neck, `apart` mm off. */
export const besideBody = (garment: Garment, side: "front" | "back", apart: Mm): Place => {
  const { body, sleeveEdge, half } = SIDES[side];
  const raglan = placePath(half, edgeOf(pieceOf(garment, body), "raglan").path);
  const sleeve = pieceOf(garment, "sleeve");
  const place = laidOn(chord(sleeveRaglan(sleeve, sleeveEdge)), chord(raglan));
  const { x, y } = unit(chord(raglan).way);
  // Square to the seam, away from the body.
  const away = x < 0 ? point(-y, x) : point(y, -x);
  const step = times(away, apart);
  return followed(place, moved(step.x, step.y));
};

type Scene = {
  readonly body: Piece;
  readonly sleeve: Piece;
  readonly side: RaglanSide;
  readonly right: Place;
};

/** One sleeve and its half of the body, with the seam, its notches and which meets which. */
const seamOf = ({ body, sleeve, side, right }: Scene, over: Place): readonly PictureStroke[] => {
  const [half, place] = [followed(side.half, over), followed(right, over)];
  const onBody = notchesOn(body, "raglan", side.seam);
  const onSleeve = notchesOn(sleeve, side.sleeveEdge, side.seam);
  const fromNeck = side.body === "back" ? [...onSleeve].reverse() : onSleeve;
  const marks = onBody.map((at, i): readonly [Point, Point] => [
    markPlace(sleeve, side.sleeveEdge, fromNeck[i] ?? 0, place),
    markPlace(body, "raglan", at, half),
  ]);
  const [link] = marks;
  return [
    fill("right", sleeve.cutLine, "sleeve", place),
    stroke("cut", sleeve.cutLine, { piece: "sleeve", line: "cutLine", place }),
    edgeStroke("stitching", body, "raglan", half),
    edgeStroke("stitching", sleeve, side.sleeveEdge, place),
    ...onBody.map((at) => notch(body, { edge: "raglan", at, long: NOTCH }, half)),
    ...fromNeck.map((at) => notch(sleeve, { edge: side.sleeveEdge, at, long: NOTCH }, place)),
    ...(link ? arrow(link[0], link[1], HEAD) : []),
  ];
};

/** Both sleeves beside the front or back, right sides up, with the seams that join them. */
export const raglanPicture = (garment: Garment, which: "front" | "back"): Picture => {
  const side = SIDES[which];
  const body = pieceOf(garment, side.body);
  const sleeve = pieceOf(garment, "sleeve");
  const right = besideBody(garment, which, APART);
  const scene: Scene = { body, sleeve, side, right };
  const edge = cutEdge(body);
  const whole = bothHalves(edge);
  const origin = { piece: side.body, line: "cutLine" } as const;
  return {
    title: said(which === "front" ? "picture.raglanFront" : "picture.raglanBack"),
    strokes: [
      fill("right", whole, side.body),
      stroke("cut", edge, { ...origin, place: AS_DRAWN }),
      stroke("cut", edge, { ...origin, place: TURNED_OVER }),
      ...seamOf(scene, AS_DRAWN),
      ...seamOf(scene, TURNED_OVER),
    ],
    words: [],
    view: viewRound(
      [
        whole,
        placePath(right, sleeve.cutLine),
        placePath(followed(right, TURNED_OVER), sleeve.cutLine),
      ],
      ROOM,
    ),
  };
};
