import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { doubtfulMeasures } from "../../src/drafting/doubts.ts";
import { completeMeasures } from "../../src/drafting/estimate.ts";
import { MEASURE_IDS, type Measures } from "../../src/drafting/measures.ts";
import { exampleBody, someBody } from "./bodies.ts";

const doubtOf = (changed: Partial<Measures>, id: string) =>
  doubtfulMeasures(exampleBody(changed)).find((doubt) => doubt.id === id);

describe("a doubtful measure", () => {
  test("is not found on the worked example of the method", () => {
    // Method, section 8: "checks: all sound".
    expect(doubtfulMeasures(exampleBody({}, MEASURE_IDS, "female"))).toEqual([]);
  });

  test("is never the height, is named once, and stands in the order of the measures", () => {
    fc.assert(
      fc.property(someBody, (body) => {
        const ids = doubtfulMeasures(body).map(({ id }) => id);
        expect(ids).toEqual(MEASURE_IDS.filter((id) => ids.includes(id) && id !== "height"));
      }),
      { seed: 301, endOnFailure: true },
    );
  });

  test("was given: what is estimated is not doubted", () => {
    fc.assert(
      fc.property(someBody, (body) => {
        for (const { id, value } of doubtfulMeasures(body)) expect(value).toBe(body.measures[id]);
      }),
      { seed: 302, endOnFailure: true },
    );
  });

  test("is none when the others are as the given ones foretell them", () => {
    fc.assert(
      fc.property(fc.constantFrom("female", "male", undefined), (sex) => {
        const { measures } = completeMeasures(exampleBody({}, ["height", "chest"], sex));
        expect(doubtfulMeasures(exampleBody(measures, MEASURE_IDS, sex))).toEqual([]);
      }),
      { seed: 303, endOnFailure: true },
    );
  });
});

/** Orders of method 7: they hold on all 6,068 survey bodies (tests/reference/survey.test.ts). */
describe("an order that must hold", () => {
  test.each([
    [{ wrist: 187 }, "wrist", 187, "hand"],
    [{ scyeDepth: 424 }, "scyeDepth", 424, "napeToWaist"],
    [{ napeToWaist: 572 }, "napeToWaist", 572, "napeToHip"],
    [{ neckBase: 561 }, "neckBase", 561, "head"],
    [{ spineToWrist: 553 + 136 }, "spineToWrist", 553 + 136, "armLength"],
  ] as const)("is broken by %o, where both sides are equal", (changed, id, limit, other) => {
    expect(doubtOf(changed, id)).toMatchObject({ reason: "logic", foretold: limit, other });
  });

  test.each([
    [{ wrist: 186.9 }, "wrist"],
    [{ scyeDepth: 423.9 }, "scyeDepth"],
    [{ napeToWaist: 571.9 }, "napeToWaist"],
    [{ neckBase: 560.9 }, "neckBase"],
    [{ spineToWrist: 553 + 136.1 }, "spineToWrist"],
  ] as const)("is not broken by %o, though the others do not foretell it", (changed, id) => {
    expect(doubtOf(changed, id)?.reason).toBe("unlikely");
  });

  test("is not judged where the other side is not given", () => {
    const given = ["height", "chest", "neckBase", "wrist", "spineToWrist", "shoulder"] as const;
    const odd = { wrist: 900, neckBase: 900, spineToWrist: 90 };
    for (const { reason } of doubtfulMeasures(exampleBody(odd, given)))
      expect(reason).toBe("unlikely");
  });
});

describe("what the maker is told", () => {
  test("of a slip is the measure, its value, what the others foretell, and what to do", () => {
    // 2.54 times the wrist: an inch tape read as centimetres. The others foretell 155 ± 11 mm.
    const message = doubtOf({ wrist: 61 }, "wrist")?.message;
    expect(message).toMatch(
      /^Wrist girth is 61\u00a0mm; the other measures foretell 1[45]\d\u00a0mm\. Measure it again\.$/,
    );
  });

  test("where few are given names the measures that foretell", () => {
    const given = ["height", "chest", "hip"] as const;
    const found = doubtfulMeasures(exampleBody({ hip: 1500 }, given, "female"));
    expect(found.find(({ id }) => id === "hip")?.message).toMatch(
      /^Hip girth is 1500\u00a0mm; height and chest or bust girth foretell 10\d\d\u00a0mm\. Measure it again\.$/,
    );
    expect(found.find(({ id }) => id === "chest")).toBeUndefined();
    const large = doubtfulMeasures(exampleBody({ chest: 1400 }, ["height", "chest"], "female"));
    expect(large[0]?.message).toContain("height alone foretells");
  });

  test("of a broken order names both sides", () => {
    expect(doubtOf({ spineToWrist: 600 }, "spineToWrist")?.message).toBe(
      "Nape to wrist is 600\u00a0mm and must be more than arm length and shoulder length, 689\u00a0mm. Measure them again.",
    );
  });

  test("of waist and hip entered the wrong way round is the question whether they are exchanged", () => {
    const body = exampleBody({ waist: 1010, hip: 800 }, MEASURE_IDS, "female");
    const doubts = doubtfulMeasures(body).filter(({ id }) => id === "waist" || id === "hip");
    expect(doubts.length).toBeGreaterThan(0);
    for (const { message } of doubts) expect(message).toContain("Are waist and hip exchanged?");
  });

  test("of a waist that is far out by itself is not that question", () => {
    const body = exampleBody({ waist: 420 }, MEASURE_IDS, "female");
    expect(doubtfulMeasures(body).find(({ id }) => id === "waist")?.message).not.toContain(
      "exchanged",
    );
  });
});
