import { describe, expect, test } from "vitest";
import { MOST_PUPILS, readClass } from "../../src/project/classFile.ts";
import { sentence } from "../../src/project/refusal.ts";

const tableOf = (count: number): string =>
  ["id,chest,height", ...Array.from({ length: count }, (_, i) => `p${i + 1},900,1600`)].join("\n");

describe("a class file", () => {
  test("of forty pupils is read", () => {
    const read = readClass(tableOf(MOST_PUPILS), "6b.csv");
    expect("pupils" in read && read.pupils.length).toBe(40);
  });

  test("of forty-one is refused with one sentence and what to do", () => {
    const read = readClass(tableOf(41), "6b.csv");
    expect("fault" in read && sentence(read.fault)).toBe(
      "6b.csv has 41 pupils; a class has 40 at most. Part the table into two.",
    );
  });

  test("with a pupil that cannot be drafted keeps the others and says why", () => {
    const read = readClass(`${tableOf(2)}\np3,90,1600\n`, "6b.csv");
    if ("fault" in read) throw new Error(read.fault.reason);
    expect(read.pupils.map(({ id }) => id)).toEqual(["p1", "p2"]);
    expect(read.refused.length).toBe(1);
    const [refused] = read.refused;
    expect(refused?.id).toBe("p3");
    expect(refused?.field).toBe("chest");
    expect(refused ? sentence(refused) : "").toMatch(/chest is 90/u);
  });

  test("with nothing in it is refused as any table of bodies is", () => {
    expect("fault" in readClass("", "6b.csv")).toBe(true);
    expect("fault" in readClass("id,chest,height\n", "6b.csv")).toBe(true);
  });
});
