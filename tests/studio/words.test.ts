import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isField } from "../../src/studio/fields/fields.ts";
import { isWordField } from "../../src/studio/fields/wordFields.ts";
import { de } from "../../src/studio/words/de.ts";
import { en, type WordKey } from "../../src/studio/words/en.ts";
import { filled, partsOf, runsOf, slotsOf } from "../../src/studio/words/sentence.ts";

const KEYS = Object.keys(en).filter((key): key is WordKey => key in en);
const WORDS = { en, de };

const sources = (folder: string): readonly string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" })
    .filter((file) => /\.tsx?$/u.test(file) && !file.startsWith("words"))
    .map((file) => readFileSync(`${folder}/${file}`, "utf8"));

describe("the catalogue", () => {
  test.each(KEYS)("%s has the same slots in both languages", (key) => {
    expect([...slotsOf(de[key])].sort()).toEqual([...slotsOf(en[key])].sort());
  });

  test("has no empty sentence, no exclamation, and none of the words that blame", () => {
    for (const words of Object.values(WORDS)) {
      for (const [key, text] of Object.entries(words)) {
        expect(text.trim(), key).not.toBe("");
        expect(text, key).not.toMatch(/!|\b(?:invalid|illegal|oops|null|undefined)\b/iu);
      }
    }
  });

  test("holds no word that is never said", () => {
    const code = sources("src/studio").join("\n");
    // A key may be put together: `chapter.${name}`; then its first part is found.
    const unused = KEYS.filter((key) => {
      const stem = key.replace(/\.[^.]+$/u, ".");
      return (
        !code.includes(`"${key}"`) &&
        !code.includes(`\`${stem}\${`) &&
        !/^(label|how|measure|name|unit|check)\./u.test(key)
      );
    });
    expect(unused).toEqual([]);
  });

  test("names every number and word that its sentences hold", () => {
    const clauses = KEYS.filter((key) => /^(alter|block|cloth|ribs|turn)\.[a-zA-Z]+$/u.test(key));
    for (const key of clauses) {
      for (const slot of slotsOf(en[key])) {
        const plain = !slot.includes(".");
        expect(plain || isField(slot) || isWordField(slot), `${key}: ${slot}`).toBe(true);
      }
    }
  });
});

describe("a sentence", () => {
  test("is cut at its slots, in order", () => {
    expect(partsOf("End it {a.b} above {c}.")).toEqual([
      { kind: "words", text: "End it " },
      { kind: "slot", name: "a.b" },
      { kind: "words", text: " above " },
      { kind: "slot", name: "c" },
      { kind: "words", text: "." },
    ]);
  });
  test("keeps a stop with the slot before it", () => {
    expect(runsOf("So {a}, and {b}.").map((run) => ("text" in run ? run.text : run.mark))).toEqual([
      "So ",
      ",",
      " and ",
      ".",
      "",
    ]);
  });
  test("is filled, and leaves an unknown slot standing", () => {
    expect(filled("{a} of {b}, {c}", { a: 2, b: "12" })).toBe("2 of 12, {c}");
  });
});
