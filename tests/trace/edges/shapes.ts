import { readFileSync } from "node:fs";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";
import { MEASURE_IDS, type Measures } from "../../../src/drafting/measures.ts";
import type { Block, BodyEdges } from "../../../src/drafting/piece.ts";
import { joined, mapPath, mirroredPath, reversed } from "../../../src/geometry/path.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { WORKED_EXAMPLE } from "../../drafting/bodies.ts";

/** The 40 sample bodies of the survey's reference. */
export const sampleBodies = (): readonly Measures[] => {
  const file = new URL("../../reference/data/sample-bodies.csv", import.meta.url);
  const [head = "", ...rows] = readFileSync(file, "utf8").trim().split("\n");
  // The third column is text and may hold commas in quotation marks.
  const cells = (row: string) => row.replace(/"[^"]*"/u, "why").split(",");
  const columns = cells(head);
  return rows.map((row) => {
    const values = cells(row);
    const of = (id: string) => Number(values[columns.indexOf(id)]);
    return { ...WORKED_EXAMPLE, ...Object.fromEntries(MEASURE_IDS.map((id) => [id, of(id)])) };
  });
};

export const drafted = (body: Measures = WORKED_EXAMPLE): Block =>
  draftRaglanBlock(body, DEFAULT_CHOICES.fit).block;

export const halfRing = ({ neckline, raglan, side, hem, centre }: BodyEdges): readonly Path[] => [
  neckline,
  raglan,
  side,
  hem,
  centre,
];

/** A half unfolded: neckline and hem joined across the fold. */
export const wholeRing = ({ neckline, raglan, side, hem }: BodyEdges): readonly Path[] => {
  const over = (path: Path): Path => reversed(mirroredPath(path));
  return [
    joined(over(neckline), neckline),
    raglan,
    side,
    joined(hem, over(hem)),
    over(side),
    over(raglan),
  ];
};

export const sleeveRing = ({ sleeve }: Block): readonly Path[] => [
  sleeve.neckline,
  sleeve.raglanFront,
  sleeve.underarmFront,
  sleeve.wrist,
  sleeve.underarmBack,
  sleeve.raglanBack,
];

/** Laid anywhere on the table: turned, moved, and begun at another corner. */
export const laid = (ring: readonly Path[], angle: number, begun = 2): readonly Path[] => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const moved = ring.map((path) =>
    mapPath(path, ({ x, y }) => ({ x: c * x - s * y + 310, y: s * x + c * y - 77 })),
  );
  return [...moved.slice(begun), ...moved.slice(0, begun)];
};

/** The other side of the paper up. */
export const flipped = (ring: readonly Path[]): readonly Path[] =>
  [...ring].reverse().map((path) => reversed(mirroredPath(path)));
