import Papa from "papaparse";
import type { Fault } from "../drafting/fault.ts";
import type { Body } from "../drafting/measures.ts";
import { type BodyCells, readCells } from "./bodyCells.ts";
import type { Decimal } from "./cells.ts";
import { shown } from "./faultWords.ts";
import { type Heading, isHeading, leftAlone, nearlyHeading } from "./headings.ts";
import type { Read } from "./refusal.ts";
import { faultOfFile } from "./textFile.ts";

/** A table of bodies, row by row in the order given; or why it cannot be read as a whole. */
export type BodiesRead =
  | { readonly rows: readonly Read<Body>[]; readonly notices: readonly string[] }
  | { readonly fault: Fault };

type Separator = "," | ";" | "\t";
type Row = readonly string[];

/** A column that is known, and where it stands. */
type Column = { readonly heading: Heading; readonly place: number };

const REQUIRED: readonly Heading[] = ["id", "height", "chest"];

const isEmpty = (row: Row): boolean => row.every((cell) => cell.trim() === "");

/** Which mark parts the headings: the one that is there most often. */
const separatorOf = (headings: string): Separator => {
  const count = (mark: string) => headings.split(mark).length;
  if (count("\t") > Math.max(count(","), count(";"))) return "\t";
  return count(";") > count(",") ? ";" : ",";
};

const firstLine = (text: string): string =>
  text.split("\n").find((line) => line.trim() !== "") ?? "";

type Table = { readonly table: readonly Row[] } | { readonly fault: Fault };

/** Rows as they stand, headings first, without empty lines (RFC 4180; any line end is taken). */
const tableOf = (text: string, file: string, separator: Separator): Table => {
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: separator, newline: "\n" });
  const broken = errors.find(({ type }) => type === "Quotes");
  if (broken) {
    const before = data.slice(0, broken.row ?? 0).filter((row) => !isEmpty(row)).length;
    const reason = `has a quotation mark without its partner in line of data ${Math.max(before, 1)} or after it.`;
    return { fault: faultOfFile(file, reason, 'Write a quotation mark inside a cell as "".') };
  }
  return { table: data.filter((row) => !isEmpty(row)) };
};

const faultOfColumn = (file: string, heading: string, reason: string, cure: string): Fault => ({
  field: heading,
  value: heading,
  reason: `The column ${shown(heading)} of ${file} ${reason}`,
  do: cure,
});

/** What is wrong with the headings, if anything: the file is then not read at all. */
const faultOfHeadings = (headings: Row, file: string): Fault | null => {
  const missing = REQUIRED.find((heading) => !headings.includes(heading));
  const nearly = headings
    .filter((heading) => !isHeading(heading))
    .map((heading) => ({ heading, meant: nearlyHeading(heading) }))
    .find(({ meant }) => meant !== null);
  if (nearly?.meant)
    return faultOfColumn(
      file,
      nearly.heading,
      `is nearly ${nearly.meant}, but not quite.`,
      `Write ${nearly.meant}, or take the column out.`,
    );
  const doubled = headings.find(
    (heading, place) => isHeading(heading) && headings.indexOf(heading) !== place,
  );
  if (doubled !== undefined)
    return faultOfColumn(file, doubled, "stands there twice.", "Take one of the two out.");
  if (missing === undefined) return null;
  return {
    field: missing,
    value: "",
    reason: `${file} has no column ${missing}; id, height and chest are needed in every table.`,
    do: "Write the name of each column in the first line.",
  };
};

/** A row that is longer or shorter than the headings: its cells cannot be trusted. */
const faultOfLength = (row: Row, headings: Row): Fault | null => {
  const isLonger = row.length > headings.length && !isEmpty(row.slice(headings.length));
  if (row.length >= headings.length && !isLonger) return null;
  return {
    field: "row",
    value: String(row.length),
    reason: `The row has ${row.length} cells, but there are ${headings.length} headings.`,
    do: "Give it a cell for every heading; part cells by semicolons where numbers have decimal commas.",
  };
};

const faultOfDouble = (id: string, row: number): Fault => ({
  field: "id",
  value: id,
  reason: `id is ${shown(id)}, but so it is in row ${row}; every body needs one of its own.`,
  do: "Give this body another id.",
});

const columnsOf = (headings: Row): readonly Column[] =>
  headings.flatMap((heading, place) => (isHeading(heading) ? [{ heading, place }] : []));

const cellsOf = (row: Row, columns: readonly Column[]): BodyCells =>
  new Map(columns.map(({ heading, place }) => [heading, row[place] ?? ""]));

/** Each row's body. An id that an earlier row has is refused, whatever became of that row. */
const readRows = (rows: readonly Row[], headings: Row, decimal: Decimal): readonly Read<Body>[] => {
  const columns = columnsOf(headings);
  const rowOfId = new Map<string, number>();
  return rows.map((cells, index) => {
    const row = index + 1;
    const written = cellsOf(cells, columns);
    const id = (written.get("id") ?? "").trim();
    const refused = (fault: Fault): Read<Body> => ({ refusal: { row, id, ...fault } });
    const length = faultOfLength(cells, headings);
    if (length) return refused(length);
    const earlier = rowOfId.get(id);
    if (earlier !== undefined && id !== "") return refused(faultOfDouble(id, earlier));
    rowOfId.set(id, row);
    const read = readCells(written, decimal);
    return "fault" in read ? refused(read.fault) : { read: read.body };
  });
};

const noticesOf = (headings: Row, separator: Separator): readonly string[] => [
  ...(separator === ";"
    ? ["Cells are parted by semicolons; commas in numbers are read as decimal points."]
    : []),
  ...leftAlone(headings.filter((heading) => !isHeading(heading))),
];

/** Reads a table of bodies (contract, "Bodies"). `file` is its name, for the messages. */
export const readBodies = (text: string, file: string): BodiesRead => {
  const lines = text.replace(/\r\n?/gu, "\n");
  const separator = separatorOf(firstLine(lines));
  const fault = (reason: string, cure: string) => ({ fault: faultOfFile(file, reason, cure) });
  if (lines.trim() === "") return fault("is empty.", "Give a table with a row for each body.");
  if (separator === "\t")
    return fault("has its cells parted by tabs.", "Save it as CSV, parted by commas.");
  const read = tableOf(lines, file, separator);
  if ("fault" in read) return read;
  const [headings = [], ...rows] = read.table;
  const broken = faultOfHeadings(headings, file);
  if (broken) return { fault: broken };
  if (rows.length === 0)
    return fault("has headings, but no body below them.", "Write a row for each body.");
  const decimal = separator === ";" ? "," : ".";
  return { rows: readRows(rows, headings, decimal), notices: noticesOf(headings, separator) };
};
