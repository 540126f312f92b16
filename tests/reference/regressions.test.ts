import { describe, expect, test } from "vitest";
import { PREDICTOR, type Regression } from "../../src/drafting/data/predictor.ts";
import { MEASURE_IDS, type MeasureId, type Measures } from "../../src/drafting/measures.ts";
import { leastSquares, meanOf } from "./leastSquares.ts";
import { FITTED_ON, HELD_OUT, ofGroup, SURVEY, type SurveyBody } from "./survey.ts";

/**
 * Source: ANSUR II, public release, 2012; see data/ansur2.md. The shipped numbers were fitted on
 * 4,855 bodies with another program (NumPy). Here they are fitted anew on the same bodies, and
 * tried on the 1,213 that were kept back.
 */
const GROUPS = ["female", "male", "pooled"] as const;
const FITTED = MEASURE_IDS.filter((id) => id !== "height");

const columnOf = (bodies: readonly SurveyBody[], id: MeasureId | "waistToHip"): readonly number[] =>
  bodies.map(({ measures }) => measures[id]);
const namedBy = ({ coef }: Regression): readonly MeasureId[] =>
  MEASURE_IDS.filter((id) => coef[id] !== undefined);
const foretold = ({ intercept, coef }: Regression, measures: Measures): number =>
  MEASURE_IDS.reduce((sum, id) => sum + (coef[id] ?? 0) * measures[id], intercept);

const regressions = GROUPS.flatMap((group) =>
  FITTED.flatMap((id) =>
    (["full", "small"] as const).map((kind) => ({
      group,
      kind,
      id,
      regression: PREDICTOR[group][kind][id],
    })),
  ),
);

describe("a shipped regression", () => {
  test.each(regressions)(
    "$group $kind of $id is the least squares of the bodies it was fitted on",
    ({ group, id, regression }) => {
      const bodies = ofGroup(FITTED_ON, group);
      const names = namedBy(regression);
      const fit = leastSquares(
        names.map((name) => columnOf(bodies, name)),
        columnOf(bodies, id),
      );
      // Shipped to 6 places of a coefficient, 4 of the intercept, 2 of the spread.
      names.forEach((name, i) => {
        expect(fit.coef[i]).toBeCloseTo(regression.coef[name] ?? Number.NaN, 6);
      });
      expect(fit.intercept).toBeCloseTo(regression.intercept, 4);
      expect(fit.residualSd).toBeCloseTo(regression.residualSd, 2);
    },
  );

  test.each(regressions)(
    "$group $kind of $id holds on bodies that it never saw",
    ({ group, id, regression }) => {
      const bodies = ofGroup(HELD_OUT, group);
      const errors = bodies.map(({ measures }) => measures[id] - foretold(regression, measures));
      const rms = Math.sqrt(meanOf(errors.map((error) => error * error)));
      expect(rms / regression.residualSd).toBeGreaterThan(0.9);
      expect(rms / regression.residualSd).toBeLessThan(1.1);
      // A mean error beyond four of its own spreads would not be chance.
      expect(Math.abs(meanOf(errors))).toBeLessThan(
        (4 * regression.residualSd) / Math.sqrt(bodies.length),
      );
    },
  );

  test.each(regressions)(
    "$group $kind of $id leaves no leaning on all 6,068 bodies",
    ({ group, id, regression }) => {
      const bodies = ofGroup(SURVEY, group);
      const errors = bodies.map(({ measures }) => measures[id] - foretold(regression, measures));
      expect(Math.abs(meanOf(errors))).toBeLessThan(regression.residualSd / 20);
    },
  );
});

describe("the shipped normal distribution", () => {
  const PLACES = MEASURE_IDS.map((id) => (id === "napeToHip" ? "waistToHip" : id));

  test.each(GROUPS)("of %s has the mean and covariance of the bodies it was fitted on", (group) => {
    const bodies = ofGroup(FITTED_ON, group);
    const { mean, covariance } = PREDICTOR[group].normal;
    const centred = PLACES.map((id, i) => {
      const values = columnOf(bodies, id);
      const own = meanOf(values);
      expect(own).toBeCloseTo(mean[i] ?? Number.NaN, 3);
      return values.map((value) => value - own);
    });
    centred.forEach((one, i) => {
      centred.slice(0, i + 1).forEach((other, j) => {
        const product = one.reduce((sum, value, k) => sum + value * (other[k] ?? Number.NaN), 0);
        expect(product / (bodies.length - 1)).toBeCloseTo(covariance[i]?.[j] ?? Number.NaN, 3);
      });
    });
  });
});
