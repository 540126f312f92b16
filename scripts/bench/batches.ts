import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { bodiesOf } from "./bodies.ts";
import { treeBytes } from "./processTree.ts";
import { type Row, short } from "./row.ts";
import { median } from "./timing.ts";

const MB = 1_000_000;
const SAMPLE_EVERY = 40; // ms

const tableOf = (count: number): string => {
  const rows = bodiesOf(count).map(({ id, sex, measures }) =>
    [id, sex ?? "", ...MEASURE_IDS.map((measure) => measures[measure] ?? "")].join(","),
  );
  return `${[["id", "sex", ...MEASURE_IDS].join(","), ...rows].join("\n")}\n`;
};

type Ran = { readonly seconds: number; readonly peak: number };

/** One run of the batch command as a maker gives it, timed from outside, its memory watched. */
const runBatch = (count: number, more: readonly string[]): Promise<Ran> => {
  const folder = mkdtempSync(join(tmpdir(), "ribwright-bench-"));
  const table = join(folder, "bodies.csv");
  writeFileSync(table, tableOf(count));
  const args = ["run", "-s", "ribwright", "--", "batch", "--bodies", table];
  return new Promise((resolve, reject) => {
    const began = performance.now();
    const child = spawn("npm", [...args, "--out", join(folder, "out"), ...more], {
      stdio: ["ignore", "ignore", "pipe"],
    });
    let peak = 0;
    let said = "";
    const watch = setInterval(() => {
      if (child.pid !== undefined) peak = Math.max(peak, treeBytes(child.pid));
    }, SAMPLE_EVERY);
    child.stderr.on("data", (text: Buffer) => {
      said += text.toString();
    });
    child.on("close", (code) => {
      clearInterval(watch);
      const seconds = (performance.now() - began) / 1000;
      rmSync(folder, { recursive: true, force: true });
      if (code === 0) resolve({ seconds, peak });
      else reject(new Error(`batch of ${count} ended with ${code}: ${said}`));
    });
  });
};

const median3 = async (count: number, more: readonly string[]): Promise<Ran> => {
  const runs: Ran[] = [];
  for (let i = 0; i < 3; i++) runs.push(await runBatch(count, more));
  return {
    seconds: median(runs.map((r) => r.seconds)),
    peak: Math.max(...runs.map((r) => r.peak)),
  };
};

const NO_SHEETS = ["--no-sheets"];
const FEW = 100;
const MANY = 1000;
const MOST = 5000;
const SHEETS_FEW = 40;
const SHEETS_MANY = 240;

/** Goals of the issue. */
const WITHOUT_SHEETS = 1000; // bodies a second
const WITH_SHEETS = 50;
const PEAK = 400; // MB
/** Linear: a body of the longest run takes no more than this many times one of the middle run. */
const LINEAR = 1.15;

const rate = (what: string, count: number, seconds: number, goal: number): Row => ({
  what,
  measured: `${short(count / seconds)} a second`,
  goal: `${short(goal)} a second`,
  isMet: count / seconds >= goal,
  note: `${count} bodies in ${short(seconds)} s, npm and start included`,
});

/** Many bodies, without sheets: throughput, growth from 100 to 5,000, memory of the whole tree. */
export const benchBatches = async (): Promise<readonly Row[]> => {
  const few = await median3(FEW, NO_SHEETS);
  const many = await median3(MANY, NO_SHEETS);
  const most = await median3(MOST, NO_SHEETS);
  // What a body costs beyond the start, which every run pays once.
  const middle = (many.seconds - few.seconds) / (MANY - FEW);
  const late = (most.seconds - many.seconds) / (MOST - MANY);
  return [
    rate("batch without sheets, written to disk", MOST, most.seconds, WITHOUT_SHEETS),
    {
      what: "growth: a body of 1,000 to 5,000 over one of 100 to 1,000",
      measured: short(late / middle),
      goal: `${LINEAR} or less`,
      isMet: late / middle <= LINEAR,
      note: [few, many, most].map(({ seconds }) => `${short(seconds)} s`).join(", "),
    },
    {
      what: "peak memory of all its processes, 5,000 bodies",
      measured: `${short(most.peak / MB)} MB`,
      goal: `${PEAK} MB`,
      isMet: most.peak <= PEAK * MB,
      note: `100: ${short(few.peak / MB)} MB, 1,000: ${short(many.peak / MB)} MB`,
    },
  ];
};

/** Many bodies with A4 sheets, SVG and DXF. */
export const benchSheets = async (): Promise<readonly Row[]> => {
  const few = await runBatch(SHEETS_FEW, []);
  const many = await median3(SHEETS_MANY, []);
  const steady = (SHEETS_MANY - SHEETS_FEW) / (many.seconds - few.seconds);
  return [
    {
      ...rate("batch with A4 sheets, SVG and DXF", SHEETS_MANY, many.seconds, WITH_SHEETS),
      note: `${short(many.seconds)} s in all; ${short(steady)} a second once under way`,
    },
    {
      what: "peak memory with sheets",
      measured: `${short(many.peak / MB)} MB`,
      goal: "",
      isMet: null,
    },
  ];
};
