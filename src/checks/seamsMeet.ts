import type { Garment } from "../bands/garment.ts";
import type { FinishedPieces, Measured } from "../drafting/finishedPieces.ts";
import type { Seam, SeamId } from "../drafting/seams.ts";
import { asMm, asPercent } from "../drafting/words.ts";
import type { Check } from "./check.ts";
import { LIMITS } from "./data/limits.ts";
import { atMost, checkOf, verdictOf } from "./verdict.ts";

type Wording = { readonly one: string; readonly other: string; readonly change: string };

const WORDING: Readonly<Record<Exclude<SeamId, "v-left">, Wording>> = {
  "raglan-front": {
    one: "The front raglan",
    other: "the sleeve's",
    change: "Correct the sleeve, or correct the body.",
  },
  "raglan-back": {
    one: "The back raglan",
    other: "the sleeve's",
    change: "Correct the sleeve, or correct the body.",
  },
  side: {
    one: "The front side seam",
    other: "the back's",
    change: "Redraw one of the two.",
  },
  underarm: {
    one: "The sleeve's front underarm",
    other: "its back one",
    change: "Redraw one of the two.",
  },
};

/** The finished lengths of the two edges: what the wash adds is eased in and is no difference. */
type Finished = readonly [one: Measured, other: Measured];

const edgesOf = ({ front, back, sleeve }: FinishedPieces, id: keyof typeof WORDING): Finished => {
  switch (id) {
    case "raglan-front":
      return [front.raglan, sleeve.raglanFront];
    case "raglan-back":
      return [back.raglan, sleeve.raglanBack];
    case "side":
      return [front.side, back.side];
    case "underarm":
      return [sleeve.underarmFront, sleeve.underarmBack];
  }
};

const seamMeets = (id: keyof typeof WORDING, seam: Seam, finished: FinishedPieces): Check => {
  const [onOne, onOther] = edgesOf(finished, id);
  const { sound, attend } = LIMITS.seam;
  const value = Math.abs(seam.difference);
  const { one, other, change } = WORDING[id];
  return checkOf(
    {
      id: `${id}-match`,
      verdict: verdictOf(atMost(value, sound), atMost(value, attend)),
      value,
      limit: sound,
      unit: "mm",
    },
    {
      measured: `${one} is ${asMm(onOne.length)} and ${other} ${asMm(onOther.length)}, ${asMm(value)} apart; the limit is ${asMm(sound)}.`,
      change,
    },
  );
};

/** Each pair of edges sewn together agrees in length (method 6). Nothing where there is no V. */
export const seamsMeet = ({ seams, finished, choices }: Garment): readonly Check[] => {
  const found = seams.flatMap((seam) =>
    seam.id === "v-left" ? [] : [seamMeets(seam.id, seam, finished)],
  );
  const { v } = finished.front;
  const left = finished.vInsert?.left;
  if (!v || !left) return found;
  const value = Math.abs(v.length - left.length);
  const stretch = v.length / left.length - 1;
  const attends = atMost(stretch, choices.cloth.body.stretch);
  const insert = checkOf(
    {
      id: "v-insert-match",
      verdict: verdictOf(atMost(value, LIMITS.vMatch), attends),
      value,
      limit: LIMITS.vMatch,
      unit: "mm",
    },
    {
      measured: `The V in the front is sewn over ${asMm(v.length)} a side and the insert's edge is ${asMm(left.length)}, ${asMm(value)} apart; the limit is ${asMm(LIMITS.vMatch)}.`,
      change: `The insert would have to stretch by ${asPercent(stretch)}. Use the method “true”.`,
    },
  );
  return [...found, insert];
};
