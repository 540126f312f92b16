import { lengthOf } from "../geometry/length.ts";
import { endOf, startOf } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import {
  type Allowances,
  type Side,
  sidesOfBody,
  sidesOfInsert,
  sidesOfSleeve,
} from "./allowances.ts";
import { cutLineOf } from "./cutLine.ts";
import type { Measured } from "./finishedPieces.ts";
import type { BodyEdges, DrawnEdge, InsertEdges, Notch, Piece, SleeveEdges } from "./piece.ts";
import { type Growth, grown } from "./shrinkage.ts";

/** A piece as it is cut, and the sides that its cut line was drawn from. */
export type DrawnPiece = { readonly piece: Piece; readonly sides: readonly Side[] };

/** How a piece of body cloth is drawn from its finished lines. */
export type Drawing = {
  readonly growth: Growth;
  readonly allowances: Allowances;
  /** The cloth is turned: its grain lies across the piece. */
  readonly turned: boolean;
};

type Grain = Piece["grain"];

/** A finished edge with its length as drawn. */
const drawn = (name: DrawnEdge["name"], path: Path, finished: Measured): DrawnEdge => ({
  name,
  path,
  length: path === finished.path ? finished.length : lengthOf(path),
});

/** Notches moved with the growth of their edges (method 4, "Notches"). */
const movedNotches = (
  notches: readonly Notch[],
  edges: readonly DrawnEdge[],
  finished: (name: DrawnEdge["name"]) => Mm,
): readonly Notch[] =>
  notches.map((notch) => {
    const { edge, at, seam } = notch;
    const own = edges.find(({ name }) => name === edge);
    const before = finished(edge);
    return own && before > 0 ? { edge, at: (at * own.length) / before, seam } : notch;
  });

type Named = readonly (readonly [DrawnEdge["name"], Measured])[];

const drawEdges = (named: Named, paths: Partial<Record<DrawnEdge["name"], Path>>) =>
  named.map(([name, finished]) => drawn(name, paths[name] ?? finished.path, finished));

const finishedLength =
  (named: Named) =>
  (name: DrawnEdge["name"]): Mm =>
    named.find(([edge]) => edge === name)?.[1].length ?? 0;

type Plan = {
  readonly name: Piece["name"];
  readonly named: Named;
  readonly paths: Partial<Record<DrawnEdge["name"], Path>>;
  readonly sides: readonly Side[];
  readonly notches: readonly Notch[];
  readonly grain: Grain;
  readonly onFold: Piece["onFold"];
  readonly cut: number;
};

const finish = (plan: Plan): DrawnPiece => {
  const { name, named, sides, grain, onFold, cut } = plan;
  const edges = drawEdges(named, plan.paths);
  const notches = movedNotches(plan.notches, edges, finishedLength(named));
  const cutLine = cutLineOf(sides, onFold !== null);
  return { piece: { name, edges, cutLine, onFold, cut, grain, notches }, sides };
};

const upright = (x: Mm, top: Mm, bottom: Mm): Grain => ({
  from: point(x, top),
  to: point(x, bottom),
});
const across = (y: Mm, left: Mm, right: Mm): Grain => ({
  from: point(left, y),
  to: point(right, y),
});

/** Where the arrow stands on a front or back, as parts of its width and side. */
const bodyGrain = (edges: BodyEdges, turned: boolean): Grain => {
  const underarm = startOf(edges.side);
  const side = endOf(edges.side).y - underarm.y;
  return turned
    ? across(underarm.y + 0.35 * side, 0.2 * underarm.x, 0.8 * underarm.x)
    : upright(0.36 * underarm.x, underarm.y, underarm.y + 0.75 * side);
};

const sleeveGrain = (edges: SleeveEdges, turned: boolean): Grain => {
  const cap = startOf(edges.raglanFront).y;
  const long = endOf(edges.underarmFront).y;
  const wide = startOf(edges.underarmFront).x;
  return turned ? across(0.2 * long, -0.55 * wide, 0.55 * wide) : upright(0, 0.4 * cap, 0.6 * long);
};

const insertGrain = (edges: InsertEdges, turned: boolean): Grain => {
  const top = startOf(edges.right);
  const deep = endOf(edges.right).y - top.y;
  return turned
    ? across(top.y + 0.3 * deep, -0.5 * top.x, 0.5 * top.x)
    : upright(0, top.y + 0.25 * deep, top.y + 0.7 * deep);
};

type MeasuredBody = {
  readonly [K in Exclude<keyof BodyEdges, "v">]: Measured;
} & { readonly v: Measured | null };

/** A front or back, on the fold, as it is cut (method 3.6, 4). Lengths in mm. */
export const drawBodyPiece = (
  name: "front" | "back",
  body: MeasuredBody,
  notches: readonly Notch[],
  drawing: Drawing,
): DrawnPiece => {
  const grow = ({ path }: Measured): Path => grown(path, drawing.growth);
  const whole: BodyEdges = {
    neckline: grow(body.neckline),
    raglan: grow(body.raglan),
    side: grow(body.side),
    hem: grow(body.hem),
    centre: grow(body.centre),
  };
  const edges = body.v ? { v: grow(body.v), ...whole } : whole;
  const named: Named = [
    ...(body.v ? ([["v", body.v]] as const) : []),
    ["neckline", body.neckline],
    ["raglan", body.raglan],
    ["side", body.side],
    ["hem", body.hem],
    ["centre", body.centre],
  ];
  return finish({
    name,
    named,
    paths: edges,
    sides: sidesOfBody(edges, drawing.allowances),
    notches,
    grain: bodyGrain(edges, drawing.turned),
    onFold: "centre",
    cut: 1,
  });
};

/** The sleeve, whole, as it is cut. Lengths in mm. */
export const drawSleevePiece = (
  sleeve: { readonly [K in keyof SleeveEdges]: Measured },
  notches: readonly Notch[],
  drawing: Drawing,
): DrawnPiece => {
  const grow = ({ path }: Measured): Path => grown(path, drawing.growth);
  const edges: SleeveEdges = {
    neckline: grow(sleeve.neckline),
    raglanFront: grow(sleeve.raglanFront),
    underarmFront: grow(sleeve.underarmFront),
    wrist: grow(sleeve.wrist),
    underarmBack: grow(sleeve.underarmBack),
    raglanBack: grow(sleeve.raglanBack),
  };
  return finish({
    name: "sleeve",
    named: [
      ["neckline", sleeve.neckline],
      ["raglanFront", sleeve.raglanFront],
      ["underarmFront", sleeve.underarmFront],
      ["wrist", sleeve.wrist],
      ["underarmBack", sleeve.underarmBack],
      ["raglanBack", sleeve.raglanBack],
    ],
    paths: edges,
    sides: sidesOfSleeve(edges, drawing.allowances),
    notches,
    grain: sleeveGrain(edges, drawing.turned),
    onFold: null,
    cut: 2,
  });
};

/** The V-insert, whole, as it is cut. Lengths in mm. */
export const drawInsertPiece = (
  insert: { readonly [K in keyof InsertEdges]: Measured },
  notches: readonly Notch[],
  drawing: Drawing,
): DrawnPiece => {
  const grow = ({ path }: Measured): Path => grown(path, drawing.growth);
  const edges: InsertEdges = {
    top: grow(insert.top),
    right: grow(insert.right),
    left: grow(insert.left),
  };
  return finish({
    name: "vInsert",
    named: [
      ["top", insert.top],
      ["right", insert.right],
      ["left", insert.left],
    ],
    paths: edges,
    sides: sidesOfInsert(edges, drawing.allowances),
    notches,
    grain: insertGrain(edges, drawing.turned),
    onFold: null,
    cut: 1,
  });
};
