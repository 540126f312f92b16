import { describe, expect, test } from "vitest";
import { atMost, checkOf, verdictOf, within } from "../../src/checks/verdict.ts";

describe("a value against its limit", () => {
  // Method 6: the verdict's tolerance is 1e-9, so that rounding turns none.
  test("holds at the limit and a thousand-millionth beyond, not further", () => {
    expect(atMost(5, 5)).toBe(true);
    expect(atMost(5 + 9e-10, 5)).toBe(true);
    expect(atMost(5 + 2e-9, 5)).toBe(false);
    expect(within(60 - 9e-10, 60, 320)).toBe(true);
    expect(within(60 - 2e-9, 60, 320)).toBe(false);
    expect(within(320 + 2e-9, 60, 320)).toBe(false);
  });

  test("is nothing that is no number", () => {
    expect(atMost(Number.NaN, 5)).toBe(false);
    expect(within(Number.NaN, 0, 5)).toBe(false);
  });
});

describe("a verdict", () => {
  test("is sound, else attend, else stop", () => {
    expect([verdictOf(true, true), verdictOf(false, true), verdictOf(false, false)]).toEqual([
      "sound",
      "attend",
      "stop",
    ]);
  });

  test("tells what to change only where there is something to change", () => {
    const found = { id: "x", value: 1, limit: 2, unit: "mm" } as const;
    const words = { measured: "It is 1 mm.", change: "Make it longer." };
    expect(checkOf({ ...found, verdict: "sound" }, words).message).toBe("It is 1 mm.");
    expect(checkOf({ ...found, verdict: "attend" }, words).message).toBe(
      "It is 1 mm. Make it longer.",
    );
  });
});
