import { isPaperChoice, type PaperChoice } from "../export/paperSize.ts";
import { DEFAULT_PRINT, type Margins, type PrintChoices } from "../export/printChoices.ts";
import { PAPERS_KNOWN, readPrint } from "../project/printSchema.ts";
import { sentence } from "../project/refusal.ts";

/** The options that say how sheets are printed, the same for every command that prints some. */
export const PRINT_OPTIONS = {
  paper: "string",
  turn: "string",
  margins: "string",
  join: "string",
  overlap: "string",
  "square-along": "string",
  "square-across": "string",
} as const;

type Options = ReadonlyMap<string, string>;
type Sentence = { readonly sentence: string };
export type PrintWanted = { readonly paper: PaperChoice; readonly print: PrintChoices };

/** A length in mm; what is none stays as it is written, and is refused with its name. */
const lengthIn = (options: Options, name: string, otherwise: number): number | Sentence => {
  const word = options.get(name);
  if (word === undefined) return otherwise;
  return /^\d{1,6}(\.\d{1,6})?$/u.test(word)
    ? Number(word)
    : { sentence: `--${name} is ${word}; it must be a number of millimetres.` };
};

/** One margin for all four sides, or top, right, bottom and left. */
const marginsIn = (options: Options): Margins | Sentence => {
  const word = options.get("margins");
  if (word === undefined) return DEFAULT_PRINT.margins;
  const found = word
    .split(",")
    .map((part) => (/^\d{1,6}(\.\d{1,6})?$/u.test(part) ? Number(part) : NaN));
  const [top = NaN, right = top, bottom = top, left = right] = found;
  if ((found.length !== 1 && found.length !== 4) || found.some(Number.isNaN))
    return {
      sentence: `--margins is ${word}; it must be one number of millimetres, or four: top,right,bottom,left.`,
    };
  return { top, right, bottom, left };
};

/** A word of a few, as it stands there; the schema refuses others. */
const oneOf = <Word extends string>(
  options: Options,
  name: string,
  words: readonly Word[],
  otherwise: Word,
): Word | Sentence => {
  const word = options.get(name);
  if (word === undefined) return otherwise;
  const known = words.find((one) => one === word);
  return known ?? { sentence: `--${name} is ${word}; it must be one of ${words.join(", ")}.` };
};

const isSentence = (value: unknown): value is Sentence =>
  typeof value === "object" && value !== null && "sentence" in value;

/** The paper and how it is printed, or one sentence about what is wrong with it. */
export const printWanted = (options: Options): PrintWanted | Sentence => {
  const paper = options.get("paper") ?? "a4";
  if (!isPaperChoice(paper))
    return { sentence: `--paper is ${paper}; it must be one of ${PAPERS_KNOWN}.` };
  const { join, turn, overlap, square } = DEFAULT_PRINT;
  const found = {
    margins: marginsIn(options),
    join: oneOf(options, "join", ["overlap", "butt"], join),
    overlap: lengthIn(options, "overlap", overlap),
    turn: oneOf(options, "turn", ["portrait", "landscape", "fewest"], turn),
    along: lengthIn(options, "square-along", square.along),
    across: lengthIn(options, "square-across", square.across),
  };
  const wrong = Object.values(found).find(isSentence);
  if (wrong) return wrong;
  const { along, across, ...rest } = found;
  const only = options.get("only")?.split(",") ?? [];
  const read = readPrint(paper, { ...rest, square: { along, across }, only });
  if ("faults" in read) {
    const [fault] = read.faults;
    return { sentence: fault ? sentence(fault) : "These sheets cannot be printed." };
  }
  return read;
};
