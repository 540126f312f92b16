import type { Mm } from "../../geometry/units.ts";
import { asTold, sum, type Told, term, told } from "../words/told.ts";

/** A question for a class, with the sum and what it comes to. */
export type Question = {
  readonly ask: Told;
  readonly working: Told;
  /** In mm. */
  readonly answer: Mm;
};

/** A sum shown to a hundredth may be out by this where its terms were rounded. */
const SUM_HOLDS: Mm = 0.015;

/** A sum with its terms; where it does not come to the answer (a curved line), it was measured. */
export const worked = (
  ask: Told,
  answer: Mm,
  { value, working }: { readonly value: Mm; readonly working: Told },
): Question => ({
  ask,
  answer,
  working:
    Math.abs(value - answer) <= SUM_HOLDS
      ? working
      : told("lesson.sum.measured", { answer: sum(answer) }),
});

/**
 * A question whose answer is a difference. In mm. The sum is of the terms as they are told, so that
 * it comes out for whoever works it by hand.
 */
export const minusSum = (ask: Told, a: Mm, b: Mm, answer: Mm): Question =>
  worked(ask, answer, {
    value: a - b,
    working: told("lesson.sum.minus", {
      a: term(a),
      b: term(b),
      answer: sum(asTold(a) - asTold(b)),
    }),
  });

/** A question whose answer is a sum. In mm. */
export const plusSum = (ask: Told, a: Mm, b: Mm, answer: Mm): Question =>
  worked(ask, answer, {
    value: a + b,
    working: told("lesson.sum.plus", {
      a: term(a),
      b: term(b),
      answer: sum(asTold(a) + asTold(b)),
    }),
  });
