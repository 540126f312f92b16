import type { Garment } from "../../bands/garment.ts";
import type { DrawnEdge, EdgeName, Piece, PieceName } from "../../drafting/piece.ts";
import { endOf, mirroredPath, reversed, startOf, straight } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { ang, minus, type Point, point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { splitAt } from "../../geometry/split.ts";

/** A sewn-up half of the garment, laid flat, as path data in the body piece's own millimetres. */
export type HalfShapes = {
  readonly body: string;
  /** The body's outline without its fold. */
  readonly outline: string;
  readonly neckline: string;
  readonly raglan: string;
  readonly side: string;
  readonly hemBand: string;
  /** Empty where there is no V, and on the back. */
  readonly v: string;
  readonly insert: string;
  /** Folded along its top, to be laid to the raglan by `lay`. */
  readonly sleeve: string;
  /** Its outline without the raglan, which is the body's once they are sewn. */
  readonly sleeveOutline: string;
  readonly underarm: string;
  readonly sleeveNeck: string;
  readonly cuff: string;
  readonly lay: string;
  readonly right: number;
  readonly bottom: number;
};

const pieceOf = ({ pieces }: Garment, name: PieceName): Piece | undefined =>
  pieces.find((piece) => piece.name === name);

const edgeOf = (piece: Piece | undefined, name: EdgeName): DrawnEdge | undefined =>
  piece?.edges.find((edge) => edge.name === name);

const joinedData = (...paths: readonly (Path | undefined)[]): string =>
  paths
    .flatMap((path) => (path ? [toPathData(path)] : []))
    .join("")
    .replace(/(?!^)M/gu, "L");

/**
 * The sleeve turned over and laid so that its raglan's chord lies on the body's: the way in which
 * the two lie before they are sewn, right sides up.
 */
const layFor = (body: Path, sleeve: Path): string => {
  const flipped = (p: Point): Point => point(-p.x, p.y);
  const from = flipped(startOf(sleeve));
  const turn = ang(minus(endOf(body), startOf(body))) - ang(minus(flipped(endOf(sleeve)), from));
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const to = startOf(body);
  const x = to.x - (from.x * cos - from.y * sin);
  const y = to.y - (from.x * sin + from.y * cos);
  return `matrix(${-cos} ${-sin} ${-sin} ${cos} ${x} ${y})`;
};

type HalfSleeve = Pick<
  HalfShapes,
  "sleeve" | "sleeveOutline" | "underarm" | "sleeveNeck" | "cuff"
> & {
  readonly raglan: Path;
};

/** One side of the sleeve, from its top to its underarm; the back is turned over to lie alike. */
const halfSleeve = (garment: Garment, side: "front" | "back"): HalfSleeve | null => {
  const sleeve = pieceOf(garment, "sleeve");
  const names = {
    front: ["raglanFront", "underarmFront"],
    back: ["raglanBack", "underarmBack"],
  } as const;
  const [raglanName, underarmName] = names[side];
  const raglan = edgeOf(sleeve, raglanName)?.path;
  const underarm = edgeOf(sleeve, underarmName)?.path;
  const neck = edgeOf(sleeve, "neckline");
  if (!sleeve || !raglan || !underarm || !neck) return null;
  const top = sleeve.notches.find(({ seam }) => seam === "shoulder")?.at ?? neck.length / 2;
  const [back, front] = splitAt(neck.path, top);
  const down =
    side === "front"
      ? [front, raglan, underarm]
      : [reversed(back), reversed(raglan), reversed(underarm)];
  const [neckline, long, under] = down;
  if (!neckline || !long || !under) return null;
  const wrist = endOf(under);
  const close = straight(wrist, point(0, wrist.y));
  const { finishedLength, finishedDepth } = garment.bands.cuff;
  const half = (finishedLength / 2) * Math.sign(wrist.x);
  const low = wrist.y + finishedDepth;
  return {
    sleeve: `${joinedData(neckline, long, under, close)}Z`,
    sleeveOutline: `${joinedData(under, close)}L${startOf(neckline).x} ${startOf(neckline).y}`,
    underarm: toPathData(under),
    sleeveNeck: toPathData(neckline),
    cuff: `M0 ${wrist.y}L${wrist.x} ${wrist.y}L${half} ${low}L0 ${low}Z`,
    raglan: long,
  };
};

const insertOf = (garment: Garment): string => {
  const insert = pieceOf(garment, "vInsert");
  return insert ? `${joinedData(...insert.edges.map(({ path }) => path))}Z` : "";
};

const bandBelow = (garment: Garment, hem: Path): string => {
  const { finishedLength, finishedDepth } = garment.bands.hemBand;
  const side = startOf(hem);
  const low = side.y + finishedDepth;
  const half = finishedLength / 4;
  return `M${-side.x} ${side.y}L${side.x} ${side.y}L${half} ${low}L${-half} ${low}Z`;
};

/** The front or the back with its half of the sleeve. */
export const halfShapes = (garment: Garment, side: "front" | "back"): HalfShapes | null => {
  const body = pieceOf(garment, side);
  const [neckline, raglan, seam, hem] = (["neckline", "raglan", "side", "hem"] as const).map(
    (name) => edgeOf(body, name)?.path,
  );
  const sleeve = halfSleeve(garment, side);
  if (!neckline || !raglan || !seam || !hem || !sleeve) return null;
  const v = edgeOf(body, "v")?.path;
  const centre = straight(endOf(hem), startOf(v ?? neckline));
  const laid = side === "front" ? sleeve.raglan : mirroredPath(sleeve.raglan);
  const turned = side === "front" ? "" : " scale(-1 1)";
  return {
    body: `${joinedData(v, neckline, raglan, seam, hem, centre)}Z`,
    outline: joinedData(v, neckline, raglan, seam, hem),
    neckline: toPathData(neckline),
    raglan: toPathData(raglan),
    side: toPathData(seam),
    hemBand: bandBelow(garment, hem),
    v: v ? toPathData(v) : "",
    insert: side === "front" ? insertOf(garment) : "",
    sleeve: sleeve.sleeve,
    sleeveOutline: sleeve.sleeveOutline,
    underarm: sleeve.underarm,
    sleeveNeck: sleeve.sleeveNeck,
    cuff: sleeve.cuff,
    lay: `${layFor(raglan, laid)}${turned}`,
    right: startOf(seam).x,
    bottom: startOf(hem).y,
  };
};
