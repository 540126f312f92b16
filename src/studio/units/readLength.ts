import type { Mm } from "../../geometry/units.ts";
import { MM_IN, type Unit } from "./unit.ts";

/** What a maker's typing came to. `added` is true for "+3": so much more than it was. */
export type LengthRead =
  | { readonly ok: true; readonly value: Mm; readonly added: boolean }
  | { readonly ok: false; readonly why: "empty" | "notANumber" };

const GLYPHS: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
};

const UNIT_WORDS: Readonly<Record<string, Unit>> = {
  mm: "mm",
  cm: "cm",
  in: "in",
  inch: "in",
  inches: "in",
  zoll: "in",
  '"': "in",
  "″": "in",
  "”": "in",
};

/** "1/16", "7 1/2", "7½", "18,5", ".5", then a unit or none. A plain fraction is tried first. */
const SHAPE =
  /^(?<sign>[+\-−])?\s*(?:(?<over>\d+)\s*[/⁄]\s*(?<under>\d+)|(?<whole>\d+(?:[.,]\d+)?|[.,]\d+)?(?:\s+(?<over2>\d+)\s*[/⁄]\s*(?<under2>\d+)|\s*(?<glyph>[½¼¾⅛⅜⅝⅞⅓⅔]))?)\s*(?<unit>mm|cm|inches|inch|in|zoll|["″”])?\.?$/iu;

const decimal = (text: string | undefined): number => Number((text ?? "0").replace(",", "."));

const fraction = (over: string | undefined, under: string | undefined): number =>
  over === undefined ? 0 : Number(over) / Number(under);

/** Reads a length as typed; a number without a unit is in `unit`. */
export const readLength = (typed: string, unit: Unit): LengthRead => {
  const text = typed.replace(/[≈\u00a0\u2009\u202f]/gu, " ").trim();
  if (text === "") return { ok: false, why: "empty" };
  const {
    sign,
    over,
    under,
    whole,
    over2,
    under2,
    glyph,
    unit: word,
  } = SHAPE.exec(text)?.groups ?? {};
  if (over === undefined && whole === undefined && glyph === undefined) {
    return { ok: false, why: "notANumber" };
  }
  const amount =
    decimal(whole) + fraction(over, under) + fraction(over2, under2) + (GLYPHS[glyph ?? ""] ?? 0);
  const into = MM_IN[UNIT_WORDS[(word ?? "").toLowerCase()] ?? unit];
  const value = amount * into * (sign === "-" || sign === "−" ? -1 : 1);
  return Number.isFinite(value)
    ? { ok: true, value, added: sign === "+" }
    : { ok: false, why: "notANumber" };
};

/** Reads a share: "25 %" and "25" are a quarter where `percent`, "0.78" is itself where not. */
export const readShare = (typed: string, percent: boolean): LengthRead => {
  const text = typed.replace(/[\u00a0\u2009\u202f]/gu, " ").trim();
  if (text === "") return { ok: false, why: "empty" };
  const found = /^(?<sign>[+\-−])?\s*(?<digits>\d+(?:[.,]\d+)?|[.,]\d+)\s*(?<mark>%)?$/u.exec(text);
  const { sign, digits, mark } = found?.groups ?? {};
  if (digits === undefined) return { ok: false, why: "notANumber" };
  const amount = decimal(digits) / (percent || mark !== undefined ? 100 : 1);
  return { ok: true, value: sign === "-" || sign === "−" ? -amount : amount, added: sign === "+" };
};
