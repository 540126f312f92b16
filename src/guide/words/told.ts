import type { Mm, Ratio } from "../../geometry/units.ts";
import type { EN } from "./en.ts";

/** Every sentence that the guide, the lesson and the table test can say. */
export type GuideKey = keyof typeof EN;

/** A catalogue: each sentence in one language. */
export type GuideWords = Readonly<Record<GuideKey, string>>;

/** The slots of a sentence, by name: `{length}` in its text. */
type SlotNames<Text extends string> = Text extends `${string}{${infer Name}}${infer Rest}`
  ? Name | SlotNames<Rest>
  : never;

type SlotsOf<Key extends GuideKey> = Readonly<Record<SlotNames<(typeof EN)[Key]>, Slot>>;

/** Sentences without a slot. */
type PlainKey = {
  [Key in GuideKey]: SlotNames<(typeof EN)[Key]> extends never ? Key : never;
}[GuideKey];

/**
 * What stands in a slot. A number that was `worked` out of the draft can be left blank for a class
 * to find; one that was given, such as a choice, is always told.
 */
export type Slot =
  | {
      readonly kind: "mm";
      readonly value: Mm;
      readonly worked: boolean;
      readonly digits: 1 | 2 | 3;
    }
  | { readonly kind: "share"; readonly value: Ratio; readonly worked: boolean }
  | { readonly kind: "number"; readonly value: number; readonly digits: 0 | 1 | 2 }
  | { readonly kind: "words"; readonly told: Told };

/** A sentence as data: what is said and with which numbers. `tell` puts it into a language. */
export type Told = {
  readonly key: GuideKey;
  readonly slots: Readonly<Record<string, Slot>>;
};

/** A sentence with its slots; a slot misspelt or left out does not compile. */
export const told = <Key extends GuideKey>(key: Key, slots: SlotsOf<Key>): Told => ({ key, slots });
/** A sentence that has no slots. */
export const said = (key: PlainKey): Told => ({ key, slots: {} });

/** A length that the draft found. */
export const mm = (value: Mm): Slot => ({ kind: "mm", value, worked: true, digits: 1 });
/** A length that was given, a measure or a choice: as it was typed, 9.525 and not 9.5. */
export const given = (value: Mm): Slot => ({ kind: "mm", value, worked: false, digits: 3 });

/** Lengths are typed to a thousandth; a drawn one is never so near to it by chance. */
const TYPED: Mm = 1e-9;

/** A length of so few digits was typed by somebody, not drawn. */
const isTyped = (value: Mm): boolean => Math.abs(value - Math.round(value * 1000) / 1000) < TYPED;

/** A term of a sum: to a hundredth, so that the sum comes out, or as it was given. */
export const term = (value: Mm): Slot => ({
  kind: "mm",
  value,
  worked: false,
  digits: isTyped(value) ? 3 : 2,
});
/** What a term is told as: a class has nothing finer to reckon with. */
export const asTold = (value: Mm): Mm => (isTyped(value) ? value : Math.round(value * 100) / 100);

/** What a sum comes to: to a hundredth, or to a thousandth where its terms were typed so. */
export const sum = (value: Mm): Slot => ({
  kind: "mm",
  value,
  worked: true,
  digits: isTyped(value) ? 3 : 2,
});
/** A share that the draft found, told in per cent. */
export const share = (value: Ratio): Slot => ({ kind: "share", value, worked: true });
/** A whole number that is no length. */
export const count = (value: number): Slot => ({ kind: "number", value, digits: 0 });
/** A number that is no length. */
export const number = (value: number, digits: 1 | 2 = 1): Slot => ({
  kind: "number",
  value,
  digits,
});
/** Words within words: a name, a way to lay cloth. */
export const words = (sentence: Told): Slot => ({ kind: "words", told: sentence });
