import * as z from "zod/mini";
import type { Fault } from "../drafting/fault.ts";
import { type BodyCells, type BodyRead, readCells } from "./bodyCells.ts";
import { faultsOf, shown } from "./faultWords.ts";
import {
  type Heading,
  isHeading,
  isMeasureHeading,
  isPersonHeading,
  leftAlone,
  nearlyHeading,
} from "./headings.ts";
import { faultOfShape } from "./textFile.ts";

const text = z.nullish(z.string({ error: "text in quotation marks" }));

/** The shape of a body file. What stands in it is read as the cells of a table are. */
const bodySchema = z.looseObject(
  {
    id: text,
    name: text,
    sex: text,
    unit: text,
    age: z.nullish(z.number({ error: "a number" })),
    measures: z.record(z.string(), z.unknown(), { error: "a group of measures in braces" }),
  },
  { error: "a body in braces: id, measures and, as you like, name, sex, age, unit" },
);

export type BodyFileRead = BodyRead & { readonly notices: readonly string[] };

const misnamed = (key: string, meant: Heading): Fault => ({
  field: key,
  value: key,
  reason: `"${key}" is nearly ${meant}, but not quite.`,
  do: `Write ${meant}, or take it out.`,
});

const misplaced = (key: string): Fault => ({
  field: key,
  value: key,
  reason: `${key} stands on the wrong side of the braces after "measures".`,
  do: isMeasureHeading(key) ? "Put it inside them." : "Put it outside of them.",
});

const faultsOfKeys = (keys: readonly string[], belongs: (key: string) => boolean) =>
  keys.flatMap((key): readonly Fault[] => {
    if (belongs(key)) return [];
    if (isHeading(key)) return [misplaced(key)];
    const meant = nearlyHeading(key);
    return meant === null ? [] : [misnamed(key, meant)];
  });

/** A measure in JSON is a number; null is as good as left out. */
const faultsOfValues = (measures: Readonly<Record<string, unknown>>): readonly Fault[] =>
  Object.entries(measures)
    .filter(([id, value]) => isMeasureHeading(id) && value !== null && typeof value !== "number")
    .map(([field, value]) => ({
      field,
      value: shown(value),
      reason: `${field} is ${shown(value)}, which is not a number.`,
      do: "Write it with digits and a decimal point, without quotation marks.",
    }));

const cell = (value: unknown): string =>
  value === null || value === undefined ? "" : String(value);

const cellsOf = (entries: readonly (readonly [string, unknown])[]): BodyCells =>
  new Map(
    entries.flatMap(([key, value]): readonly (readonly [Heading, string])[] =>
      isHeading(key) ? [[key, cell(value)]] : [],
    ),
  );

/** The body in a parsed file, or the first thing that is wrong with it. */
export const readBody = (file: unknown): BodyFileRead => {
  const shape = bodySchema.safeParse(file, { reportInput: true });
  if (!shape.success) {
    const [fault = faultOfShape("The file", file, "a body")] = faultsOf(shape.error.issues, {});
    return { fault, notices: [] };
  }
  const { measures, ...person } = shape.data;
  const personKeys = Object.keys(person).filter((key) => key !== "measures");
  const keys = [...personKeys, ...Object.keys(measures)];
  const notices = leftAlone(keys.filter((key) => !isHeading(key)));
  const [fault] = [
    ...faultsOfKeys(personKeys, isPersonHeading),
    ...faultsOfKeys(Object.keys(measures), isMeasureHeading),
    ...faultsOfValues(measures),
  ];
  if (fault) return { fault, notices };
  const read = readCells(cellsOf(Object.entries({ ...measures, ...person })), ".");
  return { ...read, notices };
};
