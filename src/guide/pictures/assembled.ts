import type { Garment } from "../../bands/garment.ts";
import { offsetPath } from "../../geometry/offset.ts";
import {
  endOf,
  joined,
  mirroredPath,
  pathOf,
  reversed,
  startOf,
  straight,
} from "../../geometry/path.ts";
import { along, minus, type Point, point } from "../../geometry/point.ts";
import { line, type Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { FillKind, MarkKind, Picture, PictureStroke } from "../picture.ts";
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
  edgeOf,
  edgeStroke,
  fill,
  findEdge,
  free,
  frontOfSleeve,
  type HalfSleeve,
  hasPiece,
  pieceOf,
  sewnEdge,
  stroke,
  viewRound,
} from "../shapes.ts";
import { said } from "../words/told.ts";
import { besideBody } from "./raglan.ts";

const ROOM: Mm = 20;
const SIDES: readonly Place[] = [AS_DRAWN, TURNED_OVER];

/** The garment as it lies on a table, sleeves folded along their centre: its front is seen. */
type Lying = {
  readonly sleeve: HalfSleeve;
  /** Of the wearer's right sleeve; the left one is its mirror image. */
  readonly place: Place;
};

const lyingOf = (garment: Garment): Lying => ({
  sleeve: frontOfSleeve(pieceOf(garment, "sleeve")),
  place: besideBody(garment, "front", 0),
});

/** Between the two curves of a raglan laid flat: one sewn line on a body, two on a table. */
const between = (garment: Garment, { sleeve, place }: Lying): Path => {
  const raglan = mirroredPath(edgeOf(pieceOf(garment, "front"), "raglan").path);
  const other = placePath(place, reversed(sleeve.raglan));
  return joined(raglan, other);
};

/** Front, both sleeves and their raglan seams, which are sewn. */
const cloth = (garment: Garment, lying: Lying, side: FillKind): readonly PictureStroke[] => {
  const front = pieceOf(garment, "front");
  const half = sewnEdge(front);
  const places = SIDES.map((over) => followed(lying.place, over));
  return [
    ...places.map((place) => fill(side, lying.sleeve.outline, "sleeve", place)),
    ...SIDES.map((over) => free(side, placePath(over, between(garment, lying)), true)),
    fill(side, bothHalves(half), "front"),
    ...(hasPiece(garment, "vInsert") ? insertStrokes(garment, side) : []),
    ...SIDES.map((over) => edgeStroke("sewn", front, "raglan", over)),
    ...places.flatMap((place) => [
      stroke("fold", lying.sleeve.fold, { piece: "sleeve", line: "any", place }),
    ]),
  ];
};

const insertStrokes = (garment: Garment, side: FillKind): readonly PictureStroke[] => {
  const insert = pieceOf(garment, "vInsert");
  const front = pieceOf(garment, "front");
  return [
    fill(side, pathOf(insert.edges.flatMap(({ path }) => path)), "vInsert"),
    ...SIDES.map((over) => edgeStroke("sewn", front, "v", over)),
  ];
};

type Seams = {
  readonly sides: MarkKind;
  readonly wrists: MarkKind;
  readonly hem: MarkKind;
  readonly neckline: MarkKind;
};

/** The edges that are still open, or sewn, or sewn now. */
const edges = (garment: Garment, { sleeve, place }: Lying, kinds: Seams) => {
  const front = pieceOf(garment, "front");
  const of = (line: "neckline" | "underarmFront" | "wrist", at: Place) =>
    ({ piece: "sleeve", line, place: at }) as const;
  return SIDES.flatMap((over): readonly PictureStroke[] => {
    const at = followed(place, over);
    return [
      edgeStroke(kinds.hem, front, "hem", over),
      edgeStroke(kinds.neckline, front, "neckline", over),
      stroke(kinds.neckline, sleeve.neckline, of("neckline", at)),
      stroke(kinds.wrists, sleeve.wrist, of("wrist", at)),
      edgeStroke(kinds.sides, front, "side", over),
      stroke(kinds.sides, sleeve.underarm, of("underarmFront", at)),
    ];
  });
};

const topOfInsert = (garment: Garment, kind: MarkKind): readonly PictureStroke[] =>
  hasPiece(garment, "vInsert") ? [edgeStroke(kind, pieceOf(garment, "vInsert"), "top")] : [];

const viewOf = (garment: Garment, { sleeve, place }: Lying, more: readonly Path[]) =>
  viewRound(
    [
      bothHalves(sewnEdge(pieceOf(garment, "front"))),
      ...SIDES.map((over) => placePath(followed(place, over), sleeve.outline)),
      ...more,
    ],
    ROOM,
  );

/** Underarm and side in one, the garment wrong side out. */
export const sidePicture = (garment: Garment): Picture => {
  const lying = lyingOf(garment);
  const kinds = { sides: "stitching", wrists: "cut", hem: "cut", neckline: "cut" } as const;
  return {
    title: said("picture.side"),
    strokes: [
      ...cloth(garment, lying, "wrong"),
      ...topOfInsert(garment, "cut"),
      ...edges(garment, lying, kinds),
    ],
    words: [],
    view: viewOf(garment, lying, []),
  };
};

/** Half of a band lying flat as a ring: from its folded edge to its seam with the garment. */
const ringRectangle = (long: Mm, deep: Mm): Path => {
  const [a, b, c, d] = [point(0, 0), point(long, 0), point(long, deep), point(0, deep)];
  return pathOf([line(a, b), line(b, c), line(c, d), line(d, a)]);
};

/** The hem band under the hem, in its middle. */
const hemBand = ({ bands, pieces }: Garment): PictureStroke => {
  const long = bands.hemBand.finishedLength / 2;
  const hem = endOf(edgeOf(pieceOf({ pieces }, "front"), "hem").path).y;
  const rectangle = ringRectangle(long, bands.hemBand.finishedDepth);
  return fill("rib", rectangle, "hemBand", moved(-long / 2, hem));
};

/** A cuff at the end of a folded sleeve, in its middle. */
const cuffAt = ({ bands }: Garment, { sleeve, place }: Lying): PictureStroke => {
  const long = bands.cuff.finishedLength / 2;
  const [from, to] = [endOf(sleeve.wrist), startOf(sleeve.wrist)];
  const middle = along(from, to, 0.5);
  const on = laidOn(
    { at: point(long / 2, 0), way: point(1, 0) },
    { at: middle, way: minus(to, from) },
  );
  const rectangle = ringRectangle(long, bands.cuff.finishedDepth);
  return fill("rib", rectangle, "cuff", followed(on, place));
};

/** The neckline as it is seen from the front, from one shoulder fold to the other. */
const frontNeckline = (garment: Garment, { sleeve, place }: Lying): Path => {
  const front = pieceOf(garment, "front");
  const neckline = edgeOf(front, "neckline").path;
  const right = placePath(place, sleeve.neckline);
  const left = reversed(mirroredPath(right));
  const half = reversed(mirroredPath(neckline));
  const insert = hasPiece(garment, "vInsert") ? pieceOf(garment, "vInsert") : null;
  const top = insert ? findEdge(insert, "top") : undefined;
  const middle = top ? bridged(half, top.path, neckline) : joined(half, neckline);
  return bridged(right, middle, left);
};

/** Ends nearer than this are one. */
const MEETS: Mm = 1e-6;

/** Paths one after another, with straights where they do not meet to the hair. */
const bridged = (first: Path, ...more: readonly Path[]): Path =>
  more.reduce((done, next) => {
    const [end, start] = [endOf(done), startOf(next)];
    const far = Math.hypot(end.x - start.x, end.y - start.y);
    return far < MEETS ? joined(done, next) : joined(done, straight(end, start), next);
  }, first);

/** The neckband standing round the opening: no piece's line, for on the body it is bent. */
const neckband = (garment: Garment, lying: Lying): PictureStroke => {
  const neckline = frontNeckline(garment, lying);
  const fold = offsetPath(neckline, garment.bands.neckband.finishedDepth);
  return free("rib", bridged(neckline, reversed(fold)), true);
};

/** How far the garment is sewn in a picture of it lying on the table. */
export type Sewn = "neckband" | "cuffs" | "hemBand" | "finished";

const TITLES = {
  neckband: "picture.neckband",
  cuffs: "picture.cuffs",
  hemBand: "picture.hemBand",
  finished: "picture.finished",
} as const;

/** Which bands are on it, in the order of work, the last of them being sewn. */
const bandsOn = (garment: Garment, lying: Lying, sewn: Sewn): readonly PictureStroke[] => [
  neckband(garment, lying),
  ...(sewn === "neckband"
    ? []
    : SIDES.map((over) => {
        const cuff = cuffAt(garment, lying);
        const { origin } = cuff;
        return {
          ...cuff,
          path: placePath(over, cuff.path),
          origin: origin && { ...origin, place: followed(origin.place, over) },
        };
      })),
  ...(sewn === "hemBand" || sewn === "finished" ? [hemBand(garment)] : []),
];

/** The garment right side out, a band being sewn on, or all of it done. */
export const bandPicture = (garment: Garment, sewn: Sewn): Picture => {
  const lying = lyingOf(garment);
  const bands = bandsOn(garment, lying, sewn);
  const now = (step: Sewn, done: boolean): MarkKind =>
    sewn === step ? "stitching" : done ? "sewn" : "cut";
  const kinds: Seams = {
    sides: "sewn",
    neckline: now("neckband", true),
    wrists: now("cuffs", sewn !== "neckband"),
    hem: now("hemBand", sewn === "finished"),
  };
  return {
    title: said(TITLES[sewn]),
    strokes: [
      ...bands,
      ...cloth(garment, lying, "right"),
      ...topOfInsert(garment, kinds.neckline),
      ...edges(garment, lying, kinds),
    ],
    words: [],
    view: viewOf(
      garment,
      lying,
      bands.map(({ path }) => path),
    ),
  };
};

/** Where the underarm points of front and sleeve meet in these pictures: for tests and screen. */
export const underarmOf = (garment: Garment): readonly [Point, Point] => {
  const { sleeve, place } = lyingOf(garment);
  return [
    placePoint(TURNED_OVER, endOf(edgeOf(pieceOf(garment, "front"), "raglan").path)),
    placePoint(place, endOf(sleeve.raglan)),
  ];
};
