import { endingAt, startingAt } from "../geometry/curve.ts";
import { boundsOf } from "../geometry/outline.ts";
import { endOf, lastOf, pathOf, startOf } from "../geometry/path.ts";
import { type Point, point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import { EDGE_GAP } from "../geometry/tolerance.ts";
import { MM_PER_CM, MM_PER_INCH, type Mm } from "../geometry/units.ts";
import { withCentre } from "./alterations/altered.ts";
import { framed } from "./alterations/endSleeve.ts";
import type { BlockFile, LengthUnit, OwnAllowances } from "./blockFile.ts";
import type { Fault } from "./fault.ts";
import { insetEdges } from "./inset.ts";
import { insetFault } from "./insetFault.ts";
import type { Block, BodyEdges, SleeveEdges } from "./piece.ts";
import { faultAt, type Ring, readRing } from "./ring.ts";
import { asMm } from "./words.ts";

/** A maker's own block, or the first thing that is wrong with it. */
export type OwnBlockRead = { readonly block: Block } | { readonly fault: Fault };

type Read<Thing> = { readonly read: Thing } | { readonly fault: Fault };

const MM_PER: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: MM_PER_CM, in: MM_PER_INCH };

const BODY_ORDER = ["neckline", "raglan", "side", "hem", "centre"] as const;
const SLEEVE_ORDER = [
  "neckline",
  "raglanFront",
  "underarmFront",
  "wrist",
  "underarmBack",
  "raglanBack",
] as const;

/** The path of an edge that a sound ring has. */
const edgeIn = <Name extends string>(ring: Ring<Name>, wanted: Name): Path => {
  const found = ring.find(([name]) => name === wanted);
  if (!found) throw new Error(`A ring that was read has no edge ${wanted}.`);
  return found[1];
};

/** The edges of a piece as a ring. */
const ringOf = <Name extends string>(
  order: readonly Name[],
  edges: Readonly<Record<Name, Path>>,
): Ring<Name> => order.map((name) => [name, edges[name]]);

const onFold = ({ y }: Point): Point => point(0, y);
const begunAt = (path: Path, start: Point): Path =>
  pathOf([startingAt(path[0], start), ...path.slice(1)]);
const endedAt = (path: Path, end: Point): Path =>
  pathOf([...path.slice(0, -1), endingAt(lastOf(path), end)]);

/** Both ends of the fold lie on x = 0 within 0.5 mm, and are set there. */
const foldFault = (piece: string, edges: Omit<BodyEdges, "centre">): Fault | null => {
  const ends = [
    ["neckline", startOf(edges.neckline).x],
    ["hem", endOf(edges.hem).x],
  ] as const;
  const off = ends.find(([, x]) => !(Math.abs(x) <= EDGE_GAP));
  if (!off) return null;
  const [name, x] = off;
  return faultAt(
    `${piece}.${name}`,
    asMm(x),
    `${piece}.${name} meets the fold at x = ${asMm(x)}; the fold is x = 0, and the limit is ${asMm(EDGE_GAP)}.`,
    "Move the piece so that its centre line lies on x = 0.",
  );
};

/** The edges of a half lie on its own side of the fold: what lies over it would be cut twice. */
const overFold = (piece: string, edges: BodyEdges): Fault | null => {
  for (const [name, path] of ringOf(BODY_ORDER, edges)) {
    const over = -boundsOf(path).left;
    if (over <= EDGE_GAP) continue;
    return faultAt(
      `${piece}.${name}`,
      asMm(over),
      `${piece}.${name} reaches ${asMm(over)} over the fold at x = 0; the limit is ${asMm(EDGE_GAP)}.`,
      "Draw it on its own side of the fold.",
    );
  }
  return null;
};

const setOnFold = (edges: Omit<BodyEdges, "centre">): Omit<BodyEdges, "centre"> => ({
  ...edges,
  neckline: begunAt(edges.neckline, onFold(startOf(edges.neckline))),
  hem: endedAt(edges.hem, onFold(endOf(edges.hem))),
});

/** Cut lines of a front or back brought back to its sew lines. */
const insetBody = (
  edges: Omit<BodyEdges, "centre">,
  a: OwnAllowances,
): Omit<BodyEdges, "centre"> => {
  const [neckline, raglan, side, hem] = insetEdges(
    [
      { path: edges.neckline, allowance: a.neckline },
      { path: edges.raglan, allowance: a.raglan },
      { path: edges.side, allowance: a.side },
      { path: edges.hem, allowance: a.hem },
    ],
    true,
  );
  return {
    neckline: neckline ?? edges.neckline,
    raglan: raglan ?? edges.raglan,
    side: side ?? edges.side,
    hem: hem ?? edges.hem,
  };
};

const allowanceOf = (name: (typeof SLEEVE_ORDER)[number], a: OwnAllowances): Mm => {
  if (name === "neckline") return a.neckline;
  if (name === "wrist") return a.hem;
  return name.startsWith("raglan") ? a.raglan : a.underarm;
};

const sleeveOf = (edge: (name: (typeof SLEEVE_ORDER)[number]) => Path): SleeveEdges => ({
  neckline: edge("neckline"),
  raglanFront: edge("raglanFront"),
  underarmFront: edge("underarmFront"),
  wrist: edge("wrist"),
  underarmBack: edge("underarmBack"),
  raglanBack: edge("raglanBack"),
});

const insetSleeve = (edges: SleeveEdges, a: OwnAllowances): SleeveEdges => {
  const inset = insetEdges(
    SLEEVE_ORDER.map((name) => ({ path: edges[name], allowance: allowanceOf(name, a) })),
    false,
  );
  return sleeveOf((name) => inset[SLEEVE_ORDER.indexOf(name)] ?? edges[name]);
};

const readBody = (piece: "front" | "back", file: BlockFile): Read<BodyEdges> => {
  const found = readRing(piece, BODY_ORDER, file.pieces[piece], MM_PER[file.unit]);
  if ("fault" in found) return found;
  const edge = (name: (typeof BODY_ORDER)[number]): Path => edgeIn(found.ring, name);
  const open = {
    neckline: edge("neckline"),
    raglan: edge("raglan"),
    side: edge("side"),
    hem: edge("hem"),
  };
  const fault = foldFault(piece, open);
  if (fault) return { fault };
  const folded = setOnFold(open);
  const cut = withCentre(folded);
  const over = overFold(piece, cut);
  if (over) return { fault: over };
  if (!file.allowances) return { read: cut };
  const sewn = withCentre(setOnFold(insetBody(folded, scaled(file))));
  const rings = [ringOf(BODY_ORDER, cut), ringOf(BODY_ORDER, sewn)] as const;
  const eaten = insetFault(piece, ...rings) ?? overFold(piece, sewn);
  return eaten ? { fault: eaten } : { read: sewn };
};

/** The allowances of a block file in mm. */
const scaled = ({ unit, allowances: a }: BlockFile): OwnAllowances => {
  const by = MM_PER[unit];
  return {
    raglan: (a?.raglan ?? 0) * by,
    side: (a?.side ?? 0) * by,
    underarm: (a?.underarm ?? 0) * by,
    hem: (a?.hem ?? 0) * by,
    neckline: (a?.neckline ?? 0) * by,
  };
};

const readSleeve = (file: BlockFile): Read<SleeveEdges> => {
  const found = readRing("sleeve", SLEEVE_ORDER, file.pieces.sleeve, MM_PER[file.unit]);
  if ("fault" in found) return found;
  const sleeve = sleeveOf((name) => edgeIn(found.ring, name));
  if (!file.allowances) return { read: framed(sleeve) };
  const sewn = insetSleeve(sleeve, scaled(file));
  const eaten = insetFault("sleeve", ringOf(SLEEVE_ORDER, sleeve), ringOf(SLEEVE_ORDER, sewn));
  return eaten ? { fault: eaten } : { read: framed(sewn) };
};

/**
 * The maker's own block from its file: lines read, brought to mm, joined and found sound, cut lines
 * brought back to sew lines (method 2.7). Nothing else is put right; the checks tell the rest.
 */
export const readOwnBlock = (file: BlockFile): OwnBlockRead => {
  const front = readBody("front", file);
  if ("fault" in front) return front;
  const back = readBody("back", file);
  if ("fault" in back) return back;
  const sleeve = readSleeve(file);
  if ("fault" in sleeve) return sleeve;
  return { block: { front: front.read, back: back.read, sleeve: sleeve.read } };
};
