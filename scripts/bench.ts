import { benchBatches, benchSheets } from "./bench/batches.ts";
import { benchDrafts } from "./bench/drafts.ts";
import { benchFirstBody } from "./bench/firstBody.ts";
import { benchLengths } from "./bench/lengths.ts";
import { benchOffsets } from "./bench/offsets.ts";
import { benchPatternSize } from "./bench/patternSize.ts";
import { benchPoints } from "./bench/points.ts";
import { printRows, type Row } from "./bench/row.ts";

/**
 * Measures the goals and prints them with what was met. `npm run bench -- drafts batches` runs
 * only these parts. Never a part of verify: times depend on what else the machine does.
 */
type Part = {
  readonly title: string;
  readonly run: () => readonly Row[] | Promise<readonly Row[]>;
};

const PARTS: Readonly<Record<string, Part>> = {
  lengths: { title: "Length of a curve", run: benchLengths },
  points: { title: "Point at a length", run: benchPoints },
  offsets: { title: "Offset of a curve", run: benchOffsets },
  drafts: { title: "Drafting", run: benchDrafts },
  first: { title: "The first body", run: benchFirstBody },
  batches: { title: "Many bodies", run: benchBatches },
  sheets: { title: "Many bodies with sheets", run: benchSheets },
  size: { title: "Size of a pattern", run: benchPatternSize },
};

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !(name in PARTS));
if (unknown.length > 0) {
  console.error(
    `No such part: ${unknown.join(", ")}. The parts are ${Object.keys(PARTS).join(", ")}.`,
  );
  process.exitCode = 2;
} else {
  const rows: Row[] = [];
  for (const [name, { title, run }] of Object.entries(PARTS)) {
    if (wanted.length > 0 && !wanted.includes(name)) continue;
    const measured = await run();
    printRows(title, measured);
    rows.push(...measured);
  }
  const asked = rows.filter(({ isMet }) => isMet !== null);
  const met = asked.filter(({ isMet }) => isMet).length;
  console.log(`\n${met} of ${asked.length} goals met.`);
}
