import { CUT_HEIGHT_ALLOWANCES } from "../../drafting/data/ranges.ts";
import type { Work } from "../../project/work.ts";
import { type FieldId, fieldOf } from "../fields/fields.ts";
import { readLength, readShare } from "../units/readLength.ts";
import { MM_IN } from "../units/unit.ts";
import { say } from "../words/say.ts";
import { labelOf } from "./changes.ts";
import { type Print, printField } from "./print.ts";
import type { Refused } from "./store.ts";

/** A number as typed: taken, with its value (null: left out), or refused with its sentences. */
export type Taken = { readonly value: number | null } | { readonly refused: Refused };

const SUCH = { mm: "12.7", cm: "1.27", in: "7 1/2", percent: "25 %", ratio: "0.8" };

/** What the number may be just now: its range, and no cuff lower than its own turnings. */
export const rangeNow = (id: FieldId, now: Work): { least: number; most: number } => {
  const { range, rangeNow: narrowed } = fieldOf(id);
  if (narrowed) return narrowed(now);
  const { bands, allowances } = now.choices;
  const turnings = CUT_HEIGHT_ALLOWANCES * allowances.bands;
  if (id === "cuff.cutHeight" || id === "hemBand.cutHeight") {
    return { least: Math.max(range.least, turnings), most: range.most };
  }
  if (id !== "allowances.bands") return { least: range.least, most: range.most };
  const lowest = Math.min(bands.cuff.cutHeight, bands.hemBand.cutHeight);
  return { least: range.least, most: Math.min(range.most, lowest / CUT_HEIGHT_ALLOWANCES) };
};

const keptLead = (id: FieldId, typed: string, now: Work, p: Print): string => {
  const kept = fieldOf(id).read(now);
  return kept === null
    ? say("refuse.rangeEmpty", { typed })
    : say("refuse.range", { typed, kept: printField(id, kept, p) });
};

const asWord = (id: FieldId, typed: string, now: Work, p: Print): Refused => {
  const { kind } = fieldOf(id);
  const isLength = kind === "length" || kind === "mm";
  const such = SUCH[kind === "length" ? p.unit : kind];
  const cure = say(isLength ? "refuse.text" : "refuse.share", { typed, such });
  return { typed, lead: keptLead(id, typed, now, p), cure };
};

const outside = (id: FieldId, value: number, typed: string, now: Work, p: Print): Refused => {
  const { least, most } = rangeNow(id, now);
  const must = say("refuse.must", {
    label: labelOf(id),
    least: printField(id, least, p),
    most: printField(id, most, p),
  });
  const inCm = value * MM_IN.cm;
  const slip = id.startsWith("measures.") && p.unit === "mm" && inCm >= least && inCm <= most;
  const hint = slip
    ? ` ${say("refuse.cm", { typed: p.number(value, 2), mm: p.number(inCm, 1) })}`
    : "";
  const { why } = fieldOf(id);
  const ground = why ? ` ${say(why)}` : "";
  const lead = keptLead(id, printField(id, value, p), now, p);
  return { typed, lead, cure: `${must}${ground}${hint}` };
};

/** Reads a number as the maker typed it, against what it may be. */
export const takeTyped = (id: FieldId, typed: string, now: Work, p: Print): Taken => {
  const field = fieldOf(id);
  const found =
    field.kind === "length" || field.kind === "mm"
      ? readLength(typed, field.kind === "mm" ? "mm" : p.unit)
      : readShare(typed, field.kind === "percent");
  const kept = field.read(now);
  if (!found.ok && found.why === "empty") {
    if (field.mayBeEmpty) return { value: null };
    const shown = kept === null ? say("notGiven") : printField(id, kept, p);
    return { refused: { typed, lead: say("refuse.empty", { kept: shown }), cure: "" } };
  }
  if (!found.ok) return { refused: asWord(id, typed, now, p) };
  const value = found.added ? (kept ?? 0) + found.value : found.value;
  const { least, most } = rangeNow(id, now);
  return value < least || value > most ? { refused: outside(id, value, typed, now, p) } : { value };
};
