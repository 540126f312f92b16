import { join } from "node:path";
import type { Fault } from "../drafting/fault.ts";
import type { Body } from "../drafting/measures.ts";
import { filesOf, type Job } from "./bodyFiles.ts";
import { endsRun, faultOfWriting } from "./fileWords.ts";
import { type RunMark, writeFolder } from "./writeWhole.ts";

/** One body of a run: where it stands among those to be drafted. */
export type Task = { readonly place: number; readonly body: Body };

/** What became of it. */
export type Done = { readonly place: number } & (
  | { readonly kind: "drafted"; readonly summary: string }
  | { readonly kind: "refused"; readonly fault: Fault }
  /** Nothing more can be written: the run ends here. */
  | { readonly kind: "ends-run"; readonly fault: Fault }
  /** Our own mistake. */
  | { readonly kind: "failed"; readonly what: string }
);

/** What all bodies of a run share. */
export type Run = { readonly job: Job; readonly folder: string; readonly mark: RunMark };

const write = (place: number, id: string, run: Run, files: Parameters<typeof writeFolder>[2]) => {
  try {
    writeFolder(run.folder, id, files, run.mark);
    return null;
  } catch (error) {
    const fault = faultOfWriting(error, join(run.folder, id));
    return { place, kind: endsRun(error) ? "ends-run" : "refused", fault } as const;
  }
};

/** Drafts one body and writes its folder. Whatever goes wrong with it is told, never thrown. */
export const doBody = async ({ place, body }: Task, run: Run): Promise<Done> => {
  try {
    const { files, summary } = await filesOf(body, run.job);
    return write(place, body.id, run, files) ?? { place, kind: "drafted", summary };
  } catch (error) {
    return { place, kind: "failed", what: error instanceof Error ? error.message : String(error) };
  }
};
