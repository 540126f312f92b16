import { wantedFaults } from "../export/printFaults.ts";
import { ageNotice } from "../project/ageNotice.ts";
import { sentence } from "../project/refusal.ts";
import { worstVerdict } from "../project/summaryCsv.ts";
import { alsoFiles } from "./alsoFiles.ts";
import type { DraftCommand } from "./arguments.ts";
import { printFont } from "./assets.ts";
import { filesFrom, laidBody } from "./bodyFiles.ts";
import { DONE, type ExitStatus, REFUSED } from "./exitStatus.ts";
import { blockFrom, bodyFrom, bodyOfSizeNamed, choicesFrom } from "./inputs.ts";
import type { Voice } from "./progress.ts";
import { writeFiles } from "./writeFiles.ts";

/** `draft`: one body in, its report and sheets out. */
export const draft = async (command: DraftCommand, voice: Voice): Promise<ExitStatus> => {
  const body =
    "file" in command.body ? bodyFrom(command.body.file) : bodyOfSizeNamed(command.body.size);
  const choices = choicesFrom(command.choices);
  const block = blockFrom(command.block);
  for (const { notices } of [body, choices, block])
    for (const notice of notices) voice.err(`${notice}\n`);
  if ("faults" in body || "faults" in choices || "faults" in block) {
    for (const input of [body, choices, block])
      if ("faults" in input) for (const fault of input.faults) voice.err(`${sentence(fault)}\n`);
    return REFUSED;
  }
  for (const notice of ageNotice([body.is])) voice.err(`${notice}\n`);
  const { paper, print, date, out } = command;
  const job = { choices: choices.is, block: block.is, paper, print, date, font: printFont() };
  const size = "size" in command.body ? body.is.id : undefined;
  const laid = laidBody(body.is, job);
  const missing = wantedFaults(laid.sheets);
  for (const fault of missing) voice.err(`${sentence(fault)}\n`);
  if (missing.length > 0) return REFUSED;
  const { made, files } = await filesFrom(laid, job, size);
  const subject = size === undefined ? made : { ...made, body: { ...made.body, size } };
  const dated = date === null ? {} : { date };
  const more = await alsoFiles(command.also, subject, { font: job.font, ...dated });
  const status = writeFiles(out, { ...files, ...more }, voice);
  if (status !== DONE) return status;
  voice.err(`${made.body.id}: ${worstVerdict(made.checks)}, in ${out}\n`);
  for (const { verdict, message } of made.checks)
    if (verdict !== "sound") voice.err(`${verdict}: ${message}\n`);
  return status;
};
