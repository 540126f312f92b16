import { describe, expect, test } from "vitest";
import { blockOf, plainLines, wordsAt, wrapped } from "../../src/export/textBlock.ts";
import { boxOf, isWithin, widthOf } from "../../src/export/word.ts";
import { FONT } from "../support/sheetSubjects.ts";
import { trueTypeWidths } from "../support/trueType.ts";

const TEXT =
  "Then measure the squares with a steel rule, across and up, from line to line. 3.5\u00a0mm each.";

describe("the width of a text", () => {
  const widths = trueTypeWidths(FONT);

  test.each([
    ["plain letter", 0x20, 0x7e],
    ["Greek letter", 0x391, 0x3c9],
    ["Cyrillic letter", 0x410, 0x44f],
    ["joining space", 0xa0, 0xa0],
    ["times sign", 0xd7, 0xd7],
    ["dash", 0x2013, 0x2014],
  ])("is that of the print font for every %s", (_, first, last) => {
    for (let code = first; code <= last; code++) {
      const letter = String.fromCharCode(code);
      if (/\p{Cn}/u.test(letter)) continue;
      expect(widthOf(letter, 1000), letter).toBeCloseTo(widths(letter), -1);
    }
  });

  test("is never short of that by more than a quarter of the size, for every letter of the font", () => {
    for (let code = 0xa0; code < 0x2200; code++) {
      const letter = String.fromCharCode(code);
      if (/\p{L}|\p{N}/u.test(letter)) {
        expect(widthOf(letter, 1000), letter).toBeGreaterThanOrEqual(widths(letter) - 250);
      }
    }
  });
});

describe("a text broken to a width", () => {
  const lines = wrapped(TEXT, 3, 50);

  test("has no line wider, and all its words in order", () => {
    for (const text of lines) expect(widthOf(text, 3)).toBeLessThanOrEqual(50);
    expect(lines.join(" ")).toBe(TEXT);
  });

  test("keeps a number and its unit on one line", () => {
    expect(lines.some((text) => text.includes("3.5\u00a0mm"))).toBe(true);
  });

  test("breaks a word only where it is too wide for a line by itself", () => {
    const parts = wrapped("an unbelievably-long-word", 3, 20);
    for (const part of parts) expect(widthOf(part, 3)).toBeLessThanOrEqual(20);
    expect(parts.join("").replaceAll(" ", "")).toBe("anunbelievably-long-word");
  });
});

describe("a block of text", () => {
  const block = blockOf([{ text: "Front", size: 9, strong: true }, ...plainLines(TEXT, 3, 60)]);

  test.each([0, 90] as const)("stays inside its own room, turned by %i", (turn) => {
    const corner = { x: 100, y: 50 };
    const room =
      turn === 0
        ? { left: 100, top: 50, right: 100 + block.width, bottom: 50 + block.height }
        : { left: 100 - block.height, top: 50, right: 100, bottom: 50 + block.width };
    for (const word of wordsAt(block, corner, turn)) expect(isWithin(boxOf(word), room)).toBe(true);
  });
});
