import { describe, expect, test } from "vitest";
import { leastSquares } from "./leastSquares.ts";
import { expectWorked, workedChecks } from "./workedChecks.ts";

/**
 * Source: NIST Statistical Reference Datasets, linear regression, Longley and Norris (data and
 * certified values from memory, recomputed in exact fractions): worked checks N01 to N03.
 * The project itself fits nothing; this checks the tool by which the tests fit the survey anew.
 */
const fitOf = (check: (typeof workedChecks)[number]) => {
  const rows = check.rows("x");
  const columns = (rows[0] ?? []).map((_, column) => rows.map((row) => row[column] ?? Number.NaN));
  return leastSquares(columns, check.numbers("y"));
};

describe("least squares with an intercept", () => {
  test.each(workedChecks.filter(({ op }) => op === "leastSquares"))("$id $title", (check) => {
    const { intercept, coef } = fitOf(check);
    expectWorked(check, [intercept, ...coef]);
  });

  test.each(workedChecks.filter(({ op }) => op === "residualSd"))("$id $title", (check) => {
    expectWorked(check, [fitOf(check).residualSd]);
  });

  test("the worked checks on regression are three", () => {
    expect(workedChecks.filter(({ id }) => id.startsWith("N"))).toHaveLength(3);
  });
});
