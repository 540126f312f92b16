import type { GuideKey } from "../../guide/words/told.ts";
import type { ChoiceFieldId } from "../fields/fields.ts";

type Slots = Readonly<Record<string, ChoiceFieldId>>;

/** Which numbers of a step's sentence are the maker's own, by the sentence and its slot. */
const FIELDS: { readonly [K in GuideKey]?: Slots } = {
  "lesson.neckline.say": {
    front: "neckline.lowerFront",
    back: "neckline.lowerBack",
    widen: "neckline.widen",
  },
  "lesson.side.say": { by: "moveSideSeams.by" },
  "lesson.hem.say": { by: "raiseHem.by" },
  "lesson.sleeve.say": { above: "endSleeve.aboveWrist" },
  "lesson.v.say": { half: "vInsert.halfWidth", depth: "vInsert.depth" },
  "lesson.bands.say": { allowance: "allowances.bands" },
  "lesson.turnings.say": {
    raglan: "allowances.raglan",
    side: "allowances.side",
    underarm: "allowances.underarm",
    bands: "allowances.bands",
  },
};

/** The number that the teacher may change where this slot stands; null: it is worked out. */
export const lessonField = (key: GuideKey, slot: string): ChoiceFieldId | null => {
  const slots = FIELDS[key];
  return slots && Object.hasOwn(slots, slot) ? (slots[slot] ?? null) : null;
};
