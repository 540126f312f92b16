import type { Garment } from "../../bands/garment.ts";
import { crossingsOf } from "../../geometry/crossings.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf } from "../../geometry/path.ts";
import { pointAlong } from "../../geometry/split.ts";
import { SEAM_MEETS } from "../../geometry/tolerance.ts";
import type { Mm } from "../../geometry/units.ts";
import { edgeOf, hasPiece, pieceOf } from "../shapes.ts";
import { asTold, given, said, sum, term, told } from "../words/told.ts";
import { finishedPiece, type LessonPiece, newNumbers } from "./lines.ts";
import { plusSum, type Question, worked } from "./question.ts";
import type { State } from "./state.ts";
import type { LessonStep } from "./step.ts";

const easeQuestion = ({ measures }: Garment, { block }: State): Question => {
  const [front, back] = [endOf(block.front.raglan).x, endOf(block.back.raglan).x];
  const { chest } = measures;
  const answer = 2 * (front + back) - chest;
  return worked(told("lesson.block.ease", { chest: given(chest) }), answer, {
    value: answer,
    working: told("lesson.block.easeSum", {
      front: term(front),
      back: term(back),
      chest: term(chest),
      answer: sum(2 * (asTold(front) + asTold(back)) - asTold(chest)),
    }),
  });
};

const raglanQuestion = ({ block }: State): Question => {
  const [front, sleeve] = [lengthOf(block.front.raglan), lengthOf(block.sleeve.raglanFront)];
  const isSame = Math.abs(front - sleeve) <= SEAM_MEETS;
  const slots = { front: sum(front), answer: sum(sleeve) };
  return {
    ask: said("lesson.block.raglan"),
    answer: sleeve,
    working: told(isSame ? "lesson.block.raglanSum" : "lesson.block.raglanApart", slots),
  };
};

/** The first step: the block as it is. */
export const blockStep = (
  garment: Garment,
  state: State,
  pieces: readonly LessonPiece[],
): LessonStep => ({
  id: "block",
  title: said("lesson.block.title"),
  sentence: said("lesson.block.say"),
  why: said("lesson.block.why"),
  before: [],
  after: pieces,
  numbers: newNumbers([], pieces),
  questions: [easeQuestion(garment, state), raglanQuestion(state)],
  atScale: null,
});

const cuffQuestions = ({ measures, choices, bands }: Garment): readonly Question[] => {
  const { wrist } = measures;
  const { cutHeight, ease } = choices.bands.cuff;
  const allowance = choices.allowances.bands;
  const { cutLength, finishedDepth } = bands.cuff;
  return [
    worked(told("lesson.bands.cuff", { wrist: given(wrist) }), cutLength, {
      value: wrist + ease + 2 * allowance,
      working: told("lesson.bands.cuffSum", {
        wrist: term(wrist),
        ease: term(ease),
        allowance: given(allowance),
        answer: sum(asTold(wrist) + asTold(ease) + 2 * allowance),
      }),
    }),
    worked(told("lesson.bands.deep", { height: given(cutHeight) }), finishedDepth, {
      value: cutHeight / 2 - allowance,
      working: told("lesson.bands.deepSum", {
        height: term(cutHeight),
        allowance: given(allowance),
        answer: sum(asTold(cutHeight) / 2 - allowance),
      }),
    }),
  ];
};

const hemQuestion = ({ measures, choices, bands }: Garment): Question => {
  const { hip } = measures;
  const { ease } = choices.bands.hemBand;
  const allowance = choices.allowances.bands;
  const { cutLength } = bands.hemBand;
  return worked(told("lesson.bands.hem", { hip: given(hip) }), cutLength, {
    value: hip + ease + 2 * allowance,
    working: told("lesson.bands.hemSum", {
      hip: term(hip),
      ease: term(ease),
      allowance: given(allowance),
      answer: sum(asTold(hip) + asTold(ease) + 2 * allowance),
    }),
  });
};

const neckQuestion = ({ bands }: Garment): Question => {
  const { opening, finishedLength } = bands.neckband;
  const slots = { opening: term(opening), length: term(finishedLength) };
  const answer = opening - finishedLength;
  return worked(told("lesson.bands.neck", slots), answer, {
    value: answer,
    working: told("lesson.bands.neckSum", {
      ...slots,
      answer: sum(asTold(opening) - asTold(finishedLength)),
    }),
  });
};

const BANDS = ["neckband", "cuff", "hemBand"] as const;

/** The rib bands, which belong to no edge of the block. */
export const bandsStep = (garment: Garment): LessonStep => {
  const after = BANDS.map((name) => finishedPiece(pieceOf(garment, name), true));
  return {
    id: "bands",
    title: said("lesson.bands.title"),
    sentence: told("lesson.bands.say", { allowance: given(garment.choices.allowances.bands) }),
    why: said("lesson.bands.why"),
    before: [],
    after,
    numbers: newNumbers([], after),
    questions: [...cuffQuestions(garment), hemQuestion(garment), neckQuestion(garment)],
    atScale: null,
  };
};

/** How far the cut line lies from the fold at a level, at its furthest. */
const cutWidth = (garment: Garment, y: Mm): Mm => {
  const { cutLine } = pieceOf(garment, "back");
  return Math.max(0, ...crossingsOf(cutLine, "y", y).map((at) => pointAlong(cutLine, at).x));
};

const widthQuestion = (garment: Garment): Question => {
  const side = edgeOf(pieceOf(garment, "back"), "side");
  const { x, y } = pointAlong(side.path, side.length / 2);
  const { side: allowance } = garment.choices.allowances;
  return plusSum(said("lesson.turnings.wide"), x, allowance, cutWidth(garment, y));
};

/** The last step: the cut lines outside the seam lines. */
export const turningsStep = (garment: Garment): LessonStep => {
  const { raglan, side, underarm, bands } = garment.choices.allowances;
  const names = ["front", "back", "sleeve", "vInsert"] as const;
  const cloth = names.filter((name) => hasPiece(garment, name)).map((n) => pieceOf(garment, n));
  return {
    id: "turnings",
    title: said("lesson.turnings.title"),
    sentence: told("lesson.turnings.say", {
      raglan: given(raglan),
      side: given(side),
      underarm: given(underarm),
      bands: given(bands),
    }),
    why: said("lesson.turnings.why"),
    before: cloth.map((piece) => finishedPiece(piece, false)),
    after: cloth.map((piece) => finishedPiece(piece, true)),
    numbers: [],
    questions: [widthQuestion(garment)],
    atScale: null,
  };
};
