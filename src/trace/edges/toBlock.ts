import type { BlockFile, OwnAllowances } from "../../drafting/blockFile.ts";
import { BLOCK } from "../../drafting/data/blockConstants.ts";
import { readOwnBlock } from "../../drafting/ownBlock.ts";
import type { Block } from "../../drafting/piece.ts";
import { asMm } from "../../drafting/words.ts";
import { endOf, mapPath, startOf, straight } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { apart, type Point, point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { faulty, found, type Told } from "../told.ts";
import { type Folded, foldWhole, type HalfEdges } from "./foldWhole.ts";
import type { NamedOutline } from "./proposeNames.ts";
import type { CornerRing } from "./ring.ts";

/** The three outlines of a block, each named. */
export type NamedBlock = {
  readonly front: NamedOutline;
  readonly back: NamedOutline;
  readonly sleeve: NamedOutline;
  /** Given where the outlines are cut lines: they are brought back to the sewing lines. */
  readonly allowances: OwnAllowances | null;
};

/** A block brought in, and what had to be assumed for it. */
export type BroughtIn = {
  readonly block: Block;
  /** One sentence each. */
  readonly assumed: readonly string[];
};

/** A front whose neckline is not deeper than the back's by this much may be the back. Ours. */
const DEEPER: Mm = 5;

type Moved = { readonly edges: HalfEdges; readonly said: readonly string[] };

/** A half with its centre upright on x = 0, its neckline's centre at y = 0. */
const upright = (ring: CornerRing): HalfEdges | null => {
  const [neckline, raglan, side, hem, centre] = ring;
  if (!neckline || !raglan || !side || !hem || !centre) return null;
  const [top, foot] = [startOf(neckline), startOf(centre)];
  const size = apart(top, foot) || 1;
  const [c, s] = [(foot.y - top.y) / size, (foot.x - top.x) / size];
  // Down the centre line becomes straight down; out from it stays to the right.
  const move = ({ x, y }: Point): Point => ({
    x: c * (x - top.x) - s * (y - top.y),
    y: s * (x - top.x) + c * (y - top.y),
  });
  const of = (path: Path): Path => mapPath(path, move);
  return { neckline: of(neckline), raglan: of(raglan), side: of(side), hem: of(hem) };
};

const farthestApart = ({ apart: by }: Folded): Mm =>
  Math.max(by.neckline, by.raglan, by.side, by.hem);

const halfOf = (named: NamedOutline): Told<Moved> => {
  if (named.isWhole) {
    const folded = foldWhole(named.ring);
    if ("fault" in folded) return folded;
    const said = `The whole ${named.piece} was folded on its middle; its halves lay up to ${asMm(farthestApart(folded.found))} apart, and their mean was taken.`;
    return found({ edges: folded.found.edges, said: [said] });
  }
  const edges = upright(named.ring);
  if (edges) return found({ edges, said: [] });
  return faulty(
    named.piece,
    `${named.ring.length} edges`,
    `The ${named.piece} has ${named.ring.length} edges; a half has 5: neckline, raglan, side, hem and centre.`,
    "Mark its five corners.",
  );
};

const lowered = (edges: HalfEdges, by: Mm): HalfEdges => {
  const of = (path: Path): Path => mapPath(path, ({ x, y }) => ({ x, y: y + by }));
  return {
    neckline: of(edges.neckline),
    raglan: of(edges.raglan),
    side: of(edges.side),
    hem: of(edges.hem),
  };
};

const textsOf = ({ neckline, raglan, side, hem }: HalfEdges) => ({
  neckline: toPathData(neckline),
  raglan: toPathData(raglan),
  side: toPathData(side),
  hem: toPathData(hem),
  centre: toPathData(straight(point(0, endOf(hem).y), point(0, startOf(neckline).y))),
});

/** The sleeve with its underarm points level and its centre line half way between them. */
const sleeveTexts = (ring: CornerRing): BlockFile["pieces"]["sleeve"] | null => {
  const [neckline, raglanFront, underarmFront, wrist, underarmBack, raglanBack] = ring;
  if (!neckline || !raglanFront || !underarmFront || !wrist || !underarmBack || !raglanBack)
    return null;
  const [front, back] = [startOf(underarmFront), endOf(underarmBack)];
  const size = apart(front, back) || 1;
  const [c, s] = [(front.x - back.x) / size, (front.y - back.y) / size];
  const middle = { x: (front.x + back.x) / 2, y: (front.y + back.y) / 2 };
  const of = (path: Path): string =>
    toPathData(
      mapPath(path, ({ x, y }) => ({
        x: c * (x - middle.x) + s * (y - middle.y),
        y: -s * (x - middle.x) + c * (y - middle.y),
      })),
    );
  return {
    neckline: of(neckline),
    raglanFront: of(raglanFront),
    underarmFront: of(underarmFront),
    wrist: of(wrist),
    underarmBack: of(underarmBack),
    raglanBack: of(raglanBack),
  };
};

const depthOf = ({ neckline }: HalfEdges): Mm => startOf(neckline).y - endOf(neckline).y;

const swapped = (front: Mm, back: Mm): Told<never> =>
  faulty(
    "front",
    asMm(front),
    `The front's neckline is ${asMm(front)} deep and the back's ${asMm(back)}: front and back seem to be taken for each other.`,
    "Name the piece with the deeper neckline the front.",
  );

const LEVELS =
  "The two halves were laid so that their underarms are level: a block by itself does not say how front and back stand to each other.";
const NAPE = `The nape was taken to lie ${asMm(BLOCK.backDrop)} above the back's neckline at the centre, as the drafted block has it.`;

/**
 * A block from its three named outlines, in the contract's frames: halves with the fold on x = 0,
 * whole ones folded, front and back level at the underarm, the sleeve level and centred; cut lines
 * brought back to sewing lines. Read and checked as any own block is. Front and back taken for each
 * other are told.
 */
export const toBlock = ({ front, back, sleeve, allowances }: NamedBlock): Told<BroughtIn> => {
  const one = halfOf(front);
  if ("fault" in one) return one;
  const other = halfOf(back);
  if ("fault" in other) return other;
  const [frontEdges, backEdges] = [one.found.edges, other.found.edges];
  if (!(depthOf(frontEdges) > depthOf(backEdges) + DEEPER)) {
    return swapped(depthOf(frontEdges), depthOf(backEdges));
  }
  const sleeveEdges = sleeveTexts(sleeve.ring);
  if (!sleeveEdges) {
    return faulty(
      "sleeve",
      `${sleeve.ring.length} edges`,
      `The sleeve has ${sleeve.ring.length} edges; it must have 6: neckline, two raglans, two underarms and wrist.`,
      "Mark its six corners.",
    );
  }
  const lower = allowances ? BLOCK.backDrop - allowances.neckline : BLOCK.backDrop;
  const placedBack = lowered(backEdges, lower - startOf(backEdges.neckline).y);
  const level = endOf(placedBack.raglan).y - endOf(frontEdges.raglan).y;
  const read = readOwnBlock({
    unit: "mm",
    pieces: {
      front: textsOf(lowered(frontEdges, level)),
      back: textsOf(placedBack),
      sleeve: sleeveEdges,
    },
    ...(allowances ? { allowances } : {}),
  });
  if ("fault" in read) return read;
  return found({
    block: read.block,
    assumed: [...one.found.said, ...other.found.said, NAPE, LEVELS],
  });
};
