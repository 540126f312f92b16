import { describe, expect, test } from "vitest";
import { checkIn, garmentOf, idsIn } from "../support/workedGarment.ts";

/** A cropped block: its front neckline can be lowered past the raised hem. */
const CROPPED = {
  fit: { lengthBelowHip: -300 },
  raiseHem: { on: true, by: 300 },
  neckline: { on: true, lowerFront: 150 },
  vInsert: { on: false },
} as const;
const SHORT = { napeToHip: 200, scyeDepth: 60 } as const;

describe("a neckline lowered past the hem", () => {
  test("is a stop that names how far, the limit and both choices", () => {
    const check = checkIn(garmentOf(CROPPED, { measures: SHORT }), "neckline-crosses");
    expect(check.verdict).toBe("stop");
    expect(check.value).toBeGreaterThan(0);
    expect(check.limit).toBe(0);
    expect(check.message).toMatch(/Lower the neckline by less, or raise the hem by less\./u);
  });

  test("is not spoken of where the neckline lies above the hem", () => {
    expect(idsIn(garmentOf())).not.toContain("neckline-crosses");
  });
});
