import { describe, expect, test } from "vitest";
import { DE } from "../../src/guide/words/de.ts";
import { EN } from "../../src/guide/words/en.ts";
import { tell, tellBlank, voiceOf } from "../../src/guide/words/tell.ts";
import { given, mm, said, share, told, words } from "../../src/guide/words/told.ts";

const slotsIn = (text: string): readonly string[] =>
  [...text.matchAll(/\{([^{}]+)\}/gu)].map(([, name = ""]) => name).sort();

const KEYS = Object.keys(EN).sort();
const english: Readonly<Record<string, string>> = EN;
const german: Readonly<Record<string, string>> = DE;

describe("the German catalogue", () => {
  test("says what the English one says, and nothing else", () => {
    expect(Object.keys(DE).sort()).toEqual(KEYS);
  });

  test.each(KEYS)("has the slots of %s", (key) => {
    expect(slotsIn(german[key] ?? "")).toEqual(slotsIn(english[key] ?? ""));
  });
});

describe("every sentence of both", () => {
  const all = [...Object.values(EN), ...Object.values(DE)];
  test("blames nobody, cheers nobody and begs nobody", () => {
    for (const text of all) {
      expect(text).not.toMatch(/!|\binvalid\b|\berror\b|\bplease\b|\bbitte\b|oops|\bnull\b/iu);
    }
  });

  test("can be printed: its letters are in the print font's set", () => {
    for (const text of all) expect(text).toMatch(/^[\u0020-\u017e’“”„–−×÷°€]*$/u);
  });
});

describe("a sentence told", () => {
  const sentence = told("raglan.sew", { length: mm(315.0916), allowance: given(9.525) });

  test("rounds what was found to a tenth, keeps what was given", () => {
    expect(tell(voiceOf("en"), sentence)).toBe(
      "Each seam is 315.1\u00a0mm long, its turning 9.525\u00a0mm.",
    );
  });

  test("has a decimal comma in German", () => {
    expect(tell(voiceOf("de"), sentence)).toContain("315,1\u00a0mm");
  });

  test("leaves what was found blank where the class works it out, not what was given", () => {
    expect(tellBlank(voiceOf("en"), sentence)).toBe(
      "Each seam is ________ long, its turning 9.525\u00a0mm.",
    );
  });

  test("takes another unit from its voice", () => {
    const inches = {
      ...voiceOf("en"),
      length: (value: number) => `${(value / 25.4).toFixed(2)} in`,
    };
    expect(tell(inches, told("stay.sew", { stayed: given(25.4) }))).toContain("1.00 in");
  });

  test("puts words into words", () => {
    const ease = told("seam.ease", { longer: words(said("longer.front")), ease: mm(2.04) });
    expect(tell(voiceOf("en"), ease)).toMatch(/^The front is 2\u00a0mm longer/u);
  });

  test("never shows a minus nought", () => {
    const none = told("band.stretch", { by: mm(-0.01), stretch: share(-0.001) });
    expect(tell(voiceOf("en"), none)).toContain("stretched by 0\u00a0mm, 0\u00a0%");
  });
});
