import type { Fault } from "../drafting/fault.ts";
import { shown } from "./faultWords.ts";

export type TextRead = { readonly text: string } | { readonly fault: Fault };

/** A fault of a file as a whole. `file` is its name, as the maker gave it. */
export const faultOfFile = (file: string, reason: string, cure: string): Fault => ({
  field: "file",
  value: file,
  reason: `${file} ${reason}`,
  do: cure,
});

const startsWith = (bytes: Uint8Array, ...mark: readonly number[]): boolean =>
  mark.every((byte, place) => bytes[place] === byte);

/** The text of a file, without its byte order mark. Text is UTF-8 and nothing else. */
export const readText = (bytes: Uint8Array, file: string): TextRead => {
  const fault = (reason: string): TextRead => ({
    fault: faultOfFile(file, reason, "Save it again as UTF-8 text."),
  });
  if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff))
    return fault("is written in UTF-16; only UTF-8 is read.");
  if (bytes.includes(0)) return fault("is not text: it has bytes of 0 in it.");
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return fault("has letters that are not UTF-8.");
  }
};

export type JsonRead = { readonly json: unknown } | { readonly fault: Fault };

/** The line that a JSON parser's complaint points at, where it says so. */
const lineIn = (complaint: string, text: string): string => {
  const place = /position (\d+)/u.exec(complaint)?.[1];
  return place === undefined ? "" : ` at line ${text.slice(0, Number(place)).split("\n").length}`;
};

/** What a JSON file holds, not yet checked. */
export const readJson = (bytes: Uint8Array, file: string): JsonRead => {
  const read = readText(bytes, file);
  if ("fault" in read) return read;
  if (read.text.trim() === "")
    return { fault: faultOfFile(file, "is empty.", "Give a file with JSON in it.") };
  try {
    const json: unknown = JSON.parse(read.text);
    return { json };
  } catch (error) {
    const line = lineIn(error instanceof Error ? error.message : "", read.text);
    const cure = "Look there for a comma, a bracket or a quotation mark too many or too few.";
    return { fault: faultOfFile(file, `is not JSON: it breaks${line}.`, cure) };
  }
};

/** A file whose JSON is of another shape. */
export const faultOfShape = (file: string, json: unknown, wanted: string): Fault =>
  faultOfFile(file, `holds ${shown(json)}; it must hold ${wanted}.`, "Give the right file.");
