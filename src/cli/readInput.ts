import { closeSync, fstatSync, openSync, readSync } from "node:fs";
import type { Fault } from "../drafting/fault.ts";
import { faultOfFile } from "../project/textFile.ts";
import { faultOfReading } from "./fileWords.ts";

const MB = 1_000_000;

/**
 * The largest files that are read, in bytes. Ours: many times what such a file ever needs, and far
 * below what would fill the memory.
 */
export const LARGEST = {
  bodies: 16 * MB,
  body: MB,
  choices: MB,
  block: 4 * MB,
  drawing: 40 * MB,
  report: 16 * MB,
};

export type BytesRead = { readonly bytes: Uint8Array } | { readonly fault: Fault };

const CHUNK = 65_536; // bytes

/** What is left of an open file, in pieces; null as soon as it is more than `most`. */
const readOut = (descriptor: number, most: number): Uint8Array | null => {
  const pieces: Buffer[] = [];
  let length = 0;
  for (;;) {
    const piece = Buffer.allocUnsafe(CHUNK);
    const read = readSync(descriptor, piece);
    if (read === 0) return Buffer.concat(pieces);
    length += read;
    if (length > most) return null;
    pieces.push(piece.subarray(0, read));
  }
};

/** Reads a file that a maker named, but never more than `most` bytes of it. A pipe will do too. */
export const readInput = (file: string, most: number): BytesRead => {
  const tooLarge = faultOfFile(
    file,
    `is larger than ${most / MB} MB, the most that is read.`,
    "Give the right file, or part it.",
  );
  let descriptor: number | null = null;
  try {
    descriptor = openSync(file, "r");
    const { size } = fstatSync(descriptor);
    if (size > most) return { fault: tooLarge };
    const bytes = readOut(descriptor, most);
    return bytes === null ? { fault: tooLarge } : { bytes };
  } catch (error) {
    return { fault: faultOfReading(error, file) };
  } finally {
    if (descriptor !== null) closeSync(descriptor);
  }
};
