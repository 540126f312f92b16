import { describe, expect, test } from "vitest";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { bodyOfSize, sizeNames } from "../../src/drafting/sizes.ts";
import { leastSquares } from "./leastSquares.ts";
import { LIKELY, ofGroup } from "./survey.ts";

/** Source: ANSUR II, public release, 2012; see data/ansur2.md. Fitted anew here. */
const fitted = MEASURE_IDS.filter((id) => !["height", "chest", "napeToHip"].includes(id));

describe.each(["female", "male"] as const)("a %s size", (sex) => {
  const bodies = ofGroup(LIKELY, sex);
  const column = (id: (typeof MEASURE_IDS)[number] | "waistToHip" | "torsoGirth") =>
    bodies.map(({ measures }) => measures[id]);
  const sizes = sizeNames().flatMap((name) => {
    const body = bodyOfSize(name);
    return body?.sex === sex ? [body] : [];
  });

  test.each([...fitted, "waistToHip", "torsoGirth"] as const)(
    "has the least-squares value of %s at its height and chest, to the mm",
    (id) => {
      const fit = leastSquares([column("height"), column("chest")], column(id));
      const [byHeight = NaN, byChest = NaN] = fit.coef;
      for (const { measures } of sizes) {
        const value = fit.intercept + byHeight * measures.height + byChest * measures.chest;
        expect(Math.abs((measures[id] ?? NaN) - value)).toBeLessThanOrEqual(0.5 + 1e-9);
      }
    },
  );

  test("reaches from nape to hip by its nape to waist and waist to hip", () => {
    for (const { measures } of sizes)
      expect(measures.napeToHip).toBe((measures.napeToWaist ?? NaN) + (measures.waistToHip ?? NaN));
  });
});
