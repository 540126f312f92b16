import { PRINT_OPTIONS, type PrintWanted, printWanted } from "./printOptions.ts";

export type NestCommand = PrintWanted & {
  readonly command: "nest";
  /** A table of bodies, or standard sizes by their names. */
  readonly of: { readonly bodies: string } | { readonly sizes: readonly string[] };
  readonly choices: string | null;
  readonly date: string | null;
  readonly out: string;
};

export const NEST_OPTIONS = {
  bodies: "string",
  sizes: "string",
  choices: "string",
  ...PRINT_OPTIONS,
  only: "string",
  date: "string",
  out: "string",
} as const;

/** What `nest` asks for, or one sentence about what is wrong with it. */
export const nestWanted = (
  options: ReadonlyMap<string, string>,
  isDate: (word: string) => boolean,
): NestCommand | { readonly sentence: string } => {
  const [bodies, sizes] = [options.get("bodies"), options.get("sizes")?.split(",")];
  const [out, date] = [options.get("out"), options.get("date") ?? null];
  if (bodies !== undefined && sizes !== undefined)
    return { sentence: "--bodies and --sizes stand together; one of them is enough." };
  const of = bodies !== undefined ? { bodies } : sizes !== undefined ? { sizes } : null;
  if (of === null) return { sentence: "--sizes W80,W90 is missing (or --bodies BODIES.csv)." };
  if (out === undefined) return { sentence: "--out DIR is missing." };
  if (date !== null && !isDate(date))
    return { sentence: `--date is ${date}; it must be a day written YYYY-MM-DD.` };
  const printed = printWanted(options);
  if ("sentence" in printed) return printed;
  return { command: "nest", of, choices: options.get("choices") ?? null, ...printed, date, out };
};
