import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cutCuff, cutHemBand, hemPasses } from "../../src/bands/cuffAndHem.ts";
import { WORKED_EXAMPLE } from "../drafting/bodies.ts";
import { choicesOf } from "../support/choices.ts";
import { near } from "../support/expectations.ts";
import { holdsFor } from "../support/law.ts";

describe("the cuff of the worked example (method 8)", () => {
  const cuff = cutCuff(243.048, WORKED_EXAMPLE, choicesOf());

  test("is cut to the wrist and 12.7, by 114.3: the workroom's rule", () => {
    near(cuff.finishedLength, 155, 1e-9);
    near(cuff.cutLength, 167.7, 1e-9);
    near(cuff.cutHeight, 114.3, 1e-9);
    near(cuff.finishedDepth, 50.8, 1e-9);
  });

  test("is stretched by 0.5681 to be sewn on, by 0.2065 for the hand, and presses with nothing", () => {
    near(cuff.stretchToSew, 0.5681, 5e-5);
    near(cuff.stretchToPass, 0.2065, 5e-5);
    expect(cuff.pressure).toBe(0);
    near(cuff.ratio, 155 / 243.048, 1e-12);
  });

  test("has its marks at its quarters", () => {
    expect(cuff.quarterMarks).toEqual([0, 38.75, 77.5, 116.25]);
  });
});

describe("the hem band of the worked example (method 8)", () => {
  const band = cutHemBand({ front: 287.7, back: 287.7 }, WORKED_EXAMPLE, choicesOf());

  test("is cut to the hip and 12.7, by 165.1", () => {
    near(band.finishedLength, 1010, 1e-9);
    near(band.cutLength, 1022.7, 1e-9);
    near(band.cutHeight, 165.1, 1e-9);
    near(band.opening, 1150.8, 1e-9);
  });

  test("is stretched by 0.1394 to be sewn on, presses with nothing, holds a blouse from 961.52", () => {
    near(band.stretchToSew, 0.1394, 5e-5);
    expect(band.pressure).toBe(0);
    near(band.holdsBlouseFrom, 961.52, 1e-9);
  });
});

describe("a hem band", () => {
  test("has its marks by the lengths of the hems where they differ", () => {
    const { quarterMarks, finishedLength } = cutHemBand(
      { front: 300, back: 200 },
      WORKED_EXAMPLE,
      choicesOf(),
    );
    // Side, centre front, side, centre back: 0, 300, 600, 800 of 1000.
    quarterMarks.forEach((at, i) => {
      near(at / finishedLength, [0, 0.3, 0.6, 0.8][i] ?? NaN, 1e-12);
    });
  });

  test("must pass the larger of hip and chest", () => {
    expect(hemPasses({ ...WORKED_EXAMPLE, hip: 900, chest: 1000 })).toBe(1000);
    expect(hemPasses(WORKED_EXAMPLE)).toBe(1010);
    const top = { ...WORKED_EXAMPLE, hip: 900, chest: 1000 };
    const { stretchToPass } = cutHemBand({ front: 280, back: 280 }, top, choicesOf());
    near(stretchToPass, 1000 / 900 - 1, 1e-12);
  });

  test("shorter than the hip presses, and holds a blouse", () => {
    const band = cutHemBand(
      { front: 280, back: 280 },
      WORKED_EXAMPLE,
      choicesOf({ hemBand: { ease: -60 } }),
    );
    const worn = 0.95 * 950 + 0.05 * 1010;
    near(band.pressure, (716 * (1010 / worn - 1)) / (0.8 * 1010), 1e-12);
    expect(band.finishedLength).toBeLessThan(band.holdsBlouseFrom);
  });
});

describe("cuff and hem band with any ease and allowance", () => {
  test("are cut two allowances longer and higher than they are finished", () => {
    const drawn = fc.record({
      ease: fc.integer({ min: -60, max: 100 }),
      bands: fc.integer({ min: 0, max: 15 }),
      cutHeight: fc.integer({ min: 60, max: 300 }),
    });
    holdsFor(6101, drawn, ({ ease, bands, cutHeight }) => {
      const choices = choicesOf({
        cuff: { ease, cutHeight },
        hemBand: { ease, cutHeight },
        allowances: { bands },
      });
      const cuff = cutCuff(240, WORKED_EXAMPLE, choices);
      const hem = cutHemBand({ front: 280, back: 285 }, WORKED_EXAMPLE, choices);
      for (const [band, girth] of [
        [cuff, 155],
        [hem, 1010],
      ] as const) {
        near(band.finishedLength, girth + ease, 1e-9);
        near(band.cutLength - band.finishedLength, 2 * bands, 1e-9);
        near(band.cutHeight, 2 * (band.finishedDepth + bands), 1e-9);
        near((1 + band.stretchToSew) * band.ratio, 1, 1e-9);
      }
    });
  });
});
