import type { Garment } from "../../bands/garment.ts";
import type { Piece } from "../../drafting/piece.ts";
import { boundsOf } from "../../geometry/outline.ts";
import { endOf, pathOf, reversed, startOf, straight } from "../../geometry/path.ts";
import {
  along,
  minus,
  mirrored,
  out,
  type Point,
  point,
  stepped,
  unit,
} from "../../geometry/point.ts";
import { splitAt } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { SETTINGS } from "../data/stitches.ts";
import type { Picture, PictureStroke } from "../picture.ts";
import { AS_DRAWN, laidOn, type Place, TURNED_OVER } from "../place.ts";
import {
  bothHalves,
  cutEdge,
  edgeOf,
  edgeStroke,
  fill,
  free,
  pieceOf,
  sewnEdge,
  stroke,
} from "../shapes.ts";
import { said } from "../words/told.ts";
import { arrow, stopAt, wordAt } from "./marks.ts";

/** What the pictures of a V are made of. */
type VScene = {
  readonly front: Piece;
  readonly insert: Piece;
  /** The sewn point, on the fold. */
  readonly tip: Point;
  /** The sewn V's top, on the neckline. */
  readonly top: Point;
};

const sceneOf = (garment: Garment): VScene => {
  const front = pieceOf(garment, "front");
  const v = edgeOf(front, "v").path;
  return { front, insert: pieceOf(garment, "vInsert"), tip: startOf(v), top: endOf(v) };
};

/** The neck of the front round its V. */
const viewOf = ({ tip, top, front }: VScene): Picture["view"] => {
  const wide = Math.max(2.3 * top.x, 0.5 * (tip.y - top.y) + top.x);
  const highest = boundsOf(cutEdge(front)).top;
  const deep = tip.y - top.y;
  return {
    left: -wide,
    right: wide,
    top: Math.max(highest, top.y - 0.5 * deep) - 4,
    bottom: tip.y + 0.75 * deep,
  };
};

/** The front opened out, right side up, as it is cut. */
const openFront = ({ front }: VScene): readonly PictureStroke[] => {
  const whole = bothHalves(cutEdge(front));
  return [
    fill("right", whole, "front"),
    stroke("cut", cutEdge(front), { piece: "front", line: "cutLine", place: AS_DRAWN }),
    stroke("cut", cutEdge(front), { piece: "front", line: "cutLine", place: TURNED_OVER }),
  ];
};

/** Where the front's cut edge meets the fold: the corner from which the snip is made. */
const cutCorner = ({ front }: VScene): Point => startOf(cutEdge(front));

/** How long the snip is: none where the cut edge lies no further off than the snip stays. */
export const snipLength = (garment: Garment): Mm => {
  const scene = sceneOf(garment);
  return Math.max(0, scene.tip.y - SETTINGS.snipShort - cutCorner(scene).y);
};

/** How far short of the insert's cut tip the sewn point lies. */
export const shortOfTip = (garment: Garment): Mm => {
  const insert = pieceOf(garment, "vInsert");
  return boundsOf(insert.cutLine).bottom - startOf(edgeOf(insert, "left").path).y;
};

/** The point stayed with small stitches on the seam line, and snipped to. */
export const stayPicture = (garment: Garment): Picture => {
  const scene = sceneOf(garment);
  const v = edgeOf(scene.front, "v").path;
  const near = splitAt(v, SETTINGS.stayed)[0];
  const snip = snipLength(garment);
  const corner = cutCorner(scene);
  return {
    title: said("picture.stay"),
    strokes: [
      ...openFront(scene),
      edgeStroke("sew", scene.front, "v"),
      edgeStroke("sew", scene.front, "v", TURNED_OVER),
      stroke("stay", near, { piece: "front", line: "v", place: AS_DRAWN }),
      stroke("stay", near, { piece: "front", line: "v", place: TURNED_OVER }),
      ...(snip > 0 ? [free("snip", straight(corner, point(0, corner.y + snip)))] : []),
    ],
    words: snip > 0 ? [wordAt(said("picture.snip"), point(0, scene.tip.y + 9))] : [],
    view: viewOf(scene),
  };
};

/** The insert turned over onto the front, cut edges level, along the side that is sewn. */
const overFront = ({ front, insert }: VScene): Place => {
  const left = edgeOf(insert, "left").path;
  const v = edgeOf(front, "v").path;
  const [tip, top] = [mirrored(startOf(v)), mirrored(endOf(v))];
  return laidOn(
    { at: startOf(left), way: minus(endOf(left), startOf(left)) },
    { at: tip, way: minus(top, tip) },
    true,
  );
};

/** One side of the insert being sewn: right sides together, from the top to the point. */
export const sewVPicture = (garment: Garment): Picture => {
  const scene = sceneOf(garment);
  const { front, insert, tip } = scene;
  const place = overFront(scene);
  const v = edgeOf(front, "v").path;
  const [from, to] = [mirrored(endOf(v)), mirrored(tip)];
  const aside = (p: Point): Point => stepped(p, out(unit(minus(to, from))), 9);
  return {
    title: said("picture.sewV"),
    strokes: [
      ...openFront(scene),
      fill("wrong", insert.cutLine, "vInsert", place),
      stroke("cut", insert.cutLine, { piece: "vInsert", line: "cutLine", place }),
      edgeStroke("sew", front, "v"),
      stroke("stitching", reversed(v), { piece: "front", line: "v", place: TURNED_OVER }),
      ...arrow(aside(along(from, to, 0.12)), aside(along(from, to, 0.8)), 6),
      stopAt(tip),
    ],
    words: [wordAt(said("picture.stop"), point(5, tip.y + 9), "start")],
    view: viewOf(scene),
  };
};

/** The insert in its place, both sides sewn, right sides up. */
export const vInPlacePicture = (garment: Garment): Picture => {
  const scene = sceneOf(garment);
  const { front, insert } = scene;
  const top = edgeOf(insert, "top").path;
  const outline = pathOf(insert.edges.flatMap(({ path }) => path));
  return {
    title: said("picture.vInPlace"),
    strokes: [
      fill("right", bothHalves(sewnEdge(front)), "front"),
      fill("right", outline, "vInsert"),
      edgeStroke("cut", front, "neckline"),
      edgeStroke("cut", front, "neckline", TURNED_OVER),
      stroke("cut", top, { piece: "vInsert", line: "top", place: AS_DRAWN }),
      edgeStroke("sewn", front, "v"),
      edgeStroke("sewn", front, "v", TURNED_OVER),
    ],
    words: [],
    view: viewOf(scene),
  };
};
