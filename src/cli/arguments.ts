import { parseArgs } from "node:util";
import { nearest } from "../project/nearest.ts";
import { type Also, alsoWanted } from "./alsoFiles.ts";
import { BLOCK_OPTIONS, type BlockCommand, blockWanted } from "./blockCommand.ts";
import {
  type GuideCommand,
  guideWanted,
  type HandoutCommand,
  HOME_OPTIONS,
  handoutWanted,
} from "./homeCommands.ts";
import { MARKERS_OPTIONS, type MarkersCommand, markersWanted } from "./markers.ts";
import { NEST_OPTIONS, type NestCommand, nestWanted } from "./nestCommand.ts";
import { PRINT_OPTIONS, type PrintWanted, printWanted } from "./printOptions.ts";
import { COMMANDS, type CommandName } from "./usage.ts";

export type DraftCommand = PrintWanted & {
  readonly command: "draft";
  readonly body: { readonly file: string } | { readonly size: string };
  readonly choices: string | null;
  readonly block: string | null;
  readonly date: string | null;
  /** Files beside the tiled one: on this paper for a copy shop; for a projector. */
  readonly also: Also;
  readonly out: string;
};
export type BatchCommand = PrintWanted & {
  readonly command: "batch";
  readonly bodies: string;
  readonly choices: string | null;
  readonly sheets: boolean;
  readonly out: string;
};
export type CheckCommand = { readonly command: "check"; readonly report: string };

export type Command =
  | DraftCommand
  | BatchCommand
  | CheckCommand
  | BlockCommand
  | GuideCommand
  | HandoutCommand
  | MarkersCommand
  | NestCommand
  | { readonly command: "help"; readonly of: CommandName | null }
  | { readonly command: "version" }
  /** Not a command that there is: one sentence, and of which command to show the usage. */
  | { readonly command: "wrong"; readonly sentence: string; readonly of: CommandName | null };

type Kind = "string" | "boolean";
const HELP = { help: "boolean", version: "boolean" } as const;
const OPTIONS: Readonly<Record<CommandName, Readonly<Record<string, Kind>>>> = {
  draft: {
    body: "string",
    size: "string",
    choices: "string",
    block: "string",
    ...PRINT_OPTIONS,
    only: "string",
    "copy-shop": "string",
    projector: "boolean",
    date: "string",
    out: "string",
    ...HELP,
  },
  batch: {
    bodies: "string",
    choices: "string",
    ...PRINT_OPTIONS,
    "no-sheets": "boolean",
    out: "string",
    ...HELP,
  },
  check: HELP,
  block: { ...BLOCK_OPTIONS, ...HELP },
  guide: { ...HOME_OPTIONS.guide, ...HELP },
  handout: { ...HOME_OPTIONS.handout, ...HELP },
  markers: { ...MARKERS_OPTIONS, ...HELP },
  nest: { ...NEST_OPTIONS, ...HELP },
};

/** The words of a command line, sorted: options by name, and what stands by itself. */
type Sorted = { readonly options: ReadonlyMap<string, string>; readonly rest: readonly string[] };

/** Sorts the words, or says in one sentence what is wrong with them. */
const sort = (words: readonly string[], known: Readonly<Record<string, Kind>>): Sorted | string => {
  const types = Object.entries(known).map(([name, type]) => [name, { type }]);
  const { tokens } = parseArgs({
    args: [...words],
    options: Object.fromEntries(types),
    strict: false,
    allowPositionals: true,
    tokens: true,
  });
  const options = new Map<string, string>();
  const rest: string[] = [];
  for (const token of tokens) {
    if (token.kind === "positional") rest.push(token.value);
    if (token.kind !== "option") continue;
    const { name, rawName, value = "", inlineValue } = token;
    const kind = known[name];
    if (kind === undefined || !rawName.startsWith("--"))
      return `${rawName} is not an option.${suggestion(name, Object.keys(known))}`;
    if (options.has(name)) return `${rawName} stands there twice.`;
    if (kind === "boolean" && value !== "") return `${rawName} takes no value.`;
    if (kind === "string" && (value === "" || (value.startsWith("-") && !inlineValue)))
      return `${rawName} needs a value after it.`;
    options.set(name, value);
  }
  return { options, rest };
};

const suggestion = (word: string, known: readonly string[]): string => {
  const meant = nearest(word, known, 3);
  return meant === null ? "" : ` Did you mean --${meant}?`;
};

/** A day that the calendar has, written YYYY-MM-DD. */
const isDate = (word: string): boolean => {
  if (!/^\d{4}-\d{2}-\d{2}$/u.test(word)) return false;
  const day = new Date(`${word}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(word);
};

type Wrong = (sentence: string) => Command;

const draftCommand = ({ options }: Sorted, wrong: Wrong): Command => {
  const printed = printWanted(options);
  const [file, size, out] = [options.get("body"), options.get("size"), options.get("out")];
  const date = options.get("date") ?? null;
  if (file !== undefined && size !== undefined)
    return wrong("--body and --size stand together; one of them is enough.");
  const body = file !== undefined ? { file } : size !== undefined ? { size } : null;
  if (body === null) return wrong("--body BODY.json is missing (or --size NAME).");
  if (out === undefined) return wrong("--out DIR is missing.");
  if ("sentence" in printed) return wrong(printed.sentence);
  if (date !== null && !isDate(date))
    return wrong(`--date is ${date}; it must be a day written YYYY-MM-DD.`);
  const [choices, block] = [options.get("choices") ?? null, options.get("block") ?? null];
  const also = alsoWanted(options);
  if ("sentence" in also) return wrong(also.sentence);
  return { command: "draft", body, choices, block, ...printed, date, also, out };
};

const batchCommand = ({ options }: Sorted, wrong: Wrong): Command => {
  const printed = printWanted(options);
  const [bodies, out] = [options.get("bodies"), options.get("out")];
  if (bodies === undefined) return wrong("--bodies BODIES.csv is missing.");
  if (out === undefined) return wrong("--out DIR is missing.");
  if ("sentence" in printed) return wrong(printed.sentence);
  const choices = options.get("choices") ?? null;
  return { command: "batch", bodies, choices, ...printed, sheets: !options.has("no-sheets"), out };
};

const checkCommand = ({ rest }: Sorted, wrong: Wrong): Command => {
  const [report, ...others] = rest;
  if (report === undefined) return wrong("The report to check is missing.");
  if (others.length > 0) return wrong(`One report at a time; ${others.length} more are given.`);
  return { command: "check", report };
};

const isCommand = (word: string): word is CommandName => COMMANDS.some((name) => name === word);

const withoutCommand = (words: readonly string[]): Command => {
  const [first = ""] = words;
  if (words.length === 0 || first === "--help" || first === "help")
    return words.length === 0
      ? { command: "wrong", sentence: "A command is missing.", of: null }
      : { command: "help", of: null };
  if (first === "--version") return { command: "version" };
  const meant = first.startsWith("-") ? null : nearest(first, COMMANDS, 2);
  const hint = meant === null ? "" : ` Did you mean ${meant}?`;
  return { command: "wrong", sentence: `${first} is not a command.${hint}`, of: null };
};

type Other = Exclude<CommandName, "draft" | "batch" | "check">;

const otherWanted = (name: Other, options: Sorted["options"]) => {
  if (name === "block") return blockWanted(options);
  if (name === "markers") return markersWanted(options);
  if (name === "nest") return nestWanted(options, isDate);
  return name === "guide" ? guideWanted(options, isDate) : handoutWanted(options, isDate);
};

/** What a command line asks for. Nothing is read from the disk yet. */
export const commandOf = (words: readonly string[]): Command => {
  const [name = "", ...others] = words;
  if (!isCommand(name)) return withoutCommand(words);
  const wrong: Wrong = (sentence) => ({ command: "wrong", sentence, of: name });
  const sorted = sort(others, OPTIONS[name]);
  if (typeof sorted === "string") return wrong(sorted);
  if (sorted.options.has("help")) return { command: "help", of: name };
  if (sorted.options.has("version")) return { command: "version" };
  if (name === "check") return checkCommand(sorted, wrong);
  const [stray] = sorted.rest;
  if (stray !== undefined) return wrong(`${stray} stands there without an option before it.`);
  if (name === "draft") return draftCommand(sorted, wrong);
  if (name === "batch") return batchCommand(sorted, wrong);
  const wanted = otherWanted(name, sorted.options);
  return "sentence" in wanted ? wrong(wanted.sentence) : wanted;
};
