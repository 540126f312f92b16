import type { Choices } from "../../drafting/choices.ts";
import type { Range } from "../../drafting/data/ranges.ts";
import type { PieceName } from "../../drafting/piece.ts";
import type { Work } from "../../project/work.ts";
import type { WordKey } from "../words/en.ts";

/** A number that the maker may change: where it stands in the work, and what it may be. */
export type NumberField = {
  /** "mm": a length that is in millimetres whatever the maker's unit is. */
  readonly kind: "length" | "mm" | "percent" | "ratio";
  readonly range: Range;
  /** Where the rest of the work narrows what it may be. */
  readonly rangeNow?: (work: Work) => Range;
  /** Why it may be no more and no less, where that is not plain. */
  readonly why?: WordKey;
  /** null: not given. */
  readonly read: (work: Work) => number | null;
  readonly write: (work: Work, value: number | null) => Work;
  /** An empty number is taken, as "not given". */
  readonly mayBeEmpty: boolean;
  /** The pieces that it changes. */
  readonly pieces: readonly PieceName[];
};

type ChoiceField = {
  readonly kind: NumberField["kind"];
  readonly range: Range;
  readonly get: (choices: Choices) => number;
  readonly set: (choices: Choices, value: number) => Choices;
  readonly pieces: readonly PieceName[];
};

/** A number among the choices: it always has a value. */
export const ofChoices = ({ kind, range, get, set, pieces }: ChoiceField): NumberField => ({
  kind,
  range,
  pieces,
  mayBeEmpty: false,
  read: (work) => get(work.choices),
  write: (work, value) => (value === null ? work : { ...work, choices: set(work.choices, value) }),
});
