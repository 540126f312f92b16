import { spawn } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { availableParallelism, tmpdir } from "node:os";
import { join } from "node:path";
import { performance } from "node:perf_hooks";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { bodiesOf } from "./bodies.ts";
import { lookAtTree } from "./processTree.ts";
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

type Ran = {
  readonly seconds: number;
  /** Memory of all processes together, at its most. */
  readonly peak: number;
  /** Processor time of all of them, in seconds, to the last look. */
  readonly worked: number;
};

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/**
 * A folder for one run, removed only when all is measured: ext4 does not use a deleted file's place
 * again for some minutes, and looks at every such place each time that a file is made near it. Runs
 * that cleared away behind themselves took up to twice as long each time.
 */
const folders: string[] = [];
process.on("exit", () => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

const newFolder = (): string => {
  const folder = mkdtempSync(join(tmpdir(), "ribwright-bench-"));
  folders.push(folder);
  return folder;
};

/** One run of the batch command as a maker gives it, timed from outside, its memory watched. */
const runBatch = (count: number, more: readonly string[]): Promise<Ran> => {
  const folder = newFolder();
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
    const worked = new Map<number, number>();
    const watch = setInterval(() => {
      if (child.pid === undefined) return;
      const tree = lookAtTree(child.pid);
      for (const [pid, { seconds }] of tree) worked.set(pid, seconds);
      peak = Math.max(peak, sum([...tree.values()].map(({ bytes }) => bytes)));
    }, SAMPLE_EVERY);
    child.stderr.on("data", (text: Buffer) => {
      said += text.toString();
    });
    child.on("close", (code) => {
      clearInterval(watch);
      const seconds = (performance.now() - began) / 1000;
      if (code === 0) resolve({ seconds, peak, worked: sum([...worked.values()]) });
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
    worked: Math.min(...runs.map((r) => r.worked)),
  };
};

const NO_SHEETS = ["--no-sheets"];
const FEW = 100;
const MANY = 1000;
const MOST = 5000;
const SHEETS = 240;

/** Goals of the issue. */
const WITHOUT_SHEETS = 1000; // bodies a second
const WITH_SHEETS = 50;
const PEAK = 400; // MB
/** Linear: a body of the longest run takes no more than this many times one of the middle run. */
const LINEAR = 1.15;

/** On a busy machine the processor time says what free cores would give. */
const rate = (what: string, count: number, ran: Ran, goal: number): Row => {
  const cores = Math.min(2, availableParallelism());
  return {
    what,
    measured: `${short(count / ran.seconds)} a second`,
    goal: `${short(goal)} a second`,
    isMet: count / ran.seconds >= goal,
    note: `${count} in ${short(ran.seconds)} s, npm and start included; processor time ${short(ran.worked)} s, so ${short((count * cores) / ran.worked)} a second on ${cores} free cores`,
  };
};

/** Many bodies, without sheets: throughput, growth from 100 to 5,000, memory of the whole tree. */
export const benchBatches = async (): Promise<readonly Row[]> => {
  const few = await median3(FEW, NO_SHEETS);
  const many = await median3(MANY, NO_SHEETS);
  const most = await median3(MOST, NO_SHEETS);
  // What a body costs in processor time beyond the start, which every run pays once.
  const middle = (many.worked - few.worked) / (MANY - FEW);
  const late = (most.worked - many.worked) / (MOST - MANY);
  return [
    rate("batch without sheets, written to disk", MOST, most, WITHOUT_SHEETS),
    {
      what: "growth: a body of 1,000 to 5,000 over one of 100 to 1,000",
      measured: short(late / middle),
      goal: `${LINEAR} or less`,
      isMet: late / middle <= LINEAR,
      note: `processor time ${[few, many, most].map(({ worked }) => `${short(worked)} s`).join(", ")}`,
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
  const ran = await median3(SHEETS, []);
  return [
    rate("batch with A4 sheets, SVG and DXF", SHEETS, ran, WITH_SHEETS),
    {
      what: "peak memory with sheets",
      measured: `${short(ran.peak / MB)} MB`,
      goal: "",
      isMet: null,
    },
  ];
};
