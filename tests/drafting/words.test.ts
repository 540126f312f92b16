import { describe, expect, test } from "vitest";
import * as words from "../../src/drafting/words.ts";

const { asDegrees, asFinePercent, asKilopascal, asMm, asPercent, asRatio } = words;

/** The only rounding there is: where a person reads it. Number and unit stay on one line. */
describe("numbers as a maker reads them", () => {
  test("are lengths to a tenth of a millimetre, without noughts at the end", () => {
    expect(asMm(12.7)).toBe("12.7\u00a0mm");
    expect(asMm(50.0)).toBe("50\u00a0mm");
    expect(asMm(99.96)).toBe("100\u00a0mm");
    expect(asMm(100)).toBe("100\u00a0mm");
    expect(asMm(-0.04)).toBe("0\u00a0mm");
  });

  test("are shares to the per cent, limits to a tenth of one", () => {
    expect(asPercent(0.662)).toBe("66\u00a0%");
    expect(asFinePercent(0.0125)).toBe("1.3\u00a0%");
  });

  test("are angles to a tenth, pressures to a hundredth, ratios to a hundredth", () => {
    expect(asDegrees(3.4479)).toBe("3.4°");
    expect(asKilopascal(1.006)).toBe("1.01\u00a0kPa");
    expect(asRatio(0.7813)).toBe("0.78");
  });
});
