import type { LengthUnit } from "../drafting/blockFile.ts";
import { MM_PER_CM, MM_PER_INCH } from "../geometry/units.ts";

export const MM_PER: Readonly<Record<LengthUnit, number>> = {
  mm: 1,
  cm: MM_PER_CM,
  in: MM_PER_INCH,
};
export const LENGTH_UNITS = ["mm", "cm", "in"] as const;

export const isLengthUnit = (word: string): word is LengthUnit =>
  LENGTH_UNITS.some((unit) => unit === word);

export type Decimal = "." | ",";

const NUMBER = /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/iu;
const WITH_COMMA = /^[+-]?\d*,\d+$/u;

/** The number that a cell holds; null where it is none. No thousands marks, no units. */
export const numberIn = (cell: string, decimal: Decimal): number | null => {
  const text = cell.trim();
  const pointed = decimal === "," && WITH_COMMA.test(text) ? text.replace(",", ".") : text;
  return NUMBER.test(pointed) ? Number(pointed) : null;
};
