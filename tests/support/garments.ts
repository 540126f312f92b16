import type { Garment } from "../../src/bands/garment.ts";
import { makeGarment } from "../../src/bands/makeGarment.ts";
import { draftRaglanBlock } from "../../src/drafting/block/raglanBlock.ts";
import type { Choices } from "../../src/drafting/choices.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Measures } from "../../src/drafting/measures.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";

/** Alterations, bands and cloth changed from the defaults, group by group. */
export type Changes = {
  readonly alterations?: Partial<Choices["alterations"]>;
  readonly body?: Partial<Choices["cloth"]["body"]>;
  readonly bands?: Partial<Choices["bands"]>;
  readonly allowances?: Partial<Choices["allowances"]>;
};

export const choicesWith = ({ alterations, body, bands, allowances }: Changes): Choices => ({
  ...DEFAULT_CHOICES,
  alterations: { ...DEFAULT_CHOICES.alterations, ...alterations },
  cloth: { ...DEFAULT_CHOICES.cloth, body: { ...DEFAULT_CHOICES.cloth.body, ...body } },
  bands: { ...DEFAULT_CHOICES.bands, ...bands },
  allowances: { ...DEFAULT_CHOICES.allowances, ...allowances },
});

/** The garment of a body, the method's worked example where none is given. */
export const garmentOf = (changes: Changes = {}, measures: Measures = WORKED_EXAMPLE): Garment => {
  const choices = choicesWith(changes);
  return makeGarment(draftRaglanBlock(measures, choices.fit), measures, choices);
};

export const WITHOUT_V = {
  alterations: { vInsert: { ...DEFAULT_CHOICES.alterations.vInsert, on: false } },
} as const satisfies Changes;

export const CUT_AWAY = {
  alterations: {
    vInsert: { ...DEFAULT_CHOICES.alterations.vInsert, method: "cut-away" as const },
  },
} as const satisfies Changes;

export const SHRINKING = {
  body: { shrinkLength: 0.06, shrinkWidth: 0.02 },
} as const satisfies Changes;
