import { MEASURE_RANGES, type Range } from "../../drafting/data/ranges.ts";
import { KEPT_IDS, type KeptId, MEASURE_IDS, type MeasureId } from "../../drafting/measures.ts";
import { PIECE_NAMES } from "../../drafting/piece.ts";
import { heldBody, withBody } from "../../project/work.ts";
import type { NumberField } from "./numberField.ts";

/** Measures along the body or the arm; the others go round. */
const LENGTHS: readonly string[] = [
  "shoulder",
  "acrossBack",
  "napeToWaist",
  "napeToHip",
  "scyeDepth",
  "armLength",
  "spineToWrist",
  "waistToHip",
];

const rangeOf = (id: MeasureId | KeptId): Range => {
  if (id === "height" || id === "chest" || id === "torsoGirth") return MEASURE_RANGES[id];
  return LENGTHS.includes(id) ? MEASURE_RANGES.length : MEASURE_RANGES.girth;
};

export type MeasureFieldId = `measures.${MeasureId | KeptId}`;

const ofMeasure = (id: MeasureId | KeptId): NumberField => ({
  kind: "length",
  range: rangeOf(id),
  mayBeEmpty: true,
  pieces: PIECE_NAMES,
  read: (work) => heldBody(work).measures[id] ?? null,
  write: (work, value) =>
    withBody(work, (body) => {
      const { [id]: _, ...others } = body.measures;
      return { ...body, measures: value === null ? others : { ...others, [id]: value } };
    }),
});

type Known = { readonly id: MeasureId | KeptId; readonly field: NumberField };

const ALL_MEASURES: ReadonlyMap<string, Known> = new Map(
  [...MEASURE_IDS, ...KEPT_IDS].map((id) => [`measures.${id}`, { id, field: ofMeasure(id) }]),
);

const known = (id: MeasureFieldId): Known =>
  ALL_MEASURES.get(id) ?? { id: "chest", field: ofMeasure("chest") };

export const isMeasure = (id: string): id is MeasureFieldId => ALL_MEASURES.has(id);
export const measureField = (id: MeasureFieldId): NumberField => known(id).field;
export const measureOf = (id: MeasureFieldId): MeasureId | KeptId => known(id).id;
