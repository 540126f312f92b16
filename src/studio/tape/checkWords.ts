import type { Check } from "../../checks/check.ts";
import { MEASURE_IDS } from "../../drafting/measures.ts";
import type { FieldId } from "../fields/fields.ts";
import type { Print } from "../state/print.ts";
import type { WordKey, Words } from "../words/en.ts";
import type { Say } from "../words/say.ts";

const isWord = (words: Words, key: string): key is WordKey => Object.hasOwn(words, key);

/** The check's name on the tape. */
export const checkName = (id: string, words: Words, say: Say): string => {
  const key = `check.${id}`;
  if (isWord(words, key)) return say(key);
  const measure = MEASURE_IDS.find((m) => id === `measure-${m}`);
  if (measure) return say("check.measure", { name: say(`name.${measure}`) });
  return say("check.rail");
};

/** A value of a check in the maker's unit and language. */
export const checkValue = ({ unit }: Pick<Check, "unit">, value: number, p: Print): string => {
  if (unit === "mm") return p.full(value);
  if (unit === "ratio") return p.percent(value);
  if (unit === "deg") return `${p.number(value, 1)}°`;
  return `${p.number(value, 2)}\u00a0kPa`;
};

const FIGURES: readonly (readonly [ending: string, key: WordKey])[] = [
  ["-match", "value.apart"],
  ["-turn", "value.turn"],
];

/** The figure in the check's cell: "apart 0 mm", "off 3.4°", "stretch 47.2 %". */
export const checkFigure = (check: Check, p: Print, say: Say): string => {
  const value = checkValue(check, check.value, p);
  const found = FIGURES.find(([ending]) => check.id.endsWith(ending));
  if (found) return say(found[1], { value });
  return say(check.unit === "ratio" ? "value.stretch" : "value.plain", { value });
};

/** Eases must be at least their limit; all others at most. */
const LOW_LIMITS: readonly string[] = ["chest-ease", "hip-ease", "upper-arm-ease"];

export const checkLimit = (check: Check, p: Print, say: Say): string => {
  const limit = checkValue(check, check.limit, p);
  return say(LOW_LIMITS.includes(check.id) ? "limit.least" : "limit.most", { limit });
};

/** The numbers that mend a check, most to the point first; they may be changed in the card. */
const REMEDIES: Readonly<Record<string, readonly FieldId[]>> = {
  "chest-ease": ["fit.chestEase"],
  "hip-ease": ["fit.chestEase"],
  "upper-arm-ease": ["fit.upperArmEase"],
  "head-passes": ["neckline.lowerFront", "rib.stretch"],
  "neckline-passes": ["neckline.lowerFront", "neckline.widen"],
  "neckband-lies-flat": ["neckband.finishedDepth", "rib.stretch"],
  "neckband-stands": ["neckband.finishedDepth"],
  "neckband-sews": ["neckband.ratio", "rib.stretch"],
  "hand-passes-cuff": ["cuff.ease", "rib.stretch"],
  "cuff-holds": ["cuff.ease"],
  "cuff-pressure": ["cuff.ease"],
  "hem-band-passes": ["hemBand.ease", "rib.stretch"],
  "hem-band-holds": ["hemBand.ease"],
  "hem-band-pressure": ["hemBand.ease"],
  "underarm-turn": ["moveSideSeams.by"],
  "side-seam-move": ["moveSideSeams.by"],
  "v-insert-match": ["vInsert.allowance"],
  "neckline-crosses": ["neckline.lowerFront", "raiseHem.by"],
  "allowance-folds": ["allowances.raglan", "allowances.bands"],
  "rail-v-cut": ["vInsert.depth", "vInsert.allowance"],
  "rail-v-depth": ["vInsert.depth"],
  "rail-v-width": ["vInsert.halfWidth"],
  "rail-v-allowance": ["vInsert.allowance"],
  "rail-raise-hem": ["raiseHem.by"],
  "rail-end-sleeve": ["endSleeve.aboveWrist"],
  "rail-widen": ["neckline.widen"],
  "rail-share": ["neckband.finishedDepth"],
  "rail-cuff": ["cuff.ease"],
  "rail-hem-band": ["hemBand.ease"],
};

export const remediesOf = (id: string): readonly FieldId[] => {
  const measure = MEASURE_IDS.find((m) => id === `measure-${m}`);
  return measure ? [`measures.${measure}`] : (REMEDIES[id] ?? []);
};
