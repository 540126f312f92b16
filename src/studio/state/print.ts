import type { FieldId } from "../fields/fields.ts";
import { fieldOf } from "../fields/fields.ts";
import {
  type Language,
  NBSP,
  printLength,
  printNumber,
  printPercent,
  printWithUnit,
} from "../units/printLength.ts";
import type { Unit } from "../units/unit.ts";
import { studio, useStudio } from "./store.ts";

/** How numbers are printed for this maker: unit and language. */
export type Print = {
  readonly unit: Unit;
  readonly language: Language;
  readonly length: (mm: number) => string;
  /** As it stands, to a thousandth of a millimetre: for numbers that the maker chose. */
  readonly exact: (mm: number) => string;
  /** With its unit. */
  readonly full: (mm: number) => string;
  readonly percent: (share: number) => string;
  readonly number: (value: number, places: number) => string;
};

const known = new Map<string, Print>();

export const printIn = (unit: Unit, language: Language): Print => {
  const key = `${unit} ${language}`;
  const print = known.get(key) ?? printOf(unit, language);
  known.set(key, print);
  return print;
};

const printOf = (unit: Unit, language: Language): Print => ({
  unit,
  language,
  length: (mm) => printLength(mm, unit, language),
  exact: (mm) => printLength(mm, unit, language, true),
  full: (mm) => printWithUnit(mm, unit, language),
  percent: (share) => printPercent(share, language),
  number: (value, places) => printNumber(value, places, language),
});

export const print = (): Print => printIn(studio().unit, studio().language);

export const usePrint = (): Print =>
  printIn(
    useStudio((s) => s.unit),
    useStudio((s) => s.language),
  );

/** The value of a number as its sentence shows it, without the unit. */
export const printValue = (id: FieldId, value: number, p: Print): string => {
  const { kind } = fieldOf(id);
  if (kind === "length") return p.exact(value);
  if (kind === "mm") return p.number(value, 3);
  return kind === "percent" ? p.number(value * 100, 2) : p.number(value, 4);
};

export const unitMark = (id: FieldId, p: Print): string => {
  const { kind } = fieldOf(id);
  if (kind === "ratio") return "";
  if (kind === "percent") return "%";
  if (kind === "mm") return "mm";
  return p.unit === "in" && p.language === "de" ? "Zoll" : p.unit;
};

/** With its unit: "12.7 mm", "25 %", "0.78". */
export const printField = (id: FieldId, value: number, p: Print): string => {
  const mark = unitMark(id, p);
  return `${printValue(id, value, p)}${mark === "" ? "" : `${NBSP}${mark}`}`;
};
