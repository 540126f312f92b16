import type { LengthUnit } from "../drafting/blockFile.ts";
import { MEASURE_NAMES } from "../drafting/data/measureNames.ts";
import type { Fault } from "../drafting/fault.ts";
import { LENGTH_UNITS, MM_PER } from "./cells.ts";
import { shown } from "./faultWords.ts";
import type { MeasureHeading } from "./headings.ts";

/** A measure as it was written, and the number in it, in the unit of the body. */
export type Written = {
  readonly id: MeasureHeading;
  readonly text: string;
  readonly number: number | null;
};

const UNIT_WORDS: Readonly<Record<LengthUnit, string>> = {
  mm: "millimetres",
  cm: "centimetres",
  in: "inches",
};

const isRequired = (id: MeasureHeading): boolean => id === "height" || id === "chest";

/** Outside its limits a measure is a slip (method, section 7). */
const fits = (id: MeasureHeading, length: number): boolean =>
  length >= MEASURE_NAMES[id].limits.least && length <= MEASURE_NAMES[id].limits.most;

const isOutside = ({ id, number }: Written, unit: LengthUnit): boolean =>
  number !== null && !fits(id, number * MM_PER[unit]);

/** For a person: at most two decimals, and none that are not needed. */
const rounded = (length: number): string => String(Math.round(length * 100) / 100);

const limits = (id: MeasureHeading, unit: LengthUnit): string => {
  const { least, most } = MEASURE_NAMES[id].limits;
  return `${rounded(least / MM_PER[unit])} to ${rounded(most / MM_PER[unit])} ${unit}`;
};

/** The unit in which every measure of the body would be within its limits, if there is another. */
const unitThatFits = (written: readonly Written[], unit: LengthUnit): LengthUnit | null =>
  LENGTH_UNITS.find(
    (other) => other !== unit && !written.some((measure) => isOutside(measure, other)),
  ) ?? null;

/** How a cure ends: the rest of what can be done about a measure. */
const otherwise = (id: MeasureHeading): string =>
  isRequired(id) ? "; a draft needs it." : ", or leave it out to have it estimated.";

export const missing = (id: MeasureHeading, unit: LengthUnit): Fault => ({
  field: id,
  value: "",
  reason: `${id} is missing; a draft needs it.`,
  do: `Measure it and write it down: ${limits(id, unit)}.`,
});

const notANumber = ({ id, text }: Written, unit: LengthUnit): Fault => ({
  field: id,
  value: text,
  reason: `${id} is ${shown(text)}, which is not a number; ${limits(id, unit)} may stand there.`,
  do: `Write it with digits and a decimal point, without a unit${otherwise(id)}`,
});

/** One measure in another unit than the rest: what it would be, if that is within its limits. */
const inOwnUnit = ({ id, number }: Written, unit: LengthUnit): string => {
  const other = LENGTH_UNITS.find(
    (candidate) => candidate !== unit && number !== null && fits(id, number * MM_PER[candidate]),
  );
  if (other === undefined || number === null) return `Measure again${otherwise(id)}`;
  const length = rounded((number * MM_PER[other]) / MM_PER[unit]);
  return `Was it measured in ${UNIT_WORDS[other]}? Then write ${length}. If not, measure again${otherwise(id)}`;
};

const outside = (measure: Written, unit: LengthUnit, better: LengthUnit | null): Fault => ({
  field: measure.id,
  value: measure.text,
  reason: `${measure.id} is ${shown(measure.number)} ${unit}; the limits are ${limits(measure.id, unit)}.`,
  do:
    better === null
      ? inOwnUnit(measure, unit)
      : `Were they measured in ${UNIT_WORDS[better]}? Then write ${better} as the unit of this body.`,
});

/** What is wrong with the measures of one body, in the order of the contract. */
export const faultOfMeasure = (written: readonly Written[], unit: LengthUnit): readonly Fault[] => {
  const isSlip = written.some((measure) => isOutside(measure, unit));
  const better = isSlip ? unitThatFits(written, unit) : null;
  return written.flatMap((measure): readonly Fault[] => {
    if (measure.text === "") return isRequired(measure.id) ? [missing(measure.id, unit)] : [];
    if (measure.number === null) return [notANumber(measure, unit)];
    return isOutside(measure, unit) ? [outside(measure, unit, better)] : [];
  });
};
