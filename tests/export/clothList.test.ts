import { describe, expect, test } from "vitest";
import type { Choices } from "../../src/drafting/choices.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { clothList } from "../../src/export/clothList.ts";
import { subjectOf } from "../support/sheetSubjects.ts";

const WIDTH = 190;

const withBody = (body: Partial<Choices["cloth"]["body"]>): Choices => ({
  ...DEFAULT_CHOICES,
  cloth: { ...DEFAULT_CHOICES.cloth, body: { ...DEFAULT_CHOICES.cloth.body, ...body } },
});

const wordsWith = (choices: Choices): string =>
  clothList(subjectOf({}, choices).garment, WIDTH)(0, 0)
    .art.words.map(({ text }) => text)
    .join(" ");

describe("the cloth to buy, on the first sheet", () => {
  test("is washed before it is cut, where the pieces are not enlarged", () => {
    expect(wordsWith(DEFAULT_CHOICES)).toContain("cloth and rib washed first");
  });

  // Enlarged pieces from cloth that has shrunk already make a garment that is too large.
  test.each([
    ["in length", { shrinkLength: 0.07 }],
    ["across", { shrinkWidth: 0.04 }],
  ])("is not washed first where the pieces are enlarged for what it shrinks %s", (_, body) => {
    const words = wordsWith(withBody(body));
    expect(words).not.toContain("cloth and rib washed first");
    expect(words).toContain("do not wash the body cloth before it is cut");
    expect(words).toContain("Wash the rib");
  });
});
