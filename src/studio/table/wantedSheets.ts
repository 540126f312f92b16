import type { SheetPage } from "../../export/sheets.ts";
import { nameOf } from "./sheetMap.ts";

/** Names of the sheets asked for, none for all; or the part of what was typed that is no sheet. */
export type WantedRead = { readonly names: readonly string[] } | { readonly bad: string };

const RANGE = /^(\S+?)\s*[-–]\s*(\S+)$/u;

/** "3" is the third sheet, "B2" the sheet in row B. */
const placeOf = (word: string, pages: readonly SheetPage[]): number | null => {
  const isNumber = /^\d+$/u.test(word);
  const at = isNumber
    ? Number(word) - 1
    : pages.findIndex((page) => nameOf(page) === word.toUpperCase());
  return at >= 0 && at < pages.length ? at : null;
};

const placesOf = (part: string, pages: readonly SheetPage[]): readonly number[] | null => {
  const [, from = part, to = part] = RANGE.exec(part) ?? [];
  const [first, last] = [placeOf(from, pages), placeOf(to, pages)];
  if (first === null || last === null || last < first) return null;
  return Array.from({ length: last - first + 1 }, (_, i) => first + i);
};

/** Reads "1-4, 7" or "A1 B2" against the sheets that there are. */
export const readWanted = (text: string, pages: readonly SheetPage[]): WantedRead => {
  const parts = text
    .replace(/\s*[-–]\s*/gu, "-")
    .split(/[\s,;]+/u)
    .filter((part) => part !== "");
  const found = new Set<number>();
  for (const part of parts) {
    const places = placesOf(part, pages);
    if (!places) return { bad: part };
    for (const place of places) found.add(place);
  }
  const isAll = found.size === 0 || found.size === pages.length;
  return { names: isAll ? [] : pages.filter((_, i) => found.has(i)).map(nameOf) };
};

/** The sheets asked for as they are typed: "1-4, 7"; "" for all. */
export const wantedText = (only: readonly string[], pages: readonly SheetPage[]): string => {
  const numbers = pages.flatMap((page, i) => (only.includes(nameOf(page)) ? [i + 1] : []));
  const runs: (readonly [number, number])[] = [];
  for (const n of numbers) {
    const last = runs.at(-1);
    if (last && n === last[1] + 1) runs[runs.length - 1] = [last[0], n];
    else runs.push([n, n]);
  }
  return runs.map(([a, b]) => (a === b ? `${a}` : `${a}-${b}`)).join(", ");
};

/** The sheet left out, or taken in again. The last that is left cannot be left out. */
export const turnedOver = (
  only: readonly string[],
  name: string,
  pages: readonly SheetPage[],
): readonly string[] => {
  const all = pages.map(nameOf);
  const now = only.length === 0 ? all : all.filter((one) => only.includes(one));
  const next = now.includes(name)
    ? now.filter((one) => one !== name)
    : all.filter((one) => one === name || now.includes(one));
  if (next.length === 0) return only;
  return next.length === all.length ? [] : next;
};
