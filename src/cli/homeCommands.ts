import type { HomePaper } from "../export/printPage.ts";
import { LANGUAGES, type Language } from "../guide/words/tell.ts";

/** What is printed at home or at school, not at true scale: the same for guide and handout. */
type HomePrint = {
  readonly choices: string | null;
  readonly paper: HomePaper;
  readonly language: Language;
  readonly date: string | null;
  readonly out: string;
};

/** One body, by its file or as a standard size. */
export type BodyWanted = { readonly file: string } | { readonly size: string };

export type GuideCommand = HomePrint & {
  readonly command: "guide";
  readonly body: BodyWanted;
  readonly block: string | null;
};
export type HandoutCommand = HomePrint & {
  readonly command: "handout";
  /** One body's lesson, or every pupil's small block. */
  readonly of:
    | { readonly body: BodyWanted; readonly answers: boolean }
    | { readonly class: string };
  readonly block: string | null;
};

export const HOME_PAPERS = ["a4", "letter"] as const satisfies readonly HomePaper[];
const HOME = {
  choices: "string",
  block: "string",
  paper: "string",
  language: "string",
  date: "string",
  out: "string",
} as const;
const BODY = { body: "string", size: "string" } as const;

/** The options of both commands, by name. */
export const HOME_OPTIONS = {
  guide: { ...BODY, ...HOME },
  handout: { ...BODY, class: "string", "no-answers": "boolean", ...HOME },
} as const;

type Options = ReadonlyMap<string, string>;
type Sentence = { readonly sentence: string };

export const isOneOf = <Word extends string>(word: string, all: readonly Word[]): word is Word =>
  all.some((one) => one === word);

const homePrint = (options: Options, isDate: (word: string) => boolean): HomePrint | Sentence => {
  const [paper, language] = [options.get("paper") ?? "a4", options.get("language") ?? "en"];
  const [date, out] = [options.get("date") ?? null, options.get("out")];
  if (out === undefined) return { sentence: "--out DIR is missing." };
  if (!isOneOf(paper, HOME_PAPERS))
    return { sentence: `--paper is ${paper}; it must be one of ${HOME_PAPERS.join(", ")}.` };
  if (!isOneOf(language, LANGUAGES))
    return { sentence: `--language is ${language}; it must be one of ${LANGUAGES.join(", ")}.` };
  if (date !== null && !isDate(date))
    return { sentence: `--date is ${date}; it must be a day written YYYY-MM-DD.` };
  return { choices: options.get("choices") ?? null, paper, language, date, out };
};

/** One body, and one alone. */
const bodyWanted = (options: Options, others: string): BodyWanted | Sentence => {
  const [file, size] = [options.get("body"), options.get("size")];
  if (file !== undefined && size !== undefined)
    return { sentence: "--body and --size stand together; one of them is enough." };
  if (file !== undefined) return { file };
  return size === undefined
    ? { sentence: `--body BODY.json is missing (or ${others}).` }
    : { size };
};

/** What `guide` asks for, or one sentence about what is wrong with it. */
export const guideWanted = (
  options: Options,
  isDate: (word: string) => boolean,
): GuideCommand | Sentence => {
  const body = bodyWanted(options, "--size NAME");
  if ("sentence" in body) return body;
  const print = homePrint(options, isDate);
  if ("sentence" in print) return print;
  return { command: "guide", body, block: options.get("block") ?? null, ...print };
};

/** What `handout` asks for, or one sentence about what is wrong with it. */
export const handoutWanted = (
  options: Options,
  isDate: (word: string) => boolean,
): HandoutCommand | Sentence => {
  const file = options.get("class");
  const hasBody = options.has("body") || options.has("size");
  if (file !== undefined && hasBody)
    return { sentence: "--class and a body stand together; one of them is enough." };
  const print = homePrint(options, isDate);
  if ("sentence" in print) return print;
  const block = options.get("block") ?? null;
  if (file !== undefined) {
    if (block !== null)
      return { sentence: "--block and --class stand together; pupils' blocks are drafted." };
    return { command: "handout", of: { class: file }, block, ...print };
  }
  const body = bodyWanted(options, "--size NAME, --class CLASS.csv");
  if ("sentence" in body) return body;
  const answers = !options.has("no-answers");
  return { command: "handout", of: { body, answers }, block, ...print };
};
