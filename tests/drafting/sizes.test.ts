import { describe, expect, test } from "vitest";
import { MEASURE_IDS } from "../../src/drafting/measures.ts";
import { bodyOfSize, sizeNames, sizeOf } from "../../src/drafting/sizes.ts";

describe("a standard size", () => {
  test("is one of ten for each sex, in three heights", () => {
    expect(sizeNames()).toHaveLength(60);
    expect(new Set(sizeNames()).size).toBe(60);
    expect(sizeNames().filter((name) => name.endsWith("-tall"))).toHaveLength(20);
  });

  test("is found whatever its capitals, and a chest alone means the regular height", () => {
    expect(bodyOfSize("w90-REGULAR")).toEqual(bodyOfSize("W90-regular"));
    expect(bodyOfSize("W90")).toEqual(bodyOfSize("W90-regular"));
    expect(bodyOfSize("m104")?.id).toBe("M104-regular");
  });

  test("that does not exist is null, nearly right names too", () => {
    for (const name of ["W91", "W", "", "regular", "-regular", "W90-", "W90-regular-regular"])
      expect(bodyOfSize(name)).toBeNull();
  });

  test("W90 is a woman of 1630 with a chest of 900, M104-tall a man of 1860 with one of 1040", () => {
    expect(bodyOfSize("W90")).toMatchObject({
      sex: "female",
      measures: { height: 1630, chest: 900 },
    });
    expect(bodyOfSize("M104-tall")).toMatchObject({
      sex: "male",
      measures: { height: 1860, chest: 1040 },
    });
  });

  test("has all sixteen measures, so nothing is estimated", () => {
    for (const name of sizeNames())
      for (const id of MEASURE_IDS) expect(bodyOfSize(name)?.measures[id]).toBeGreaterThan(0);
  });

  test("says that the two largest of each sex are extrapolated", () => {
    const extrapolated = sizeNames().filter((name) => sizeOf(name)?.extrapolated);
    expect(new Set(extrapolated.map((name) => name.split("-")[0]))).toEqual(
      new Set(["W120", "W125", "M129", "M134"]),
    );
  });
});
