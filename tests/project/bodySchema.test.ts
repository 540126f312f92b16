import { describe, expect, test } from "vitest";
import { readBody } from "../../src/project/bodySchema.ts";

const fault = (file: unknown) => {
  const read = readBody(file);
  return "fault" in read ? read.fault : null;
};
const MEASURES = { chest: 960, height: 1660 };

describe("a body file", () => {
  test("is a body in mm", () => {
    expect(readBody({ id: "a", name: "Ada", sex: "female", age: 41, measures: MEASURES })).toEqual({
      body: { id: "a", name: "Ada", sex: "female", age: 41, measures: MEASURES },
      notices: [],
    });
  });

  test("may say nothing by null", () => {
    const file = { id: "a", name: null, sex: null, age: null, unit: null };
    expect(readBody({ ...file, measures: { ...MEASURES, wrist: null } })).toEqual({
      body: { id: "a", measures: MEASURES },
      notices: [],
    });
  });

  test("may be in another unit", () => {
    const read = readBody({ id: "a", unit: "cm", measures: { chest: 96, height: 166 } });
    expect(read).toMatchObject({ body: { measures: MEASURES } });
  });

  test("names what it does not know, and leaves it alone", () => {
    const read = readBody({ id: "a", note: "x", measures: { ...MEASURES, weight: 60 } });
    expect(read.notices).toEqual([
      "Not known and left alone: note, weight (nearest measure: height).",
    ]);
    expect("body" in read).toBe(true);
  });

  const cases: readonly (readonly [what: string, file: unknown, field: string, says: RegExp])[] = [
    ["no measures", { id: "a" }, "measures", /measures is missing; it must be a group/u],
    ["a list for a body", [], "", /it must be a body in braces/u],
    ["null for a body", null, "", /it must be a body in braces/u],
    ["no id", { measures: MEASURES }, "id", /every body needs one/u],
    ["a number for an id", { id: 7, measures: MEASURES }, "id", /id is 7; it must be text/u],
    ["text for a measure", { id: "a", measures: { ...MEASURES, hip: "990" } }, "hip", /not a num/u],
    ["a list for a measure", { id: "a", measures: { ...MEASURES, hip: [1] } }, "hip", /not a num/u],
    ["no chest", { id: "a", measures: { height: 1660 } }, "chest", /chest is missing/u],
    ["a negative", { id: "a", measures: { ...MEASURES, hip: -9 } }, "hip", /hip is -9 mm/u],
    ["a slip", { id: "a", measures: { ...MEASURES, sholder: 1 } }, "sholder", /nearly shoulder/u],
    ["a measure outside", { id: "a", hip: 9, measures: MEASURES }, "hip", /wrong side/u],
    ["a name inside", { id: "a", measures: { ...MEASURES, name: 1 } }, "name", /wrong side/u],
    ["a long name", { id: "a", name: "x".repeat(201), measures: MEASURES }, "name", /at most 200/u],
  ];
  test.each(cases)("with %s is refused in words", (_, file, field, says) => {
    expect(fault(file)?.field).toBe(field);
    expect(`${fault(file)?.reason} ${fault(file)?.do}`).toMatch(says);
  });
});
