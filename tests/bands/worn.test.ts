import { describe, expect, test } from "vitest";
import { pressureOn, wornLength } from "../../src/bands/worn.ts";
import { near } from "../support/expectations.ts";

const RIB = { stretch: 0.8, recovery: 0.95 };

describe("a band after something has passed through it", () => {
  // Method 8: 0.95 · 381.2016 + 0.05 · 561.
  test("comes back to 390.1915 after the head, on the worked example", () => {
    near(wornLength(381.2016, 561, RIB), 390.1915, 1e-4);
  });

  test("comes back whole where its recovery is whole", () => {
    expect(wornLength(381, 561, { stretch: 0.8, recovery: 1 })).toBe(381);
  });
});

describe("what a band presses with", () => {
  // Method 5.3: 716 · ε / (s · G), with ε = 1/0.95 - 1 on a wrist of 160.
  test("is 716 ε / (s G): 0.294 kPa for a cuff of 152 on a wrist of 160", () => {
    near(pressureOn(160, 152, RIB), (716 * (160 / 152 - 1)) / (0.8 * 160), 1e-12);
    near(pressureOn(160, 152, RIB), 0.2944, 1e-4);
  });

  test("is nothing where it is as long as what it lies on, or longer", () => {
    expect(pressureOn(160, 160, RIB)).toBe(0);
    expect(pressureOn(160, 170, RIB)).toBe(0);
  });

  test("is more in a firmer rib and on a thinner limb", () => {
    const firm = pressureOn(160, 152, { stretch: 0.4, recovery: 1 });
    near(firm, 2 * pressureOn(160, 152, RIB), 1e-12);
    near(pressureOn(80, 76, RIB), 2 * pressureOn(160, 152, RIB), 1e-12);
  });
});
