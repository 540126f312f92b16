import { readFileSync } from "node:fs";

/** A file of tests/reference/data. */
export const referenceText = (name: string): string =>
  readFileSync(new URL(`./data/${name}`, import.meta.url), "utf8");

/** A comma within quotes belongs to the cell; the tables of this folder hold no quote in a cell. */
const COMMA_OUTSIDE_QUOTES = /,(?=(?:[^"]*"[^"]*")*[^"]*$)/;
const cellsOf = (line: string): readonly string[] =>
  line.includes('"')
    ? line.split(COMMA_OUTSIDE_QUOTES).map((cell) => cell.replaceAll('"', ""))
    : line.split(",");

/** The rows of a CSV table by their headings. */
export const referenceTable = (name: string): readonly Readonly<Record<string, string>>[] => {
  const [head = "", ...lines] = referenceText(name).trim().split("\n");
  const headings = cellsOf(head);
  return lines.map((line) => {
    const cells = cellsOf(line);
    return Object.fromEntries(headings.map((heading, i) => [heading, cells[i] ?? ""]));
  });
};
