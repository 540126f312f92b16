import type { Mm } from "../../geometry/units.ts";
import { MM_IN, type Unit } from "./unit.ts";

export type Language = "en" | "de";

/** An inch fraction this far from the stored length says so with a sign (design, section 2). */
const NEARLY: Mm = 0.2;
const SIXTEENTHS = 16;
const HAIR = 1e-9;
/** A breath that does not break between a number and its unit. */
export const NBSP = "\u00a0";

const GLYPHS: Readonly<Record<string, string>> = {
  "1/2": "½",
  "1/4": "¼",
  "3/4": "¾",
  "1/8": "⅛",
  "3/8": "⅜",
  "5/8": "⅝",
  "7/8": "⅞",
};

const commonFactor = (a: number, b: number): number => (b === 0 ? a : commonFactor(b, a % b));

/** A number with at most `places` decimals and no trailing noughts, in the language's way. */
export const printNumber = (value: number, places: number, language: Language): string => {
  // A decimal such as 6.35 lies a hair under itself in binary: without the nudge it rounds down.
  const nudged = value + Math.sign(value) * HAIR;
  const text = String(Number(nudged.toFixed(places))).replace(/^-0$/u, "0");
  const signed = text.replace("-", "−");
  return language === "de" ? signed.replace(".", ",") : signed;
};

const printFraction = (sixteenths: number): string => {
  if (sixteenths === 0) return "";
  const factor = commonFactor(sixteenths, SIXTEENTHS);
  const [over, under] = [sixteenths / factor, SIXTEENTHS / factor];
  return GLYPHS[`${over}/${under}`] ?? `${over}⁄${under}`;
};

const printInches = (length: Mm): string => {
  const all = Math.round((Math.abs(length) / MM_IN.in) * SIXTEENTHS);
  const shown = (all * MM_IN.in) / SIXTEENTHS;
  const nearly = Math.abs(shown - Math.abs(length)) > NEARLY ? `≈${NBSP}` : "";
  const sign = length < 0 && all > 0 ? "−" : "";
  const whole = Math.floor(all / SIXTEENTHS);
  const part = printFraction(all % SIXTEENTHS);
  if (part === "") return `${nearly}${sign}${whole}`;
  if (whole === 0) return `${nearly}${sign}${part}`;
  return `${nearly}${sign}${whole}${part.includes("⁄") ? NBSP : ""}${part}`;
};

/**
 * A length in the maker's unit, without the unit's name: "12.7", "1.27", "½". What was measured on
 * the drawing has one decimal of a millimetre; what the maker chose is shown as it stands, `exact`.
 */
export const printLength = (length: Mm, unit: Unit, language: Language, exact = false): string => {
  if (unit === "in") return printInches(length);
  return printNumber(length / MM_IN[unit], (unit === "cm" ? 2 : 1) + (exact ? 2 : 0), language);
};

/** The same with its unit, in one breath: "12.7 mm". */
export const printWithUnit = (length: Mm, unit: Unit, language: Language): string =>
  `${printLength(length, unit, language)}${NBSP}${unit === "in" && language === "de" ? "Zoll" : unit}`;

export const printPercent = (share: number, language: Language): string =>
  `${printNumber(share * 100, 1, language)}${NBSP}%`;
