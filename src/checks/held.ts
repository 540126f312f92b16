import type { Garment } from "../bands/garment.ts";
import type { Doubt } from "../drafting/doubts.ts";
import { asMm } from "../drafting/words.ts";
import type { Check } from "./check.ts";

/** One check a rail: where the same thing was held twice the first one told counts. */
export const railsHeld = ({ rails }: Garment): readonly Check[] =>
  rails
    .filter((rail, i) => rails.findIndex(({ id }) => id === rail.id) === i)
    .map(({ id, stops, wanted, used, unit, message }) => ({
      id,
      verdict: stops ? "stop" : "attend",
      value: wanted,
      limit: used,
      unit,
      message,
    }));

/** Only where an allowance folds on itself in a hollow (method 1.4). */
export const allowanceFolds = ({ fold }: Garment): readonly Check[] =>
  fold
    ? [
        {
          id: "allowance-folds",
          verdict: "attend",
          value: fold.radius,
          limit: fold.allowance,
          unit: "mm",
          message: `An edge is hollowed with a radius of ${asMm(fold.radius)} and its allowance is ${asMm(fold.allowance)}, so the cut line folds on itself. Make the allowance smaller.`,
        },
      ]
    : [];

/** Measures that the others do not bear out: worth taking again, never refused (method 7). */
export const measuresDoubted = (doubts: readonly Doubt[]): readonly Check[] =>
  doubts.map(({ id, value, foretold, message }) => ({
    id: `measure-${id}`,
    verdict: "attend",
    value,
    limit: foretold,
    unit: "mm",
    message,
  }));
