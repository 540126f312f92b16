import type { Check } from "../../checks/check.ts";
import { type Doubt, doubtfulMeasures } from "../../drafting/doubts.ts";
import { foretellingsFor } from "../../drafting/foretelling.ts";
import type { Body, MeasureId } from "../../drafting/measures.ts";
import { fitsBetterSwapped } from "../../drafting/waistHipSwap.ts";
import type { SentenceKey } from "../words/checkSentences.ts";
import { filled } from "../words/sentence.ts";
import type { Speech } from "./speech.ts";

/** The one order against two measures added: the way to the wrist over the shoulder's end. */
const MORE_THAN: { readonly [K in MeasureId]?: readonly MeasureId[] } = {
  spineToWrist: ["armLength", "shoulder"],
};

const listed = ({ say, sentences }: Speech, ids: readonly MeasureId[]): string => {
  const names = ids.map((id) => say(`name.${id}`));
  const last = names.at(-1) ?? "";
  if (names.length < 2) return last;
  return `${names.slice(0, -1).join(", ")} ${sentences["word.and"]} ${last}`;
};

type Told = { readonly said: SentenceKey; readonly cure: SentenceKey; readonly other: string };

const against = (speech: Speech, { id, other }: Doubt): Told => {
  const more = MORE_THAN[id];
  return {
    said: more ? "said.measure.more" : "said.measure.less",
    cure: "cure.measure.both",
    other: listed(speech, more ?? (other ? [other] : [])),
  };
};

const unlikely = (speech: Speech, body: Body, { id }: Doubt): Told => {
  const from = foretellingsFor(body).judged.find((judged) => judged.id === id)?.from ?? [];
  const swapped = (id === "waist" || id === "hip") && fitsBetterSwapped(body);
  const few = from.length === 1 ? "said.measure.unlikelyOne" : "said.measure.unlikely";
  return {
    said: from.length === 0 ? "said.measure.unlikelyAll" : few,
    cure: swapped ? "cure.measure.swapped" : "cure.measure.again",
    other: listed(speech, from),
  };
};

/** What is said of a measure that the others do not bear out. */
export const doubtSentence = (speech: Speech, body: Body | null, check: Check): string => {
  const { sentences, say, print } = speech;
  const doubt = body && doubtfulMeasures(body).find(({ id }) => check.id === `measure-${id}`);
  if (!doubt) {
    const slots = { value: print.full(check.value), limit: print.full(check.limit) };
    return filled(sentences["said.other"], slots);
  }
  const logic = doubt.reason === "logic";
  const { said, cure, other } = logic ? against(speech, doubt) : unlikely(speech, body, doubt);
  const slots = {
    name: say(`name.${doubt.id}`),
    other,
    value: print.full(doubt.value),
    limit: print.full(logic ? doubt.foretold : Math.round(doubt.foretold)),
  };
  return `${filled(sentences[said], slots)} ${filled(sentences[cure], slots)}`;
};
