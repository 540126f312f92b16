import { describe, expect, test } from "vitest";
import { assumedSentences, clothSentences } from "../../src/guide/clothWords.ts";
import { tell, voiceOf } from "../../src/guide/words/tell.ts";
import { clothNeeded } from "../../src/lay/clothNeeded.ts";
import { garmentOf, SHRINKING } from "../support/garments.ts";

const say = (language: "en" | "de", changes = {}) => {
  const cloth = clothNeeded(garmentOf(changes), { body: [1500, 500], rib: [700] });
  const voice = voiceOf(language);
  return [...clothSentences(cloth), ...assumedSentences(cloth)].map((told) => tell(voice, told));
};

describe("cloth in words", () => {
  test("tells length, width and how it is laid", () => {
    expect(say("en")[0]).toMatch(/^Body cloth 1500\u00a0mm wide, laid opened out: \d+\u00a0mm\.$/u);
  });

  test("names the piece that is too wide, what it needs and what to do", () => {
    expect(say("en")[1]).toMatch(
      /^The (front|back) needs [\d.]+\u00a0mm of width; the cloth has 500\u00a0mm\. Use a wider cloth\.$/u,
    );
  });

  test("says what was taken for granted, and of cloth that shrinks something else", () => {
    expect(say("en").join("\n")).toContain("washed before it is cut: buy more");
    expect(say("en", SHRINKING).join("\n")).toContain("6\u00a0% in length");
    expect(say("en").join("\n")).toContain("the hem band is cut in 2 parts");
    expect(say("de").join("\n")).toContain("in 2 Stücken");
  });

  test("leaves no slot open", () => {
    for (const text of [...say("en"), ...say("de"), ...say("de", SHRINKING)]) {
      expect(text).not.toMatch(/[{}]|NaN/u);
    }
  });
});
