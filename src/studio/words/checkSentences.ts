/** Every check that a garment can meet (contract, "Checks"), the measures' own apart. */
export const CHECK_IDS = [
  "raglan-front-match",
  "raglan-back-match",
  "side-match",
  "underarm-match",
  "v-insert-match",
  "neckline-turn",
  "underarm-turn",
  "hem-turn",
  "wrist-turn",
  "side-seam-move",
  "chest-ease",
  "hip-ease",
  "upper-arm-ease",
  "head-passes",
  "neckline-passes",
  "neckband-lies-flat",
  "neckband-stands",
  "neckband-sews",
  "hand-passes-cuff",
  "cuff-holds",
  "cuff-pressure",
  "hem-band-passes",
  "hem-band-holds",
  "hem-band-pressure",
  "neckline-crosses",
  "allowance-folds",
  "rail-scye",
  "rail-length",
  "rail-hem-width",
  "rail-neck-width",
  "rail-sleeve-width",
  "rail-wrist",
  "rail-sleeve-length",
  "rail-sleeve-neck",
  "rail-raise-hem",
  "rail-end-sleeve",
  "rail-widen",
  "rail-v-width",
  "rail-v-depth",
  "rail-v-allowance",
  "rail-v-cut",
  "rail-share",
  "rail-cuff",
  "rail-hem-band",
] as const;
export type CheckId = (typeof CHECK_IDS)[number];

export const isCheckId = (id: string): id is CheckId => CHECK_IDS.some((known) => known === id);

type Eased = "chest-ease" | "hip-ease" | "upper-arm-ease";

/** What a sentence says otherwise in one case, and words that stand in a slot. */
type Case =
  | "cuff-holds.short"
  | "hem-band-holds.short"
  | "hem-band-pressure.blouse"
  | "rail-v-cut.away"
  | "measure.less"
  | "measure.more"
  | "measure.unlikely"
  | "measure.unlikelyOne"
  | "measure.unlikelyAll"
  | "other";

type Word = "more" | "less" | "longer" | "shorter" | "by" | "not" | "and" | "hip" | "chest";

type Cure =
  | Exclude<CheckId, `rail-${string}` | Eased | "neckline-crosses" | "allowance-folds">
  | `${Eased}.${"more" | "less"}`
  | "rail-v-depth.shallower"
  | "rail-v-depth.deeper"
  | "measure.both"
  | "measure.again"
  | "measure.swapped";

export type SentenceKey = `said.${CheckId | Case}` | `word.${Word}` | `cure.${Cure}`;

/**
 * What the checks say, in a language other than the report's English: there the check's own message
 * is shown. A language is complete by type.
 */
export type CheckSentences = Readonly<Record<SentenceKey, string>>;
