import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { buildSync } from "esbuild";
import { type Row, short } from "./row.ts";
import { median } from "./timing.ts";

const RUNS = 11;
const GOAL = 40; // ms

/** The first body of a process, from the program's being loaded to the text of its report. */
export const benchFirstBody = (): readonly Row[] => {
  const folder = mkdtempSync(join(tmpdir(), "ribwright-bench-"));
  try {
    // Put together as the command line is, so that loading it is the same work.
    const outfile = join(folder, "first.mjs");
    buildSync({
      entryPoints: ["scripts/bench/firstBodyProgram.ts"],
      outfile,
      bundle: true,
      platform: "node",
      target: "node20",
      format: "esm",
      external: ["jspdf"],
      logLevel: "silent",
    });
    const times = Array.from({ length: RUNS }, () =>
      Number(execFileSync(process.execPath, [outfile], { encoding: "utf8" })),
    );
    const measured = median(times);
    return [
      {
        what: "the first body of a process, once loaded, to its report",
        measured: `${short(measured)} ms`,
        goal: `${GOAL} ms`,
        isMet: measured <= GOAL,
        note: `median of ${RUNS} fresh processes`,
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
};
