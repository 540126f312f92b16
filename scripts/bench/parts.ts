import { benchBatches, benchSheets } from "./batches.ts";
import { benchDrafts } from "./drafts.ts";
import { benchFirstBody } from "./firstBody.ts";
import { benchHandouts } from "./handouts.ts";
import { benchLengths } from "./lengths.ts";
import { benchOffsets } from "./offsets.ts";
import { benchPatternSize } from "./patternSize.ts";
import { benchPoints } from "./points.ts";
import { printRows, type Row } from "./row.ts";
import { benchTracing } from "./tracing.ts";

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
  handouts: { title: "Handouts of a class", run: benchHandouts },
  tracing: { title: "A block from its picture", run: benchTracing },
};

/** A part that cannot be measured is told, and the others go on. */
const measured = async ({ run }: Part): Promise<readonly Row[]> => {
  try {
    return await run();
  } catch (error) {
    const note = error instanceof Error ? (error.message.split("\n")[0] ?? "") : String(error);
    return [{ what: "could not be measured", measured: "", goal: "", isMet: false, note }];
  }
};

/** Runs the parts named, or all, and prints what was measured against each goal. */
export const runParts = async (wanted: readonly string[]): Promise<void> => {
  const unknown = wanted.filter((name) => !(name in PARTS));
  if (unknown.length > 0) {
    const known = Object.keys(PARTS).join(", ");
    console.error(`No such part: ${unknown.join(", ")}. The parts are ${known}.`);
    process.exitCode = 2;
    return;
  }
  const rows: Row[] = [];
  for (const [name, part] of Object.entries(PARTS)) {
    if (wanted.length > 0 && !wanted.includes(name)) continue;
    const found = await measured(part);
    printRows(part.title, found);
    rows.push(...found);
  }
  const asked = rows.filter(({ isMet }) => isMet !== null);
  const met = asked.filter(({ isMet }) => isMet).length;
  console.log(`\n${met} of ${asked.length} goals met.`);
};
