import { sentence } from "../project/refusal.ts";
import { whenCutOff } from "./cutOff.ts";
import { DONE, type ExitStatus, REFUSED } from "./exitStatus.ts";
import { faultOfWriting } from "./fileWords.ts";
import type { Voice } from "./progress.ts";
import { clearRun, type Files, newRunMark, openFolder, writeInto } from "./writeWhole.ts";

/** Writes the files of one run, all or none; says so where they cannot be written. */
export const writeFiles = (folder: string, files: Files, { err }: Voice): ExitStatus => {
  const mark = newRunMark();
  const isOver = whenCutOff(() => clearRun(folder, mark));
  try {
    openFolder(folder);
    writeInto(folder, files, mark);
    return DONE;
  } catch (error) {
    err(`${sentence(faultOfWriting(error, folder))}\n`);
    return REFUSED;
  } finally {
    isOver();
  }
};
