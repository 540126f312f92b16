import type { LengthUnit } from "../drafting/blockFile.ts";
import type { Fault } from "../drafting/fault.ts";
import type { Body, GivenMeasures, Sex } from "../drafting/measures.ts";
import { type Decimal, isLengthUnit, MM_PER, numberIn } from "./cells.ts";
import { shown } from "./faultWords.ts";
import { type Heading, MEASURE_HEADINGS, type MeasureHeading } from "./headings.ts";
import { faultOfMeasure, missing, type Written } from "./measureWords.ts";

/** A body as it was written down: what stands under each known heading. Empty cells may be absent. */
export type BodyCells = ReadonlyMap<Heading, string>;

export type BodyRead = { readonly body: Body } | { readonly fault: Fault };

/** Letters, digits, dot, underline, hyphen: an id is also the name of a folder. */
const ID = /^[A-Za-z0-9._-]{1,64}$/u;
/** Not ids: these name folders, or files that a run writes beside the folders of the bodies. */
const TAKEN_IDS = /^(\.|\.\.|summary\.csv|refused\.json|\.ribwright-.*)$/u;
const NAME_AT_MOST = 200; // letters; ours: longer is no name, and no title of a sheet
const AGE_AT_MOST = 130; // years; ours

const cellOf = (cells: BodyCells, heading: Heading): string => (cells.get(heading) ?? "").trim();

const faultOfId = (id: string): readonly Fault[] => {
  const cure = { field: "id", value: id, do: "Give the body an id such as singer-07." };
  if (id === "") return [{ ...cure, reason: "id is missing; every body needs one of its own." }];
  if (TAKEN_IDS.test(id))
    return [{ ...cure, reason: `id is ${shown(id)}, a name that the program needs itself.` }];
  const limit = "1 to 64 of the letters A to Z, digits, dot, underline and hyphen may be in it";
  return ID.test(id) ? [] : [{ ...cure, reason: `id is ${shown(id)}; ${limit}.` }];
};

const faultOfName = (name: string): readonly Fault[] =>
  name.length <= NAME_AT_MOST
    ? []
    : [
        {
          field: "name",
          value: name.slice(0, NAME_AT_MOST),
          reason: `name has ${name.length} letters; at most ${NAME_AT_MOST} are taken.`,
          do: "Shorten it.",
        },
      ];

const isSex = (word: string): word is Sex => word === "female" || word === "male";

const faultOfWord = (field: Heading, value: string, mayBe: string, isGood: boolean) =>
  isGood || value === ""
    ? []
    : [{ field, value, reason: `${field} is ${shown(value)}; ${mayBe}.`, do: "Change it." }];

const isAge = (age: number | null): boolean => age !== null && age >= 0 && age <= AGE_AT_MOST;

/** Everything that stands under a measure's heading, with its number where it is one. */
const writtenMeasures = (cells: BodyCells, decimal: Decimal): readonly Written[] =>
  MEASURE_HEADINGS.map((id) => ({ id, text: cellOf(cells, id) })).map(({ id, text }) => ({
    id,
    text,
    number: numberIn(text, decimal),
  }));

const givenMeasures = (written: readonly Written[], unit: LengthUnit): GivenMeasures | null => {
  const lengths = new Map<MeasureHeading, number>(
    written.flatMap(({ id, number }) => (number === null ? [] : [[id, number * MM_PER[unit]]])),
  );
  const [height, chest] = [lengths.get("height"), lengths.get("chest")];
  if (height === undefined || chest === undefined) return null;
  return { ...Object.fromEntries(lengths), height, chest };
};

/** The first fault speaks; what else is at fault is named after it: one sentence a body. */
const together = ([first, ...others]: readonly Fault[]): Fault | null => {
  if (first === undefined || others.length === 0) return first ?? null;
  const named = others.map(({ field, value }) => (value === "" ? field : `${field} (${value})`));
  return { ...first, reason: `${first.reason} At fault too: ${named.join(", ")}.` };
};

/** The body that these cells describe, lengths in mm, or what is wrong with it. */
export const readCells = (cells: BodyCells, decimal: Decimal): BodyRead => {
  const [id, sex, ageText] = [cellOf(cells, "id"), cellOf(cells, "sex"), cellOf(cells, "age")];
  const name = cellOf(cells, "name").replace(/\s+/gu, " ");
  const unit = cellOf(cells, "unit") || "mm";
  const age = numberIn(ageText, decimal);
  const written = writtenMeasures(cells, decimal);
  const fault = together([
    ...faultOfId(id),
    ...faultOfName(name),
    ...faultOfWord("sex", sex, "female, male or nothing may stand there", isSex(sex)),
    ...faultOfWord("age", ageText, `a number from 0 to ${AGE_AT_MOST} may stand there`, isAge(age)),
    ...faultOfWord("unit", unit, "mm, cm, in or nothing may stand there", isLengthUnit(unit)),
    ...(isLengthUnit(unit) ? faultOfMeasure(written, unit) : []),
  ]);
  const measures = isLengthUnit(unit) ? givenMeasures(written, unit) : null;
  if (fault !== null || measures === null) return { fault: fault ?? missing("chest", "mm") };
  return {
    body: {
      id,
      ...(name === "" ? {} : { name }),
      ...(isSex(sex) ? { sex } : {}),
      ...(age === null ? {} : { age }),
      measures,
    },
  };
};
