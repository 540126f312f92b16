import { describe, expect, test } from "vitest";
import { make } from "../../src/project/make.ts";
import { bareSheets } from "../support/bareSheets.ts";
import { type Changes, choicesOf } from "../support/choices.ts";
import { expectNumbers, expectReport } from "../support/independent/expectReport.ts";
import { readReport } from "../support/independent/report.ts";
import { reportText } from "../support/reportText.ts";
import { SAMPLE_BODIES } from "./survey.ts";

/**
 * The 40 bodies of data/sample-bodies.csv, along the survey's ranges and at its extremes, made and
 * written, and the text read back and measured by code that shares nothing with the program.
 */
const NO_SHEETS = bareSheets();

const TRIED: readonly (readonly [string, Changes])[] = [
  ["the default choices", {}],
  [
    "a lowered and widened neckline, shaped sides, and cloth that shrinks",
    {
      moveSideSeams: { on: false },
      neckline: { on: true, lowerFront: 25, lowerBack: 8, widen: 12 },
      body: { shrinkLength: 0.05, shrinkWidth: 0.02 },
    },
  ],
];

test("there are 40 sample bodies", () => {
  expect(SAMPLE_BODIES).toHaveLength(40);
});

describe.each(TRIED)("with %s", (_, changes) => {
  test.each(SAMPLE_BODIES)("the report of $id holds, measured afresh", (body) => {
    const made = make(body, choicesOf(changes), null);
    const text = reportText(made, NO_SHEETS);
    expectNumbers(text);
    expectReport(readReport(text));
    expect(made.checks.filter(({ verdict }) => verdict === "stop")).toEqual([]);
  });
});

describe("the measuring of a report finds what is wrong", () => {
  const [body] = SAMPLE_BODIES;
  if (!body) throw new Error("There are no sample bodies.");
  const text = reportText(make(body, choicesOf(), null), NO_SHEETS);
  const side = readReport(text).pieces["front"]?.edges["side"];

  test("where a length is told a fiftieth of a millimetre too long", () => {
    const wrong = text.replace(
      `"length":${side?.length}`,
      `"length":${(side?.length ?? 0) + 0.02}`,
    );
    expect(wrong).not.toBe(text);
    expect(() => expectReport(readReport(wrong))).toThrow();
  });

  test("where an edge is drawn half a millimetre off", () => {
    const path = side?.path ?? "";
    const moved = path.replace(/ L([\d.]+) /, (_, x: string) => ` L${Number(x) + 0.5} `);
    expect(moved).not.toBe(path);
    expect(() => expectReport(readReport(text.replace(path, moved)))).toThrow();
  });

  test("where a notch stands half a millimetre off", () => {
    const report = readReport(text);
    const notch = report.pieces["front"]?.notches.find(({ seam }) => seam === "side");
    const wrong = text.replace(`"at":${notch?.at},`, `"at":${(notch?.at ?? 0) + 0.5},`);
    expect(wrong).not.toBe(text);
    expect(() => expectReport(readReport(wrong))).toThrow();
  });
});
