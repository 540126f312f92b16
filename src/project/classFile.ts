import type { Fault } from "../drafting/fault.ts";
import type { Body } from "../drafting/measures.ts";
import { type BodiesRead, readBodies } from "./bodiesCsv.ts";
import type { Refusal } from "./refusal.ts";
import { faultOfFile } from "./textFile.ts";

/** A class has at most so many pupils; a longer table is a batch. Ours. */
export const MOST_PUPILS = 40;

/** The pupils of a class in the order given, and those that were refused; or why none was read. */
export type ClassRead =
  | {
      readonly pupils: readonly Body[];
      readonly refused: readonly Refusal[];
      readonly notices: readonly string[];
    }
  | { readonly fault: Fault };

const faultOfCount = (file: string, count: number): Fault =>
  faultOfFile(
    file,
    `has ${count} pupils; a class has ${MOST_PUPILS} at most.`,
    "Part the table into two.",
  );

const pupilsOf = ({ rows, notices }: Extract<BodiesRead, { rows: unknown }>): ClassRead => ({
  pupils: rows.flatMap((row) => ("read" in row ? [row.read] : [])),
  refused: rows.flatMap((row) => ("refusal" in row ? [row.refusal] : [])),
  notices,
});

/**
 * Reads a class's measures: a table of bodies (contract, "Bodies"), of 40 rows at most. A pupil
 * that is refused does not stop the others. `file` is its name, for the messages.
 */
export const readClass = (text: string, file: string): ClassRead => {
  const read = readBodies(text, file);
  if ("fault" in read) return read;
  if (read.rows.length > MOST_PUPILS) return { fault: faultOfCount(file, read.rows.length) };
  return pupilsOf(read);
};
