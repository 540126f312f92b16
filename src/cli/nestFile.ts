import type { Choices } from "../drafting/choices.ts";
import type { Body } from "../drafting/measures.ts";
import { MOST_NESTED } from "../export/data/layerStyles.ts";
import { layOutNest, type Nest } from "../export/nest.ts";
import { nestPdf } from "../export/nestPdf.ts";
import { wantedFaults } from "../export/printFaults.ts";
import type { SheetSubject } from "../export/subject.ts";
import { ageNotice } from "../project/ageNotice.ts";
import { make } from "../project/make.ts";
import { sentence } from "../project/refusal.ts";
import { printFont } from "./assets.ts";
import { DONE, type ExitStatus, REFUSED } from "./exitStatus.ts";
import { bodiesFrom, bodyOfSizeNamed, choicesFrom } from "./inputs.ts";
import type { NestCommand } from "./nestCommand.ts";
import type { Voice } from "./progress.ts";
import { writeFiles } from "./writeFiles.ts";

type Wanted = { readonly body: Body; readonly size?: string };
/** What is nested, and whether something was refused on the way. */
type Gathered = { readonly wanted: readonly Wanted[]; readonly refused: boolean };

/** Standard sizes; one that there is not is told, and none is nested. */
const sizesNamed = (names: readonly string[], { err }: Voice): Gathered => {
  const wanted: Wanted[] = [];
  let refused = false;
  for (const name of names) {
    const size = bodyOfSizeNamed(name);
    for (const notice of size.notices) err(`${notice}\n`);
    if ("is" in size) wanted.push({ body: size.is, size: size.is.id });
    else {
      for (const fault of size.faults) err(`${sentence(fault)}\n`);
      refused = true;
    }
  }
  return { wanted: refused ? [] : wanted, refused };
};

/** Bodies of a table; a row that is refused is told and does not stop the others. */
const bodiesOf = (file: string, { err }: Voice): Gathered => {
  const read = bodiesFrom(file);
  if ("fault" in read) {
    err(`${sentence(read.fault)}\n`);
    return { wanted: [], refused: true };
  }
  const wanted = read.rows.flatMap((row) => ("read" in row ? [{ body: row.read }] : []));
  const refusals = read.rows.flatMap((row) => ("refusal" in row ? [row.refusal] : []));
  for (const notice of [...read.notices, ...ageNotice(wanted.map(({ body }) => body))])
    err(`${notice}\n`);
  for (const refusal of refusals)
    err(`Row ${refusal.row} (${refusal.id || "no id"}): ${sentence(refusal)}\n`);
  return { wanted, refused: refusals.length > 0 };
};

const subjectOf = ({ body, size }: Wanted, choices: Choices): SheetSubject => {
  const made = make(body, choices, null);
  return size === undefined ? made : { ...made, body: { ...made.body, size } };
};

/** `nest`: several sizes or bodies in one PDF, each in a layer of its own. */
export const nest = async (command: NestCommand, voice: Voice): Promise<ExitStatus> => {
  const choices = choicesFrom(command.choices);
  if ("faults" in choices) {
    for (const fault of choices.faults) voice.err(`${sentence(fault)}\n`);
    return REFUSED;
  }
  const { of } = command;
  const { wanted, refused } =
    "sizes" in of ? sizesNamed(of.sizes, voice) : bodiesOf(of.bodies, voice);
  const [first, ...others] = wanted.map((one) => subjectOf(one, choices.is));
  if (!first || refusesCount(wanted.length, voice)) return REFUSED;
  const nested: Nest = [first, ...others];
  const sheets = layOutNest(nested, command.paper, command.print);
  const missing = wantedFaults(sheets);
  for (const fault of missing) voice.err(`${sentence(fault)}\n`);
  if (missing.length > 0) return REFUSED;
  const date = command.date === null ? {} : { date: command.date };
  const pdf = await nestPdf(nested, sheets, { font: printFont(), ...date });
  const status = writeFiles(command.out, { "nested.pdf": pdf }, voice);
  if (status !== DONE) return status;
  voice.err(`${nested.length} in one, ${sheets.pages.length} sheets, in ${command.out}\n`);
  return refused ? REFUSED : DONE;
};

/** More sizes than there are kinds of line could not be told apart in black and white. */
const refusesCount = (count: number, { err }: Voice): boolean => {
  if (count <= MOST_NESTED) return false;
  err(
    `${count} bodies are to be nested; ${MOST_NESTED} can be told apart by their lines. Nest fewer at a time.\n`,
  );
  return true;
};
