import type { Mm } from "../geometry/units.ts";
import { MEASURE_IDS, type MeasureId } from "./measures.ts";

/** A value worked from measures: constant + Σ weight · measure. */
export type LinearRule = {
  readonly constant: number;
  /** In the order of MEASURE_IDS; 0 where a measure says nothing. */
  readonly weights: readonly number[];
  /** The spread of honest bodies about the value. */
  readonly sd: Mm;
};

/** The measure itself. */
export const measureItself = (id: MeasureId): LinearRule => ({
  constant: 0,
  weights: MEASURE_IDS.map((other) => (other === id ? 1 : 0)),
  sd: 0,
});

/** Two rules added. Their spreads depend on each other, so the caller gives the spread. */
export const added = (one: LinearRule, other: LinearRule, sd: Mm): LinearRule => ({
  constant: one.constant + other.constant,
  weights: one.weights.map((weight, place) => weight + (other.weights[place] ?? 0)),
  sd,
});

/** `values` in the order of MEASURE_IDS, 0 for a measure that is not given. Unit: mm. */
export const valueBy = ({ constant, weights }: LinearRule, values: readonly number[]): Mm => {
  let value = constant;
  for (let place = 0; place < weights.length; place += 1) {
    value += (weights[place] ?? 0) * (values[place] ?? 0);
  }
  return value;
};
