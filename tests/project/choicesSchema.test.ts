import { describe, expect, test } from "vitest";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { readChoices } from "../../src/project/choicesSchema.ts";

const faults = (file: unknown) => {
  const read = readChoices(file);
  return "faults" in read ? read.faults : [];
};
const first = (file: unknown) => faults(file)[0];

/** A file with one value, at a path such as `fit.chestEase`. */
const withValue = (path: string, value: unknown): unknown =>
  path.split(".").reduceRight<unknown>((inside, key) => ({ [key]: inside }), value);

/** Source: the drafting method, section 3, "Ranges". */
const RANGES: readonly (readonly [string, number, number])[] = [
  ["fit.chestEase", -60, 400],
  ["fit.upperArmEase", -20, 300],
  ["fit.lengthBelowHip", -300, 400],
  ["alterations.moveSideSeams.by", 0, 60],
  ["alterations.raiseHem.by", 0, 300],
  ["alterations.endSleeve.aboveWrist", 0, 400],
  ["alterations.neckline.lowerFront", -20, 150],
  ["alterations.neckline.lowerBack", -20, 100],
  ["alterations.neckline.widen", 0, 80],
  ["alterations.vInsert.halfWidth", 5, 80],
  ["alterations.vInsert.depth", 10, 250],
  ["alterations.vInsert.allowance", 0, 15],
  ["cloth.body.stretch", 0.02, 2],
  ["cloth.body.shrinkLength", -0.1, 0.2],
  ["cloth.body.shrinkWidth", -0.1, 0.2],
  ["cloth.rib.stretch", 0.02, 2],
  ["cloth.rib.recovery", 0.5, 1],
  ["bands.neckband.finishedDepth", 6, 60],
  ["bands.neckband.ratio", 0.5, 1],
  ["bands.cuff.cutHeight", 30, 300],
  ["bands.cuff.ease", -60, 100],
  ["bands.hemBand.cutHeight", 30, 300],
  ["bands.hemBand.ease", -60, 100],
  ["allowances.raglan", 0, 30],
  ["allowances.side", 0, 30],
  ["allowances.underarm", 0, 30],
];

describe("choices", () => {
  test("that say nothing are the defaults", () => {
    expect(readChoices({})).toEqual({ choices: DEFAULT_CHOICES });
  });

  test("that say one thing keep every other default", () => {
    const read = readChoices({ bands: { cuff: { ease: 10 } } });
    expect(read).toEqual({
      choices: {
        ...DEFAULT_CHOICES,
        bands: { ...DEFAULT_CHOICES.bands, cuff: { cutHeight: 114.3, ease: 10 } },
      },
    });
  });

  test("as a report gives them are read back as they were", () => {
    const written: unknown = JSON.parse(JSON.stringify(DEFAULT_CHOICES));
    expect(readChoices(written)).toEqual({ choices: DEFAULT_CHOICES });
  });

  test.each(RANGES)("may set %s from %d to %d, both included", (path, least, most) => {
    expect(faults(withValue(path, least))).toEqual([]);
    expect(faults(withValue(path, most))).toEqual([]);
    for (const value of [least - 0.001, most + 0.001]) {
      const fault = first(withValue(path, value));
      expect(fault).toMatchObject({ field: path, value: String(value) });
      expect(fault?.reason).toContain(`${path} is ${value}; it must be a number from ${least} to`);
      expect(fault?.do).toMatch(/^Change it, or leave it out to take /u);
    }
  });

  test.each(["text", null, true, [1], { a: 1 }])("may not set an ease to %j", (value) => {
    expect(first(withValue("fit.chestEase", value))?.field).toBe("fit.chestEase");
  });

  test("may leave the ratio of the neckband to the tool, by null", () => {
    expect(faults(withValue("bands.neckband.ratio", null))).toEqual([]);
  });

  test("with a rib of 0 % stretch are refused, and told what 80 % is", () => {
    expect(first(withValue("cloth.rib.stretch", 0))?.reason).toBe(
      "cloth.rib.stretch is 0; it must be a number from 0.02 to 2 (0.8 means 80 %).",
    );
  });

  test("name the words that may stand where a word is wrong", () => {
    expect(first(withValue("bands.neckband.share", "odd"))?.reason).toBe(
      'bands.neckband.share is "odd"; it must be "ring" or "even".',
    );
    expect(first(withValue("alterations.vInsert.method", "cut"))?.reason).toContain(
      '"true" or "cut-away"',
    );
  });

  test("with an unknown key are refused, and the nearest known one is named", () => {
    const fault = first({ fit: { chestEese: 100 } });
    expect(fault?.field).toBe("fit.chestEese");
    expect(fault?.reason).toContain("known are chestEase, upperArmEase, lengthBelowHip");
    expect(fault?.do).toBe("Did you mean chestEase? Else take it out.");
  });

  test("cannot reach what every object has", () => {
    const file: unknown = JSON.parse('{ "__proto__": { "fit": 1 }, "constructor": 2 }');
    expect(faults(file).map(({ field }) => field)).toEqual(["__proto__", "constructor"]);
  });

  test.each([[[]], [null], ["text"], [7]])("cannot be %j", (file) => {
    expect(first(file)?.reason).toContain("it must be a group of choices in braces");
  });

  test("tell all that is wrong with them, each by its name", () => {
    const all = faults({ fit: { chestEase: 900, upperArmEase: "wide" }, allowances: { side: -1 } });
    expect(all.map(({ field }) => field)).toEqual([
      "fit.chestEase",
      "fit.upperArmEase",
      "allowances.side",
    ]);
  });

  /** Method, section 3: a band folds over two allowances at either edge. */
  test("keep a band at least four of its allowances high", () => {
    const bands = { cuff: { cutHeight: 40 }, hemBand: { cutHeight: 39.9 } };
    const found = faults({ bands, allowances: { bands: 10 } });
    expect(found.map(({ field }) => field)).toEqual(["bands.hemBand.cutHeight"]);
    expect(found[0]?.reason).toContain("must be at least 40 mm, 4 of them");
  });
});
