import fc from "fast-check";
import { draftRaglanBlock } from "../../src/drafting/block/raglanBlock.ts";
import type { BlockFile, LengthUnit } from "../../src/drafting/blockFile.ts";
import type { Block, BodyEdges, SleeveEdges } from "../../src/drafting/piece.ts";
import { lengthOf } from "../../src/geometry/length.ts";
import { endOf, joined, mapPath, pathOf, startOf, straight } from "../../src/geometry/path.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import {
  along,
  dir,
  minus,
  out,
  type Point,
  plus,
  point,
  stepped,
  times,
} from "../../src/geometry/point.ts";
import { cubic, line, type Path, type Segment } from "../../src/geometry/segment.ts";
import { pointAlong, splitAt } from "../../src/geometry/split.ts";
import { someMeasures } from "../drafting/bodies.ts";
import { choicesOf } from "./choices.ts";
import { DRAFTED } from "./workedGarment.ts";

/**
 * Blocks such as a maker brings: edges of several segments, straights among the curves, hems and
 * wrists that bend, sides that do not agree. The draft never makes such lines.
 */

/** From one point to another, bowed outward by a part of the way (inward below nought). */
const bow = (from: Point, to: Point, by: number): Segment => {
  if (by === 0) return line(from, to);
  const aside = times(out(minus(to, from)), by);
  return cubic(from, plus(along(from, to, 1 / 3), aside), plus(along(from, to, 2 / 3), aside), to);
};

/** An edge redrawn over as many equal parts as there are bows; a bow of nought is a straight. */
export const redrawn = (path: Path, bows: readonly number[]): Path => {
  const whole = lengthOf(path);
  const points = bows.map((_, i) => pointAlong(path, ((i + 1) / bows.length) * whole));
  return pathOf(
    bows.map((by, i) => bow(points[i - 1] ?? startOf(path), points[i] ?? endOf(path), by)),
  );
};

/** An edge cut in three by length; the middle drawn straight, the ends left as they are. */
const inThree = (path: Path): Path => {
  const whole = lengthOf(path);
  const [first, rest] = splitAt(path, whole / 3);
  const [middle, last] = splitAt(rest, whole / 3);
  return joined(first, straight(startOf(middle), endOf(middle)), last);
};

const bodyWith = (body: BodyEdges, edge: (path: Path, name: string) => Path): BodyEdges => {
  const neckline = edge(body.neckline, "neckline");
  const hem = edge(body.hem, "hem");
  return {
    neckline,
    raglan: edge(body.raglan, "raglan"),
    side: edge(body.side, "side"),
    hem,
    centre: straight(endOf(hem), startOf(neckline)),
  };
};

const sleeveWith = (
  sleeve: SleeveEdges,
  edge: (path: Path, name: string) => Path,
): SleeveEdges => ({
  neckline: edge(sleeve.neckline, "neckline"),
  raglanFront: edge(sleeve.raglanFront, "raglanFront"),
  underarmFront: edge(sleeve.underarmFront, "underarmFront"),
  wrist: edge(sleeve.wrist, "wrist"),
  underarmBack: edge(sleeve.underarmBack, "underarmBack"),
  raglanBack: edge(sleeve.raglanBack, "raglanBack"),
});

type EdgeMap = (path: Path, name: string) => Path;

export const mapBlock = ({ front, back, sleeve }: Block, edge: EdgeMap): Block => ({
  front: bodyWith(front, edge),
  back: bodyWith(back, edge),
  sleeve: sleeveWith(sleeve, edge),
});

/** Every edge cut in three with a straight in its middle. */
export const IN_THREE: Block = mapBlock(DRAFTED, inThree);

/** A shirt-tail: the hem dips from the side to the fold, square to the fold. */
const tail = (body: BodyEdges, by: number): BodyEdges => {
  const { x, y } = startOf(body.hem);
  const fold = point(0, y + by);
  const hem: Path = [cubic(point(x, y), point(0.7 * x, y), point(0.4 * x, y + by), fold)];
  return { ...body, hem, centre: straight(fold, startOf(body.neckline)) };
};

/** Hems that dip, by more behind; a wrist that bows; underarms hollowed by unlike amounts. */
export const CURVED: Block = {
  front: tail(DRAFTED.front, 14),
  back: tail(DRAFTED.back, 22),
  sleeve: {
    ...DRAFTED.sleeve,
    underarmFront: redrawn(DRAFTED.sleeve.underarmFront, [-0.02]),
    wrist: redrawn(DRAFTED.sleeve.wrist, [0.03, -0.02]),
    underarmBack: redrawn(DRAFTED.sleeve.underarmBack, [0, -0.03, 0]),
  },
};

const lowered = (path: Path, by: number): Path =>
  mapPath(path, ({ x, y }) => point(x, y > 400 ? y + by : y));

/** The back's side seam comes out this much longer than the front's. */
export const UNEQUAL_BY = 8;
export const UNEQUAL: Block = {
  ...DRAFTED,
  back: bodyWith(DRAFTED.back, (path) => lowered(path, UNEQUAL_BY)),
};

/** Each with a name for a test's title. */
export const OWN_BLOCKS: readonly (readonly [string, Block])[] = [
  ["the drafted block", DRAFTED],
  ["a block of edges in three parts, straights in the middle", IN_THREE],
  ["a block with curved hems, wrist and underarms", CURVED],
  ["a block with sides of unlike length", UNEQUAL],
];

const someBows = fc.array(
  fc.oneof(
    fc.constant(0),
    fc.integer({ min: -60, max: 60 }).map((n) => n / 1000),
  ),
  { minLength: 1, maxLength: 4 },
);

/** A drafted block whose edges were all redrawn with bows and straights of their own. */
export const someOwnBlock: fc.Arbitrary<Block> = fc
  .tuple(someMeasures, fc.array(someBows, { minLength: 14, maxLength: 14 }))
  .map(([measures, bows]) => {
    const { block } = draftRaglanBlock(measures, choicesOf().fit);
    let i = 0;
    const next = (): readonly number[] => bows[i++] ?? [0];
    return mapBlock(block, (path) => redrawn(path, next()));
  });

const MM_PER: Readonly<Record<LengthUnit, number>> = { mm: 1, cm: 10, in: 25.4 };

/** A block as its file has it, in a unit. */
export const fileOf = (
  { front, back, sleeve }: Block,
  unit: LengthUnit = "mm",
  allowances?: BlockFile["allowances"],
): BlockFile => {
  const text = (path: Path): string =>
    toPathData(mapPath(path, ({ x, y }) => point(x / MM_PER[unit], y / MM_PER[unit])));
  const body = (edges: BodyEdges) => ({
    neckline: text(edges.neckline),
    raglan: text(edges.raglan),
    side: text(edges.side),
    hem: text(edges.hem),
    centre: text(edges.centre),
  });
  const { neckline, raglanFront, underarmFront, wrist, underarmBack, raglanBack } = sleeve;
  const pieces = {
    front: body(front),
    back: body(back),
    sleeve: {
      neckline: text(neckline),
      raglanFront: text(raglanFront),
      underarmFront: text(underarmFront),
      wrist: text(wrist),
      underarmBack: text(underarmBack),
      raglanBack: text(raglanBack),
    },
  };
  return { unit, pieces, ...(allowances ? { allowances } : {}) };
};

/** The drafted block, its body raglans redrawn to reach the underarm this far off level (down is
 * positive), the sleeve as it was. */
export const steepBlock = (slope: { readonly front: number; readonly back: number }): Block => {
  const half = (body: BodyEdges, degrees: number): BodyEdges => {
    const end = endOf(body.raglan);
    const way = dir((degrees * Math.PI) / 180);
    const raglan = cubic(startOf(body.raglan), point(150, 110), stepped(end, way, -60), end);
    return { ...body, raglan: [raglan] };
  };
  return {
    ...DRAFTED,
    front: half(DRAFTED.front, slope.front),
    back: half(DRAFTED.back, slope.back),
  };
};
