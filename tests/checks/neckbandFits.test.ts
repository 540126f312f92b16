import { describe, expect, test } from "vitest";
import { near } from "../support/expectations.ts";
import { garmentOf, idsIn } from "../support/workedGarment.ts";
import { expectCheck } from "./expectCheck.ts";

describe("the check that the head passes the neckband", () => {
  const cure = "Make the band longer or the neckline wider.";
  /** A band of this length on the opening of 487.9222; the head is 561. */
  const ofLength = (length: number, stretch = 0.8) =>
    garmentOf({ neckband: { ratio: length / 487.9222 }, rib: { stretch } });

  test("is sound on the worked example: 47 % of 72 %", () => {
    const { value, limit } = expectCheck(garmentOf(), "head-passes", {
      verdict: "sound",
      says: ["must stretch by 47 % for the head (limit 72 %)."],
      cure,
    });
    near(value, 0.4717, 5e-5);
    near(limit, 0.72, 1e-12);
  });

  test("attends within the last tenth of the stretch, and stops beyond it", () => {
    expectCheck(ofLength(561 / 1.76), "head-passes", {
      verdict: "attend",
      says: ["by 76 % for the head (limit 72 %)"],
      cure,
    });
    expectCheck(ofLength(561 / 1.81), "head-passes", { verdict: "stop", says: ["81 %"], cure });
  });
});

describe("the check that the head passes the neck seam", () => {
  const cure = "Lower or widen the neckline.";
  const ofCloth = (stretch: number) => garmentOf({ body: { stretch } });

  test("is sound on the worked example: 15 % of 25 %", () => {
    const { value } = expectCheck(garmentOf(), "neckline-passes", {
      verdict: "sound",
      says: ["487.9 mm round", "by 15 % for the head (limit 25 %)."],
      cure,
    });
    near(value, 0.1498, 5e-5);
  });

  test("attends to half as much again as the cloth stretches, then stops", () => {
    expectCheck(ofCloth(0.12), "neckline-passes", {
      verdict: "attend",
      says: ["limit 12 %"],
      cure,
    });
    expectCheck(ofCloth(0.05), "neckline-passes", { verdict: "stop", says: ["limit 5 %"], cure });
  });

  test("tells that nothing need stretch where the neckline is wider than the head", () => {
    const wide = { neckline: { on: true, lowerFront: 60, lowerBack: 40, widen: 60 } } as const;
    expectCheck(garmentOf({ ...wide, rib: { stretch: 0.02 } }), "neckline-passes", {
      verdict: "sound",
      says: ["need not stretch for the head (limit 25 %)."],
      cure,
    });
  });

  test("is cured by a wider neckline, as it says", () => {
    const wide = garmentOf({ body: { stretch: 0.05 }, neckline: { on: true, widen: 40 } });
    expectCheck(wide, "neckline-passes", { verdict: "sound", says: ["limit 5 %"], cure });
  });
});

describe("the check that the neckband lies flat", () => {
  const cure = "Make the band less deep, use a rib that stretches more, or widen the neckline.";

  test("is sound on the worked example: 8 shorter than its ring, of 11.9 that it bears", () => {
    const { value, limit } = expectCheck(garmentOf(), "neckband-lies-flat", {
      verdict: "sound",
      says: ["390.2 mm", "398.2 mm", "8 mm shorter", "to 11.9 mm longer."],
      cure,
    });
    near(value, -7.9631, 1e-4);
    near(limit, 11.9446, 1e-4);
  });

  test("attends where it is longer, however long: it never stops", () => {
    expectCheck(garmentOf({ neckband: { ratio: 0.9 } }), "neckband-lies-flat", {
      verdict: "attend",
      says: ["47.1 mm longer"],
      cure,
    });
    expectCheck(garmentOf({ rib: { stretch: 0.1 } }), "neckband-lies-flat", {
      verdict: "attend",
      says: ["longer; it lies flat to 11.9 mm longer."],
      cure,
    });
  });
});

describe("the check that the neckband stands against the neck", () => {
  const cure = "Make the band less deep, or widen the neckline.";

  // Method 8: the gap is 26.9480.
  test("is not there while the band is less deep than the gap", () => {
    expect(idsIn(garmentOf({ neckband: { finishedDepth: 26.9 } }))).not.toContain(
      "neckband-stands",
    );
  });

  test("is there as soon as the band is as deep as the gap", () => {
    const garment = garmentOf({ neckband: { finishedDepth: 27 } });
    expect(idsIn(garment)).toContain("neckband-stands");
    const neckband = { ...garment.bands.neckband, neckGap: 27 };
    expect(idsIn({ ...garment, bands: { ...garment.bands, neckband } })).toContain(
      "neckband-stands",
    );
  });

  test("attends from the gap on, with both told", () => {
    const { value, limit } = expectCheck(
      garmentOf({ neckband: { finishedDepth: 32 } }),
      "neckband-stands",
      {
        verdict: "attend",
        says: ["The neckband, 32 mm, is deeper than the gap to the neck, 26.9 mm; it will stand"],
        cure,
      },
    );
    expect(value).toBe(32);
    near(limit, 26.948, 1e-4);
  });

  test("attends on any band where the neckline is no longer than the neck", () => {
    const tight = garmentOf({}, { measures: { neckBase: 372 } });
    const neck = { ...tight.measures, neckBase: 500 };
    const bands = {
      ...tight.bands,
      neckband: { ...tight.bands.neckband, neckGap: 0 },
    };
    expectCheck({ ...tight, measures: neck, bands }, "neckband-stands", {
      verdict: "attend",
      says: ["19 mm", "0 mm"],
      cure,
    });
  });

  test("is not there where the ring does not turn inward, so that no gap can be told", () => {
    const garment = garmentOf();
    const neckband = { ...garment.bands.neckband, neckGap: null };
    expect(idsIn({ ...garment, bands: { ...garment.bands, neckband } })).not.toContain(
      "neckband-stands",
    );
  });
});

describe("the check that the neckband can be sewn on", () => {
  const cure = "Make the band longer.";

  test("is sound on the worked example: 28 % of 40 %", () => {
    const { value, limit } = expectCheck(garmentOf(), "neckband-sews", {
      verdict: "sound",
      says: ["by 28 % to be sewn on (limit 40 %)."],
      cure,
    });
    near(value, 0.28, 5e-5);
    near(limit, 0.4, 1e-12);
  });

  test("attends beyond half of the rib's stretch, and stops beyond all of it", () => {
    const ofRatio = (ratio: number, stretch: number) =>
      garmentOf({ neckband: { ratio }, rib: { stretch } });
    expectCheck(ofRatio(0.65, 0.8), "neckband-sews", { verdict: "attend", says: ["54 %"], cure });
    expectCheck(ofRatio(0.7, 0.4), "neckband-sews", { verdict: "stop", says: ["43 %"], cure });
  });
});
