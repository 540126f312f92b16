import { describe, expect, test } from "vitest";
import { doubtfulMeasures } from "../../src/drafting/doubts.ts";
import { completeMeasures } from "../../src/drafting/estimate.ts";
import { type Body, MEASURE_IDS, type Sex } from "../../src/drafting/measures.ts";
import { referenceTable } from "./table.ts";

/**
 * Source: data/foretold-bodies.csv, 80 bodies of ANSUR II (data/ansur2.md) with gaps and slips put
 * in, worked from section 7 of the method by a second program in Python: it inverts the
 * covariance of the given measures, where the project sweeps it.
 */
type Case = { readonly body: Body; readonly estimated: string; readonly doubts: string };

const SEXES: Readonly<Record<string, Sex>> = { female: "female", male: "male" };

const cases: readonly Case[] = referenceTable("foretold-bodies.csv").map((row, i) => {
  const sex = SEXES[row["sex"] ?? ""];
  const given = MEASURE_IDS.filter((id) => row[id] !== "").map((id) => [id, Number(row[id])]);
  const measures = {
    ...Object.fromEntries(given),
    height: Number(row["height"]),
    chest: Number(row["chest"]),
  };
  return {
    body: { id: `body-${i + 1}`, measures, ...(sex === undefined ? {} : { sex }) },
    estimated: row["estimated"] ?? "",
    doubts: row["doubts"] ?? "",
  };
});

const told = (text: string): readonly (readonly string[])[] =>
  text === "" ? [] : text.split(" ").map((part) => part.split(/[=±:]/));

describe("a body with gaps and slips", () => {
  test.each(cases)("$body.id is completed as by the second program", ({ body, estimated }) => {
    const ours = completeMeasures(body).estimated;
    const theirs = told(estimated);
    expect(ours.map(({ id }) => id)).toEqual(theirs.map(([id]) => id));
    ours.forEach(({ value, plusMinus }, i) => {
      expect(value).toBeCloseTo(Number(theirs[i]?.[1]), 6);
      expect(plusMinus).toBeCloseTo(Number(theirs[i]?.[2]), 6);
    });
  });

  test.each(cases)("$body.id is doubted as by the second program", ({ body, doubts }) => {
    const ours = doubtfulMeasures(body);
    const theirs = told(doubts);
    expect(ours.map(({ id, reason }) => [id, reason])).toEqual(
      theirs.map(([id, reason]) => [id, reason]),
    );
    ours.forEach(({ foretold }, i) => {
      expect(foretold).toBeCloseTo(Number(theirs[i]?.[2]), 6);
    });
  });
});
