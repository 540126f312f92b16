import { KEPT_IDS, type KeptId, MEASURE_IDS, type MeasureId } from "../drafting/measures.ts";
import { lettersOff, nearest, plain } from "./nearest.ts";

/** What a body may have beside its measures (contract, "Bodies"). */
const PERSON_HEADINGS = ["id", "name", "sex", "age", "unit"] as const;
export type PersonHeading = (typeof PERSON_HEADINGS)[number];

export const MEASURE_HEADINGS = [...MEASURE_IDS, ...KEPT_IDS] as const;
export type MeasureHeading = MeasureId | KeptId;

export type Heading = PersonHeading | MeasureHeading;
const HEADINGS: readonly Heading[] = [...PERSON_HEADINGS, ...MEASURE_HEADINGS];

export const isMeasureHeading = (word: string): word is MeasureHeading =>
  MEASURE_HEADINGS.some((known) => known === word);
export const isPersonHeading = (word: string): word is PersonHeading =>
  PERSON_HEADINGS.some((known) => known === word);
export const isHeading = (word: string): word is Heading =>
  HEADINGS.some((known) => known === word);

/** One letter off `height`, but a thing of its own that many tables have (contract, "Bodies"). */
const NEVER_A_SLIP = "weight";
/** Words of this many letters may be two off and still be meant; shorter ones collide. */
const LONG_WORD = 6;
/** A shorter word may be one off from a long one: `wrists`, `heigt`. */
const NEARLY_LONG_WORD = 5;

/** How far a heading may be from a known one to be taken for a slip of the pen. */
const mostOff = (one: string, other: string): number => {
  const shorter = Math.min(one.length, other.length);
  const longer = Math.max(one.length, other.length);
  if (shorter >= LONG_WORD) return 2;
  return shorter >= NEARLY_LONG_WORD && longer >= LONG_WORD ? 1 : 0;
};

/**
 * The heading that this one nearly is: the same but for case, blanks or hyphens, or a slip of the
 * pen. Reading on would estimate a measure that was taken, so the file is refused instead.
 */
export const nearlyHeading = (heading: string): Heading | null => {
  const bare = plain(heading);
  if (bare === NEVER_A_SLIP || bare === "") return null;
  const near = HEADINGS.map((known) => ({ known, off: lettersOff(bare, plain(known)) }))
    .filter(({ known, off }) => off <= mostOff(bare, plain(known)))
    .sort((a, b) => a.off - b.off);
  return near[0]?.known ?? null;
};

/** A measure that an unknown column may have been meant for, to be named in the notice. */
const perhaps = (heading: string): string | null => {
  const bare = plain(heading);
  if (bare.length < 3) return null; // two letters are near everything
  const starts = MEASURE_HEADINGS.find(
    (known) => plain(known).startsWith(bare) || bare.startsWith(plain(known)),
  );
  return starts ?? nearest(heading, MEASURE_HEADINGS, bare.length < LONG_WORD ? 1 : 2);
};

/** The one notice about columns or keys that are left alone; none where there is none. */
export const leftAlone = (headings: readonly string[]): readonly string[] => {
  const named = headings
    .filter((heading) => heading.trim() !== "")
    .map((heading) => {
      const near = perhaps(heading);
      return near === null ? heading : `${heading} (nearest measure: ${near})`;
    });
  return named.length === 0 ? [] : [`Not known and left alone: ${named.join(", ")}.`];
};
