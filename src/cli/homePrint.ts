import { parse } from "node:path";
import type { Body } from "../drafting/measures.ts";
import { guidePdf } from "../export/guidePdf.ts";
import { classPdf, handoutPdf } from "../export/handout.ts";
import type { PrintOptions } from "../export/printPage.ts";
import { ageNotice } from "../project/ageNotice.ts";
import { readClass } from "../project/classFile.ts";
import { type Made, make } from "../project/make.ts";
import { sentence } from "../project/refusal.ts";
import { readText } from "../project/textFile.ts";
import { printFont } from "./assets.ts";
import { type ExitStatus, REFUSED } from "./exitStatus.ts";
import type { BodyWanted, GuideCommand, HandoutCommand } from "./homeCommands.ts";
import { blockFrom, bodyFrom, bodyOfSizeNamed, choicesFrom } from "./inputs.ts";
import type { Voice } from "./progress.ts";
import { LARGEST, readInput } from "./readInput.ts";
import { writeFiles } from "./writeFiles.ts";

/** A younger wearer's guide forbids cords. Trade facts: EN 14682 covers clothing to 14 years. */
const CHILD_UNDER = 14;

const printOptions = ({ paper, language, date }: GuideCommand | HandoutCommand): PrintOptions => ({
  font: printFont(),
  paper,
  language,
  ...(date === null ? {} : { date }),
});

type Drafted = { readonly made: Made; readonly body: Body };
type Files = { readonly choices: string | null; readonly block: string | null };

/** One body drafted; or null, and everything that is wrong with it is said. */
const draftedFrom = (wanted: BodyWanted, files: Files, { err }: Voice): Drafted | null => {
  const body = "file" in wanted ? bodyFrom(wanted.file) : bodyOfSizeNamed(wanted.size);
  const choices = choicesFrom(files.choices);
  const block = blockFrom(files.block);
  for (const { notices } of [body, choices, block])
    for (const notice of notices) err(`${notice}\n`);
  if ("faults" in body || "faults" in choices || "faults" in block) {
    for (const input of [body, choices, block])
      if ("faults" in input) for (const fault of input.faults) err(`${sentence(fault)}\n`);
    return null;
  }
  for (const notice of ageNotice([body.is])) err(`${notice}\n`);
  return { made: make(body.is, choices.is, block.is), body: body.is };
};

/** `guide`: the sewing guide of one body's garment. */
export const guide = async (command: GuideCommand, voice: Voice): Promise<ExitStatus> => {
  const drafted = draftedFrom(command.body, command, voice);
  if (!drafted) return REFUSED;
  const { made, body } = drafted;
  const isChild = body.age !== undefined && body.age < CHILD_UNDER;
  const pdf = await guidePdf({ ...made, isChild }, printOptions(command));
  return writeFiles(command.out, { "guide.pdf": pdf }, voice);
};

/** Every pupil's block; a pupil that is refused is told and does not stop the others. */
const classSheets = async (
  command: HandoutCommand,
  file: string,
  voice: Voice,
): Promise<ExitStatus> => {
  const choices = choicesFrom(command.choices);
  if ("faults" in choices) {
    for (const fault of choices.faults) voice.err(`${sentence(fault)}\n`);
    return REFUSED;
  }
  const bytes = readInput(file, LARGEST.bodies);
  const text = "fault" in bytes ? bytes : readText(bytes.bytes, file);
  const read = "fault" in text ? text : readClass(text.text, file);
  if ("fault" in read) {
    voice.err(`${sentence(read.fault)}\n`);
    return REFUSED;
  }
  for (const notice of [...read.notices, ...ageNotice(read.pupils)]) voice.err(`${notice}\n`);
  for (const refusal of read.refused)
    voice.err(`Row ${refusal.row} (${refusal.id || "no id"}): ${sentence(refusal)}\n`);
  if (read.pupils.length === 0) return REFUSED;
  const pupils = read.pupils.map((body) => make(body, choices.is, null));
  // The file is named on each sheet, not where it lay on this machine.
  const pdf = await classPdf(parse(file).name, pupils, printOptions(command));
  const status = writeFiles(command.out, { "class.pdf": pdf }, voice);
  return read.refused.length > 0 ? REFUSED : status;
};

/** `handout`: one body's lesson to be worked by hand, or a class's small blocks. */
export const handout = async (command: HandoutCommand, voice: Voice): Promise<ExitStatus> => {
  const { of } = command;
  if ("class" in of) return classSheets(command, of.class, voice);
  const drafted = draftedFrom(of.body, command, voice);
  if (!drafted) return REFUSED;
  const options = { ...printOptions(command), answers: of.answers };
  const pdf = await handoutPdf(drafted.made, options);
  return writeFiles(command.out, { "handout.pdf": pdf }, voice);
};
