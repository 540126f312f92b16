import type { Fault } from "../drafting/fault.ts";
import { ageNotice } from "../project/ageNotice.ts";
import { ofFile, type Refusal, sentence } from "../project/refusal.ts";
import { summaryCsv } from "../project/summaryCsv.ts";
import type { BatchCommand } from "./arguments.ts";
import { printFont } from "./assets.ts";
import type { Done, Run, Task } from "./batchBody.ts";
import { whenCutOff } from "./cutOff.ts";
import { DONE, type ExitStatus, FAILED, REFUSED } from "./exitStatus.ts";
import { faultOfWriting } from "./fileWords.ts";
import { bodiesFrom, choicesFrom } from "./inputs.ts";
import { draftAll } from "./pool.ts";
import { progressOn, type Voice } from "./progress.ts";
import { clearRun, newRunMark, openFolder, writeInto } from "./writeWhole.ts";

/** What a run comes to. */
type Outcome = {
  /** Bodies that were never tried, because nothing more could be written. */
  readonly untried: number;
  /** Lines of the summary, in the order given. */
  readonly summary: readonly string[];
  readonly refused: readonly Refusal[];
  /** Set where the program itself failed on a body. */
  readonly hasFailed: boolean;
};

/** A body to be drafted, and the row that it came from. */
type Row = { readonly row: number; readonly task: Task };

const faultOfProgram = (what: string): Fault => ({
  field: "program",
  value: what,
  reason: "The program itself failed on this body; that is our mistake, not the body's.",
  do: "Send us this line of the table, and we will put it right.",
});

/** What is refused as a whole comes first. */
const byRow = (a: Refusal, b: Refusal): number => (a.row ?? 0) - (b.row ?? 0);

/** Sorts out what became of each row, in the order given. */
const outcomeOf = (
  rows: readonly Row[],
  done: ReadonlyMap<number, Done>,
  refused: readonly Refusal[],
): Outcome => {
  const all = rows.flatMap(({ row, task }) => {
    const end = done.get(task.place);
    return end === undefined ? [] : [{ row, id: task.body.id, end }];
  });
  const later = all.flatMap(({ row, id, end }): readonly Refusal[] => {
    if (end.kind === "drafted") return [];
    if (end.kind === "ends-run") return [];
    return [{ row, id, ...(end.kind === "failed" ? faultOfProgram(end.what) : end.fault) }];
  });
  const [stop] = all.flatMap(({ end }) => (end.kind === "ends-run" ? [ofFile(end.fault)] : []));
  const tried = all.filter(({ end }) => end.kind !== "ends-run").length;
  return {
    untried: rows.length - tried,
    summary: all.flatMap(({ end }) => (end.kind === "drafted" ? [end.summary] : [])),
    refused: [...(stop ? [stop] : []), ...refused, ...later].sort(byRow),
    hasFailed: all.some(({ end }) => end.kind === "failed"),
  };
};

/** Drafts the bodies; a signal or a full disk ends it with nothing half-written. */
const draftRows = async (rows: readonly Row[], run: Run, voice: Voice) => {
  const done = new Map<number, Done>();
  const progress = progressOn(voice, rows.length, "bodies");
  const tasks = rows.map(({ task }) => task);
  const underWay = draftAll(tasks, run, (end) => {
    done.set(end.place, end);
    progress.at(done.size);
    if (end.kind === "ends-run") void underWay.stop();
  });
  let isCutOff = false;
  const isOver = whenCutOff(async () => {
    isCutOff = true;
    progress.end();
    await underWay.stop();
    clearRun(run.folder, run.mark);
  });
  try {
    await underWay.ended;
  } finally {
    isOver();
    progress.end();
    clearRun(run.folder, run.mark);
  }
  // The signal ends the process; until it does, no list of a run that was cut off may be written.
  if (isCutOff) await new Promise<never>(() => undefined);
  return done;
};

const refusedText = (refused: readonly Refusal[]): string =>
  `${JSON.stringify(refused, null, 2)}\n`;

/** Refusals that are told one by one; of more than these the file is named. */
const TOLD_AT_MOST = 20;

const tell = ({ refused, summary, untried }: Outcome, folder: string, { err }: Voice): void => {
  for (const refusal of refused.slice(0, TOLD_AT_MOST)) {
    const where = refusal.row === null ? "" : `Row ${refusal.row} (${refusal.id || "no id"}): `;
    err(`${where}${sentence(refusal)}\n`);
  }
  const more = refused.length - TOLD_AT_MOST;
  if (more > 0) err(`And ${more} more, in ${folder}/refused.json.\n`);
  if (untried > 0) err(`${untried} bodies were not drafted.\n`);
  err(`${summary.length} drafted, ${refused.length} refused, in ${folder}\n`);
};

/** Writes the two lists of a run and tells what came of it. */
const conclude = (
  outcome: Outcome,
  run: Pick<Run, "folder" | "mark">,
  voice: Voice,
): ExitStatus => {
  const { folder, mark } = run;
  const files = {
    "summary.csv": summaryCsv(outcome.summary),
    "refused.json": refusedText(outcome.refused),
  };
  tell(outcome, folder, voice);
  try {
    writeInto(folder, files, mark);
  } catch (error) {
    voice.err(`${sentence(faultOfWriting(error, folder))}\n`);
    return REFUSED;
  }
  if (outcome.hasFailed) return FAILED;
  return outcome.refused.length > 0 ? REFUSED : DONE;
};

/** `batch`: a table of bodies in, a folder for each of them out. */
export const batch = async (command: BatchCommand, voice: Voice): Promise<ExitStatus> => {
  const { paper, print, out: folder } = command;
  const target = { folder, mark: newRunMark() };
  try {
    openFolder(folder);
  } catch (error) {
    voice.err(`${sentence(faultOfWriting(error, folder))}\n`);
    return REFUSED;
  }
  const choices = choicesFrom(command.choices);
  const bodies = bodiesFrom(command.bodies);
  if ("faults" in choices || "fault" in bodies) {
    const faults = [
      ...("faults" in choices ? choices.faults : []),
      ...("fault" in bodies ? [bodies.fault] : []),
    ];
    const nothing = { untried: 0, summary: [], refused: faults.map(ofFile), hasFailed: false };
    return conclude(nothing, target, voice);
  }
  const rows = bodies.rows.flatMap((row, place) =>
    "read" in row ? [{ row: place + 1, task: { place, body: row.read } }] : [],
  );
  const refused = bodies.rows.flatMap((row) => ("refusal" in row ? [row.refusal] : []));
  const young = ageNotice(rows.map(({ task }) => task.body));
  for (const notice of [...bodies.notices, ...young]) voice.err(`${notice}\n`);
  const font = command.sheets ? printFont() : null;
  const job = { choices: choices.is, block: null, paper, print, date: null, font };
  const done = await draftRows(rows, { ...target, job }, voice);
  return conclude(outcomeOf(rows, done, refused), target, voice);
};
