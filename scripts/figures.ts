import { type Counts, countIn, UNWANTED, type Unwanted } from "./figures/count.ts";
import { filesUnder, isTable, parse, type SourceFile } from "./figures/sourceFile.ts";

/**
 * Prints the figures of the house style for each room, and fails over the few limits that are
 * firm. The others are a prompt to look, not a verdict. Tables of data and of words are left out.
 */
const ROOMS = [
  "geometry",
  "drafting",
  "bands",
  "checks",
  "trace",
  "lay",
  "guide",
  "export",
  "project",
  "cli",
  "studio",
].map((room) => `src/${room}`);

/** Stands in for packages that are imported by default, so it must have a default export. */
const STAND_IN = "src/export/unusedPackage.ts";

/** The style holds to 300 and to 40 (60 with markup), a prompt to look; these are where it ends. */
const LONGEST_FILE = 350;
const LONGEST_FUNCTION = 80;
/** None of these, anywhere in src. `as` and bare tolerances are printed only. */
const NEVER: readonly Unwanted[] = ["any", "!", "default export", "barrel", "TODO"];

const at = (numbers: readonly number[], part: number): number => {
  const sorted = [...numbers].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? 0;
};
const spread = (numbers: readonly number[]): string =>
  `${at(numbers, 0.5)}, ${at(numbers, 0.9)}, ${at(numbers, 1)}`;
const share = (part: number, whole: number): string =>
  whole === 0 ? "-" : `${Math.round((100 * part) / whole)}%`;
const sum = (counts: readonly Counts[], of: (c: Counts) => number): number =>
  counts.reduce((total, c) => total + of(c), 0);

type Room = {
  readonly name: string;
  readonly sources: readonly SourceFile[];
  readonly counts: readonly Counts[];
};

const roomOf = (name: string): Room => {
  const sources = filesUnder(name)
    .filter((file) => !isTable(file) && file !== STAND_IN)
    .map(parse);
  return { name, sources, counts: sources.map(countIn) };
};

const rowOf = ({ name, sources, counts }: Room): readonly string[] => {
  const functions = counts.flatMap((c) => c.functions);
  const unwanted = UNWANTED.map((kind) => [kind, sum(counts, (c) => c.unwanted[kind].length)]);
  return [
    name,
    String(sources.length),
    String(sum(counts, (c) => c.writtenLines)),
    spread(sources.map(({ lines }) => lines.length)),
    spread(functions.map(({ lines }) => lines)),
    share(functions.filter(({ lines }) => lines > 40).length, functions.length),
    share(
      sum(counts, (c) => c.documented),
      sum(counts, (c) => c.exported),
    ),
    share(
      sum(counts, (c) => c.commentLines),
      sum(counts, (c) => c.writtenLines),
    ),
    unwanted
      .filter(([, count]) => count !== 0)
      .map(([kind, count]) => `${kind} ${count}`)
      .join(", ") || "none",
  ];
};

/** Each place over a firm limit, in words. */
const faultsOf = ({ sources, counts }: Room): readonly string[] => [
  ...sources
    .filter(({ lines }) => lines.length > LONGEST_FILE)
    .map(({ file, lines }) => `${file}: ${lines.length} lines; the most is ${LONGEST_FILE}.`),
  ...counts
    .flatMap(({ functions }) => functions)
    .filter(({ lines }) => lines > LONGEST_FUNCTION)
    .map(({ where, lines }) => `${where}: ${lines} lines; the most is ${LONGEST_FUNCTION}.`),
  ...NEVER.flatMap((kind) =>
    counts.flatMap(({ unwanted }) => unwanted[kind].map((where) => `${where}: ${kind}.`)),
  ),
];

const HEADINGS = [
  "room",
  "files",
  "lines",
  "file: median, 90th, longest",
  "function: the same",
  "over 40",
  "documented",
  "comment",
  "not in the style",
];

const table = (rows: readonly (readonly string[])[]): string => {
  const widths = HEADINGS.map((_, i) => Math.max(...rows.map((row) => row[i]?.length ?? 0)));
  return rows
    .map((row) => row.map((cell, i) => cell.padEnd(widths[i] ?? 0)).join("  "))
    .map((line) => line.trimEnd())
    .join("\n");
};

const rooms = ROOMS.map(roomOf).filter(({ sources }) => sources.length > 0);
const tests = roomOf("tests");
console.log(table([HEADINGS, ...[...rooms, tests].map(rowOf)]));
const linesOf = (room: Room): number => sum(room.counts, (c) => c.writtenLines);
const sourceLines = rooms.reduce((total, room) => total + linesOf(room), 0);
console.log(`Lines of tests to lines of source: ${(linesOf(tests) / sourceLines).toFixed(2)}`);

const faults = rooms.flatMap(faultsOf);
for (const fault of faults) console.error(fault);
if (faults.length > 0) process.exitCode = 1;
