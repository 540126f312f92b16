import { describe, expect, test } from "vitest";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import { areaOf } from "../../../src/geometry/outline.ts";
import { endOf, joined } from "../../../src/geometry/path.ts";
import { choicesOf } from "../../support/choices.ts";
import { edgesOfBody, edgesOfSleeve } from "../../support/expectations.ts";
import { holdsFor } from "../../support/law.ts";
import { someMeasures, WORKED_EXAMPLE } from "../bodies.ts";

const { fit } = choicesOf();

const areas = (measures = WORKED_EXAMPLE): readonly number[] => {
  const { front, back, sleeve } = draftRaglanBlock(measures, fit).block;
  return [edgesOfBody(front), edgesOfBody(back), edgesOfSleeve(sleeve)].map(([first, ...rest]) =>
    areaOf(first ? joined(first, ...rest) : endless()),
  );
};
const endless = (): never => {
  throw new Error("A piece has edges.");
};

describe("the raglan block", () => {
  test("is three pieces that all run clockwise on the page", () => {
    holdsFor(3601, someMeasures, (measures) => {
      for (const area of areas(measures)) expect(area).toBeGreaterThan(0);
    });
  });

  test("has a front neckline lower than the back's, so that the back holds more cloth", () => {
    const [front = NaN, back = NaN] = areas();
    expect(back).toBeGreaterThan(front);
  });

  test("tells what was held on all three pieces, in the order in which they are drawn", () => {
    const { rails } = draftRaglanBlock(
      { ...WORKED_EXAMPLE, chest: 500, hip: 1600, armLength: 150 },
      fit,
    );
    const ids = rails.map(({ id }) => id);
    expect(ids[0]).toBe("rail-neck-width");
    expect(ids).toContain("rail-hem-width");
    expect(ids.at(-1)).toBe("rail-sleeve-length");
  });

  test("grows with the chest and not with the hip, at the underarm", () => {
    const underarm = (measures: Partial<typeof WORKED_EXAMPLE>) =>
      endOf(draftRaglanBlock({ ...WORKED_EXAMPLE, ...measures }, fit).block.front.raglan);
    expect(underarm({ chest: 1000 }).x - underarm({}).x).toBeCloseTo(10, 9);
    expect(underarm({ hip: 1100 })).toEqual(underarm({}));
  });
});
