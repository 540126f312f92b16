import { writeFileSync } from "node:fs";
import type { Path } from "../src/geometry/segment.ts";
import { type Outcome, outcomeOf } from "../tests/support/photo/truth.ts";
import { drafted, halfRing, sampleBodies, sleeveRing } from "../tests/trace/edges/shapes.ts";

/** Brings the pieces of ten bodies back from pictures made by program; writes docs/own-block.md. */
const PIXELS = Number(process.argv[2] ?? 2400);
const BODIES = Number(process.argv[3] ?? 10);
const OUT = new URL("../docs/own-block.md", import.meta.url);

type Row = {
  readonly name: string;
  readonly outcomes: readonly Outcome[];
  readonly failed: number;
};

const worst = (row: Row, of: (outcome: Outcome) => number): number =>
  Math.max(...row.outcomes.map(of));

const tableRow = (row: Row): string => {
  const mm = (of: (outcome: Outcome) => number): string => worst(row, of).toFixed(2);
  const share = (worst(row, ({ length }) => (Number.isNaN(length) ? 0 : length)) * 100).toFixed(2);
  const all = row.outcomes.length + row.failed;
  return `| ${row.name} | ${row.outcomes.length} of ${all} | ${mm((o) => o.middle)} | ${mm((o) => o.within95)} | ${mm((o) => o.worst)} | ${share} % | ${mm((o) => o.foretold)} | ${mm((o) => o.fit)} |`;
};

const bodies = sampleBodies()
  .filter((_, i) => i % 4 === 0)
  .slice(0, BODIES);
const kinds: readonly {
  readonly name: string;
  readonly drawnAs: "line" | "edge";
  readonly wrinkle: number;
  readonly edges: (i: number) => readonly Path[];
}[] = [
  {
    name: "front, pen line",
    drawnAs: "line",
    wrinkle: 0,
    edges: (i) => halfRing(drafted(bodies[i]).front),
  },
  {
    name: "back, cut out",
    drawnAs: "edge",
    wrinkle: 0,
    edges: (i) => halfRing(drafted(bodies[i]).back),
  },
  {
    name: "sleeve, pen line",
    drawnAs: "line",
    wrinkle: 0,
    edges: (i) => sleeveRing(drafted(bodies[i])),
  },
  {
    name: "front, pen line, waves of 2 mm",
    drawnAs: "line",
    wrinkle: 2,
    edges: (i) => halfRing(drafted(bodies[i]).front),
  },
];

const rows: Row[] = [];
for (const [k, { name, drawnAs, wrinkle, edges }] of kinds.entries()) {
  const outcomes: Outcome[] = [];
  let failed = 0;
  for (let i = 0; i < bodies.length; i++) {
    try {
      outcomes.push(
        outcomeOf(edges(i), { seed: 100 * k + i + 1, drawnAs, pixels: PIXELS, wrinkle }),
      );
    } catch (error) {
      failed++;
      console.log(`${name}, body ${i}: ${error instanceof Error ? error.message : String(error)}`);
    }
  }
  rows.push({ name, outcomes, failed });
  console.log(tableRow({ name, outcomes, failed }));
}

const megapixels = ((PIXELS * PIXELS * 4) / 3 / 1e6).toFixed(1);
writeFileSync(
  OUT,
  `# A maker's own block: how true it comes back

Written by \`npx tsx scripts/ownBlockFigures.ts ${PIXELS} ${BODIES}\`. No one drew the pieces: ${BODIES} sample bodies are drafted, each
piece is laid on a table among four of the tool's marks and photographed by program (${megapixels} megapixels, from 1.6 to
1.8 m, leaning up to 25°, a lens that bends up to 3.5 % at its corners, grain of 2 to 4 of 255 greys, light that falls off
by 20 to 50 %, a JPEG of quality 80 to 92; distances between marks read to the whole millimetre) and brought back by the
tool alone: marks found, slant and bending taken away, outline proposed, curves fitted.

Each column is the worst of all bodies. Strays are the distances, in mm, from points of the true outline (one a
millimetre) to the one brought back; length is the edge whose length is out most.

| piece | came back | middle stray | 95th percentile | worst stray | length | error foretold | fit |
| --- | --- | --- | --- | --- | --- | --- | --- |
${rows.map(tableRow).join("\n")}

The promise is 1.0 mm at the 95th percentile and 0.5 % of length for paper that lies flat; waves are for the record.
\`tests/reference/trace/photo.test.ts\` holds it on four pictures at every run. Limits: the lens is told from straight edges
(those of the sheet the piece is drawn on), so the pieces that are cut out are photographed with a straight lens; pictures
of real paper on real tables have not been tried.

A real camera: on two pictures of a printed chessboard that are not ours (\`tests/reference/trace/data/SOURCE.md\`) the
54 corners lie on their grid of 25 mm within 0.5 mm, of 0.7 mm to a pixel, from four corners alone once the lens that was
published with them is taken away; with the lens told from the board's own lines by the tool itself within 0.7 mm.
`,
);
