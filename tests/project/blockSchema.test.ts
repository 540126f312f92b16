import { describe, expect, test } from "vitest";
import { readBlockFile } from "../../src/project/blockSchema.ts";

const HALF = { neckline: "M0 0", raglan: "M0 0", side: "M0 0", hem: "M0 0", centre: "M0 0" };
const SLEEVE = {
  neckline: "M0 0",
  raglanFront: "M0 0",
  underarmFront: "M0 0",
  wrist: "M0 0",
  underarmBack: "M0 0",
  raglanBack: "M0 0",
};
const block = (front: object = HALF, more: object = {}) => ({
  format: "ribwright-block",
  version: 1,
  unit: "mm",
  pieces: { front: { edges: front }, back: { edges: HALF }, sleeve: { edges: SLEEVE } },
  ...more,
});
const ALLOWANCES = { raglan: 9.525, side: 9.525, underarm: 9.525, hem: 25.4, neckline: 6.35 };

const faults = (file: unknown) => {
  const read = readBlockFile(file);
  return "faults" in read ? read.faults : [];
};

describe("a block file", () => {
  test("gives the lines of each edge, not yet read", () => {
    expect(readBlockFile(block(HALF, { allowances: ALLOWANCES }))).toEqual({
      file: {
        unit: "mm",
        pieces: { front: HALF, back: HALF, sleeve: SLEEVE },
        allowances: ALLOWANCES,
      },
    });
  });

  test("may leave its allowances out, or say null", () => {
    for (const more of [{}, { allowances: null }])
      expect(readBlockFile(block(HALF, more))).toEqual({
        file: { unit: "mm", pieces: { front: HALF, back: HALF, sleeve: SLEEVE } },
      });
  });

  test("names the edge that is missing", () => {
    const { side, ...rest } = HALF;
    expect(faults(block(rest))[0]).toMatchObject({ field: "front.side", value: "" });
    expect(faults(block(rest))[0]?.reason).toMatch(/^front\.side is missing; it must be path/u);
    expect(side).toBe("M0 0");
  });

  test("names the edge that is not known, and which it may have been meant for", () => {
    const [fault] = faults(block({ ...HALF, raglen: "M0 0" }));
    expect(fault).toMatchObject({ field: "front.raglen" });
    expect(fault?.do).toBe("Did you mean raglan? Else take it out.");
  });

  test("may not have a V: the tool cuts it", () => {
    expect(faults(block({ ...HALF, v: "M0 0" }))[0]?.field).toBe("front.v");
  });

  /** Method, section 3: allowances 0 to 30 mm. */
  test("has allowances from 0 to 30 mm, whatever its unit", () => {
    const wide = { ...ALLOWANCES, hem: 30.1 };
    expect(faults(block(HALF, { allowances: wide }))[0]?.field).toBe("allowances.hem");
    const inches = { raglan: 0.375, side: 0.375, underarm: 0.375, hem: 1.2, neckline: 0.25 };
    expect(faults(block(HALF, { unit: "in", allowances: inches }))[0]).toMatchObject({
      field: "allowances.hem",
      value: "1.2",
    });
  });

  test.each([
    ["format", "ribwright-report"],
    ["version", 2],
    ["unit", "m"],
  ])("is refused for another %s", (field, value) => {
    expect(faults(block(HALF, { [field]: value }))[0]?.field).toBe(field);
  });

  test.each([[[]], [null], ["M0 0"], [{}]])("is not %j", (file) => {
    expect(faults(file).length).toBeGreaterThan(0);
  });
});
