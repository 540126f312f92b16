import type { Choices } from "../../drafting/choices.ts";
import { CHOICE_RANGES } from "../../drafting/data/ranges.ts";
import type { PieceName } from "../../drafting/piece.ts";
import { ofChoices } from "./numberField.ts";

type Alterations = Choices["alterations"];
const BODY: readonly PieceName[] = ["front", "back"];
const ROUND_NECK: readonly PieceName[] = ["front", "back", "sleeve", "neckband"];
const V: readonly PieceName[] = ["front", "vInsert", "neckband"];

/** The choices with one alteration changed. */
const altered = <K extends keyof Alterations>(
  choices: Choices,
  name: K,
  change: Partial<Alterations[K]>,
): Choices => ({
  ...choices,
  alterations: { ...choices.alterations, [name]: { ...choices.alterations[name], ...change } },
});

const { neckline, vInsert } = CHOICE_RANGES;

export const ALTERATION_FIELDS = {
  "moveSideSeams.by": ofChoices({
    kind: "length",
    range: CHOICE_RANGES.moveSideSeams.by,
    get: (c) => c.alterations.moveSideSeams.by,
    set: (c, by) => altered(c, "moveSideSeams", { by }),
    pieces: ["front", "back", "sleeve"],
  }),
  "raiseHem.by": ofChoices({
    kind: "length",
    range: CHOICE_RANGES.raiseHem.by,
    get: (c) => c.alterations.raiseHem.by,
    set: (c, by) => altered(c, "raiseHem", { by }),
    pieces: BODY,
  }),
  "endSleeve.aboveWrist": ofChoices({
    kind: "length",
    range: CHOICE_RANGES.endSleeve.aboveWrist,
    get: (c) => c.alterations.endSleeve.aboveWrist,
    set: (c, aboveWrist) => altered(c, "endSleeve", { aboveWrist }),
    pieces: ["sleeve"],
  }),
  "neckline.lowerFront": ofChoices({
    kind: "length",
    range: neckline.lowerFront,
    get: (c) => c.alterations.neckline.lowerFront,
    set: (c, lowerFront) => altered(c, "neckline", { lowerFront }),
    pieces: ROUND_NECK,
  }),
  "neckline.lowerBack": ofChoices({
    kind: "length",
    range: neckline.lowerBack,
    get: (c) => c.alterations.neckline.lowerBack,
    set: (c, lowerBack) => altered(c, "neckline", { lowerBack }),
    pieces: ROUND_NECK,
  }),
  "neckline.widen": ofChoices({
    kind: "length",
    range: neckline.widen,
    get: (c) => c.alterations.neckline.widen,
    set: (c, widen) => altered(c, "neckline", { widen }),
    pieces: ROUND_NECK,
  }),
  "vInsert.halfWidth": ofChoices({
    kind: "length",
    range: vInsert.halfWidth,
    get: (c) => c.alterations.vInsert.halfWidth,
    set: (c, halfWidth) => altered(c, "vInsert", { halfWidth }),
    pieces: V,
  }),
  "vInsert.depth": ofChoices({
    kind: "length",
    range: vInsert.depth,
    get: (c) => c.alterations.vInsert.depth,
    set: (c, depth) => altered(c, "vInsert", { depth }),
    pieces: V,
  }),
  "vInsert.allowance": ofChoices({
    kind: "length",
    range: vInsert.allowance,
    get: (c) => c.alterations.vInsert.allowance,
    set: (c, allowance) => altered(c, "vInsert", { allowance }),
    pieces: V,
  }),
} as const;

/** Each alteration's button. */
const SWITCHES = [
  "neckline",
  "moveSideSeams",
  "raiseHem",
  "endSleeve",
  "vInsert",
] as const satisfies (keyof Alterations)[];
export type SwitchId = (typeof SWITCHES)[number];

export const switched = (choices: Choices, id: SwitchId, on: boolean): Choices =>
  altered(choices, id, { on });

export const withVMethod = (choices: Choices, method: Alterations["vInsert"]["method"]): Choices =>
  altered(choices, "vInsert", { method });
