import type { Garment } from "../../bands/garment.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, startOf } from "../../geometry/path.ts";
import type { Mm } from "../../geometry/units.ts";
import { given, said, sum, type Told, term, told } from "../words/told.ts";
import { minusSum, plusSum, type Question, worked } from "./question.ts";
import type { AlterationName, State } from "./state.ts";
import type { LessonId } from "./step.ts";

/** What is said of one alteration, from the states before and after it. */
export type Saying = {
  readonly id: LessonId;
  readonly title: Told;
  readonly sentence: Told;
  readonly why: Told;
  readonly questions: readonly Question[];
  readonly atScale: Told | null;
};

/** The class cuts its drawings at a quarter and at a fifth. */
const atScale = (by: Mm): Told =>
  told("paper.atScale", { quarter: given(by / 4), fifth: given(by / 5) });

type Change = { readonly garment: Garment; readonly before: State; readonly after: State };

const neckline = ({ garment, before, after }: Change): Saying => {
  const { lowerFront, lowerBack, widen } = garment.choices.alterations.neckline;
  const [old, now] = [before.block.front, after.block.front];
  const [raglan, raglanNow] = [lengthOf(old.raglan), lengthOf(now.raglan)];
  const [deep, deepNow] = [startOf(old.neckline).y, startOf(now.neckline).y];
  return {
    id: "neckline",
    title: said("lesson.neckline.title"),
    sentence: told("lesson.neckline.say", {
      front: given(lowerFront),
      back: given(lowerBack),
      widen: given(widen),
    }),
    why: said("lesson.neckline.why"),
    questions: [
      minusSum(said("lesson.neckline.raglan"), raglan, raglan - raglanNow, raglanNow),
      plusSum(said("lesson.neckline.depth"), deep, deepNow - deep, deepNow),
    ],
    atScale: null,
  };
};

const sideSeams = ({ garment, before, after }: Change): Saying => {
  const { by } = garment.choices.alterations.moveSideSeams;
  const [old, now] = [before.block.front, after.block.front];
  const [wide, wideNow] = [endOf(old.raglan).x, endOf(now.raglan).x];
  const [top, foot] = [startOf(now.side).y, endOf(now.side).y];
  return {
    id: "side-seams",
    title: said("lesson.side.title"),
    sentence: told("lesson.side.say", { by: given(by) }),
    why: said("lesson.side.why"),
    questions: [
      plusSum(said("lesson.side.width"), wide, by, wideNow),
      minusSum(said("lesson.side.long"), foot, top, lengthOf(now.side)),
    ],
    atScale: atScale(by),
  };
};

/** A band shorter or longer than what it replaces by less than this is as long. */
const AS_LONG: Mm = 0.05;

const hem = ({ garment, before, after }: Change): Saying => {
  const { by } = garment.choices.alterations.raiseHem;
  const depth = garment.bands.hemBand.finishedDepth;
  const [old, now] = [before.block.front.side, after.block.front.side];
  const raised = endOf(old).y - endOf(now).y;
  const blouse = depth - raised;
  const isShort = blouse < -AS_LONG;
  return {
    id: "hem",
    title: said("lesson.hem.title"),
    sentence: told("lesson.hem.say", { by: given(by) }),
    why: isShort
      ? told("lesson.hem.whyShort", { depth: given(depth), short: given(-blouse) })
      : told("lesson.hem.why", { depth: given(depth), blouse: sum(blouse) }),
    questions: [
      minusSum(said("lesson.hem.side"), lengthOf(old), raised, lengthOf(now)),
      ...(isShort ? [] : [minusSum(said("lesson.hem.blouse"), depth, raised, blouse)]),
    ],
    atScale: atScale(by),
  };
};

const sleeveEnd = ({ garment, before, after }: Change): Saying => {
  const { aboveWrist } = garment.choices.alterations.endSleeve;
  const depth = garment.bands.cuff.finishedDepth;
  const [old, now] = [before.block.sleeve.underarmFront, after.block.sleeve.underarmFront];
  const height = endOf(old).y - startOf(old).y;
  const above = height - (endOf(now).y - startOf(now).y);
  const [long, longNow] = [lengthOf(old), lengthOf(now)];
  const bare = above - depth;
  const ask = told("lesson.sleeve.underarm", { old: term(long), height: term(height) });
  const working = told("lesson.sleeve.underarmSum", {
    old: term(long),
    above: term(above),
    height: term(height),
    answer: sum(longNow),
  });
  return {
    id: "sleeve-end",
    title: said("lesson.sleeve.title"),
    sentence: told("lesson.sleeve.say", { above: given(aboveWrist) }),
    why: told("lesson.sleeve.why", { depth: given(depth) }),
    questions: [
      worked(ask, longNow, { value: long - (long * above) / height, working }),
      ...(bare >= -AS_LONG
        ? [minusSum(said("lesson.sleeve.bare"), above, depth, Math.max(0, bare))]
        : []),
    ],
    atScale: atScale(aboveWrist),
  };
};

const vSide = (after: State): Question | null => {
  const { v } = after.block.front;
  if (!v) return null;
  const [across, down] = [endOf(v).x - startOf(v).x, startOf(v).y - endOf(v).y];
  const answer = lengthOf(v);
  const terms = { across: term(across), down: term(down) };
  return worked(told("lesson.v.side", terms), answer, {
    value: Math.sqrt(across * across + down * down),
    working: told("lesson.v.sideSum", { ...terms, answer: sum(answer) }),
  });
};

const vInsert = ({ garment, before, after }: Change): Saying => {
  const { halfWidth, depth, method } = garment.choices.alterations.vInsert;
  const [old, now] = [before.block.front.neckline, after.block.front.neckline];
  const side = vSide(after);
  const { v } = after.block.front;
  const left = after.insert ? lengthOf(after.insert.left) : 0;
  const [long, longNow] = [lengthOf(old), lengthOf(now)];
  return {
    id: "v-insert",
    title: said("lesson.v.title"),
    sentence: told("lesson.v.say", { half: given(halfWidth), depth: given(depth) }),
    why: said(method === "true" ? "lesson.v.whyTrue" : "lesson.v.whyCut"),
    questions: [
      ...(side ? [side] : []),
      minusSum(said("lesson.v.neckline"), long, long - longNow, longNow),
      ...(method === "cut-away" && v
        ? [minusSum(said("lesson.v.short"), lengthOf(v), left, lengthOf(v) - left)]
        : []),
    ],
    atScale: null,
  };
};

const SAYINGS: Readonly<Record<AlterationName, (change: Change) => Saying>> = {
  neckline,
  moveSideSeams: sideSeams,
  raiseHem: hem,
  endSleeve: sleeveEnd,
  vInsert,
};

/** What a class is told and asked of an alteration. */
export const sayingOf = (name: AlterationName, change: Change): Saying => SAYINGS[name](change);
