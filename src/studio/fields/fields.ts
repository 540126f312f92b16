import { ALTERATION_FIELDS } from "./alterationFields.ts";
import { BAND_FIELDS } from "./bandFields.ts";
import { CLOTH_FIELDS } from "./clothFields.ts";
import { isMeasure, type MeasureFieldId, measureField } from "./measureFields.ts";
import type { NumberField } from "./numberField.ts";
import { PRINT_FIELDS } from "./printFields.ts";

const CHOICE_FIELDS = {
  ...ALTERATION_FIELDS,
  ...BAND_FIELDS,
  ...CLOTH_FIELDS,
  ...PRINT_FIELDS,
} as const;
export type ChoiceFieldId = keyof typeof CHOICE_FIELDS;
export type FieldId = ChoiceFieldId | MeasureFieldId;

export const isChoice = (id: string): id is ChoiceFieldId => Object.hasOwn(CHOICE_FIELDS, id);
export const isField = (id: string): id is FieldId => isChoice(id) || isMeasure(id);

/** Every number that the maker may change, by its name. */
export const fieldOf = (id: FieldId): NumberField =>
  isChoice(id) ? CHOICE_FIELDS[id] : measureField(id);
