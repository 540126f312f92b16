import { hemPasses } from "../../bands/cuffAndHem.ts";
import type { Garment } from "../../bands/garment.ts";
import type { Check } from "../../checks/check.ts";
import { LIMITS } from "../../checks/data/limits.ts";
import { BLOCK } from "../../drafting/data/blockConstants.ts";
import type { FinishedPieces, Measured } from "../../drafting/finishedPieces.ts";
import type { Body } from "../../drafting/measures.ts";
import { bodyOf, heldBody } from "../../project/work.ts";
import { useMade } from "../state/made.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { type CheckId, isCheckId, type SentenceKey } from "../words/checkSentences.ts";
import { useSay } from "../words/say.ts";
import { filled } from "../words/sentence.ts";
import { checkValue } from "./checkWords.ts";
import { doubtSentence } from "./doubtSentence.ts";
import type { Speech } from "./speech.ts";

type Slots = Readonly<Record<string, string>>;
/** What a check's sentence holds besides its value and limit, and how it goes on. */
type Told = {
  /** Where not its own: the sentence of the case. */
  readonly said?: SentenceKey;
  readonly slots?: Slots;
  /** Said whatever the verdict. */
  readonly more?: SentenceKey | null;
  readonly cure?: SentenceKey;
};
type Tell = (garment: Garment, check: Check, speech: Speech) => Told;

const nothingMore: Tell = () => ({});

const cured =
  (cure: SentenceKey): Tell =>
  () => ({ cure });

type Sewn = (finished: FinishedPieces) => readonly [one: Measured, other: Measured];

const seam =
  (cure: SentenceKey, sewn: Sewn): Tell =>
  ({ finished }, _, { print }) => {
    const [one, other] = sewn(finished);
    return { slots: { one: print.full(one.length), other: print.full(other.length) }, cure };
  };

const insert: Tell = ({ finished }, _, { print }) => {
  const [v, left] = [finished.front.v, finished.vInsert?.left];
  if (!v || !left) return { said: "said.other" };
  const stretch = print.percent(v.length / left.length - 1);
  const slots = { one: print.full(v.length), other: print.full(left.length), stretch };
  return { slots, cure: "cure.v-insert-match" };
};

const ease =
  (
    id: "chest-ease" | "hip-ease" | "upper-arm-ease",
    of: "chest" | "hip" | "upperArm",
    most: number,
  ): Tell =>
  ({ measures }, { value, limit }, { sentences, print }) => ({
    slots: {
      girth: print.full(measures[of] + value),
      body: print.full(measures[of]),
      value: print.full(Math.abs(value)),
      than: sentences[value < 0 ? "word.less" : "word.more"],
      most: print.full(most),
    },
    cure: value < limit ? `cure.${id}.more` : `cure.${id}.less`,
  });

/** "um 20 %" or "nicht": what something has to stretch by for a part to pass. */
const by = (value: number, { sentences, print }: Speech): string =>
  value > 0 ? filled(sentences["word.by"], { value: print.percent(value) }) : sentences["word.not"];

const hangs = ({ bands }: Garment): boolean =>
  bands.hemBand.finishedLength > bands.hemBand.holdsBlouseFrom;

const holds =
  (id: "cuff-holds" | "hem-band-holds", of: "cuff" | "hemBand"): Tell =>
  ({ bands }, { value }, { print }) => ({
    said: value < 0 ? `said.${id}.short` : `said.${id}`,
    slots: {
      opening: print.full(bands[of].opening),
      length: print.full(bands[of].finishedLength),
      value: print.percent(Math.abs(value)),
      none: print.percent(0),
    },
    cure: `cure.${id}`,
  });

/** One for every check: a check without its sentence does not compile. */
const TELLS: Readonly<Record<CheckId, Tell>> = {
  "raglan-front-match": seam("cure.raglan-front-match", ({ front, sleeve }) => [
    front.raglan,
    sleeve.raglanFront,
  ]),
  "raglan-back-match": seam("cure.raglan-back-match", ({ back, sleeve }) => [
    back.raglan,
    sleeve.raglanBack,
  ]),
  "side-match": seam("cure.side-match", ({ front, back }) => [front.side, back.side]),
  "underarm-match": seam("cure.underarm-match", ({ sleeve }) => [
    sleeve.underarmFront,
    sleeve.underarmBack,
  ]),
  "v-insert-match": insert,
  "neckline-turn": cured("cure.neckline-turn"),
  "underarm-turn": cured("cure.underarm-turn"),
  "hem-turn": cured("cure.hem-turn"),
  "wrist-turn": cured("cure.wrist-turn"),
  "side-seam-move": cured("cure.side-seam-move"),
  "chest-ease": ease("chest-ease", "chest", LIMITS.chestEase.to),
  "hip-ease": ease("hip-ease", "hip", LIMITS.hipEase.to),
  "upper-arm-ease": ease("upper-arm-ease", "upperArm", LIMITS.upperArmEase.to),
  "head-passes": (_, { value }, speech) => ({
    slots: { by: by(value, speech) },
    cure: "cure.head-passes",
  }),
  "neckline-passes": ({ bands }, { value }, speech) => ({
    slots: { by: by(value, speech), opening: speech.print.full(bands.neckband.opening) },
    cure: "cure.neckline-passes",
  }),
  "neckband-lies-flat": ({ bands }, { value }, { sentences, print }) => ({
    slots: {
      worn: print.full(bands.neckband.bodyRing + value),
      ring: print.full(bands.neckband.bodyRing),
      value: print.full(Math.abs(value)),
      longer: sentences[value < 0 ? "word.shorter" : "word.longer"],
    },
    cure: "cure.neckband-lies-flat",
  }),
  "neckband-stands": cured("cure.neckband-stands"),
  "neckband-sews": cured("cure.neckband-sews"),
  "hand-passes-cuff": ({ bands, measures }, { value }, speech) => ({
    slots: {
      length: speech.print.full(bands.cuff.finishedLength),
      girth: speech.print.full(measures.hand),
      by: by(value, speech),
    },
    cure: "cure.hand-passes-cuff",
  }),
  "cuff-holds": holds("cuff-holds", "cuff"),
  "cuff-pressure": cured("cure.cuff-pressure"),
  "hem-band-passes": ({ bands, measures }, { value }, speech) => ({
    slots: {
      length: speech.print.full(bands.hemBand.finishedLength),
      part: speech.sentences[measures.chest > measures.hip ? "word.chest" : "word.hip"],
      girth: speech.print.full(hemPasses(measures)),
      by: by(value, speech),
    },
    cure: "cure.hem-band-passes",
  }),
  "hem-band-holds": holds("hem-band-holds", "hemBand"),
  "hem-band-pressure": (garment, _, { print }) => ({
    slots: { blouse: print.full(garment.bands.hemBand.holdsBlouseFrom) },
    more: hangs(garment) ? "said.hem-band-pressure.blouse" : null,
    cure: "cure.hem-band-pressure",
  }),
  "neckline-crosses": nothingMore,
  "allowance-folds": nothingMore,
  "rail-scye": nothingMore,
  "rail-length": (_, __, { print }) => ({ slots: { side: print.full(BLOCK.sideLeast) } }),
  "rail-hem-width": nothingMore,
  "rail-neck-width": nothingMore,
  "rail-sleeve-width": nothingMore,
  "rail-wrist": nothingMore,
  "rail-sleeve-length": nothingMore,
  "rail-sleeve-neck": nothingMore,
  "rail-raise-hem": nothingMore,
  "rail-end-sleeve": nothingMore,
  "rail-widen": nothingMore,
  "rail-v-width": nothingMore,
  "rail-v-depth": (_, { value, limit }) => ({
    cure: value > limit ? "cure.rail-v-depth.shallower" : "cure.rail-v-depth.deeper",
  }),
  "rail-v-allowance": nothingMore,
  // A V cut away is held against nought; one that is too deep against the front's room.
  "rail-v-cut": (_, { limit }) => (limit === 0 ? { said: "said.rail-v-cut.away" } : {}),
  "rail-share": nothingMore,
  "rail-cuff": nothingMore,
  "rail-hem-band": nothingMore,
};

const ownSentence = (garment: Garment, check: Check, id: CheckId, speech: Speech): string => {
  const { sentences, print } = speech;
  const { said, slots, more, cure } = TELLS[id](garment, check, speech);
  const all = {
    value: checkValue(check, check.value, print),
    limit: checkValue(check, check.limit, print),
    ...slots,
  };
  const keys = [
    said ?? (`said.${id}` as const),
    ...(cure && check.verdict !== "sound" ? [cure] : []),
    ...(more ? [more] : []),
  ];
  return keys.map((key) => filled(sentences[key], all)).join(" ");
};

/** What a check says in a language of its own. `body` as it was given; the doubts are about it. */
export const sentenceIn = (
  speech: Speech,
  {
    garment,
    body,
    check,
  }: { readonly garment: Garment; readonly body: Body | null; readonly check: Check },
): string => {
  const { id } = check;
  if (isCheckId(id)) return ownSentence(garment, check, id, speech);
  return doubtSentence(speech, body, check);
};

/** What the checks of the work on the table say: in English in the very words of the report. */
export const useSentence = (): ((check: Check) => string) => {
  const sentences = useStudio((s) => s.sentences);
  const held = useStudio((s) => heldBody(s.history.present));
  const garment = useMade()?.garment;
  const say = useSay();
  const print = usePrint();
  return (check) =>
    sentences && garment
      ? sentenceIn({ sentences, say, print }, { garment, body: bodyOf(held), check })
      : check.message;
};
