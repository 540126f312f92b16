import { recheck } from "../project/recheck/recheck.ts";
import { readReport } from "../project/recheck/reportFile.ts";
import { sentence } from "../project/refusal.ts";
import { readJson } from "../project/textFile.ts";
import type { CheckCommand } from "./arguments.ts";
import { DONE, type ExitStatus, REFUSED } from "./exitStatus.ts";
import type { Voice } from "./progress.ts";
import { LARGEST, readInput } from "./readInput.ts";

const reportFrom = (file: string) => {
  const bytes = readInput(file, LARGEST.report);
  if ("fault" in bytes) return bytes;
  const json = readJson(bytes.bytes, file);
  return "fault" in json ? json : readReport(json.json, file);
};

/** `check`: measures a report again and prints what does not hold, one line each. */
export const check = async ({ report: file }: CheckCommand, voice: Voice): Promise<ExitStatus> => {
  const read = reportFrom(file);
  if ("fault" in read) {
    voice.err(`${sentence(read.fault)}\n`);
    return REFUSED;
  }
  const findings = recheck(read.report);
  for (const { where, what } of findings) voice.out(`${where}: ${what}\n`);
  if (findings.length > 0) return REFUSED;
  voice.err(`${file}: all lines, seams, notches and bands hold.\n`);
  return DONE;
};
