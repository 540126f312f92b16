import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { commandOf } from "../../src/cli/arguments.ts";
import { poppler } from "../support/pdf.ts";
import { folder, ribwright } from "./ribwright.ts";

const sentenceOf = (line: string): string => {
  const command = commandOf(line.split(" "));
  return command.command === "wrong" ? command.sentence : command.command;
};

describe("markers", () => {
  test.each([
    ["markers --out m.pdf", "markers"],
    ["markers --out m.pdf --marks 7 --paper letter --language de", "markers"],
    ["markers", "--out MARKS.pdf is missing."],
    ["markers --out marks", "--out is marks; it must be a file that ends in .pdf."],
    ["markers --out m.pdf --paper a0", "--paper is a0; it must be one of a4, letter."],
    ["markers --out m.pdf --marks 3", "--marks is 3; it must be a whole number, 4 to 7."],
    ["markers --out m.pdf --marks 4.5", "--marks is 4.5; it must be a whole number, 4 to 7."],
    ["markers --out m.pdf --language fr", "--language is fr; it must be one of en, de."],
  ])("%s: %s", (line, wanted) => {
    expect(sentenceOf(line)).toBe(wanted);
  });

  test("writes four pages into the file named, and nothing else", () => {
    const out = join(folder(), "paper");
    expect(ribwright("markers", "--out", join(out, "m.pdf")).status).toBe(0);
    expect(readdirSync(out)).toEqual(["m.pdf"]);
    expect(poppler("pdfinfo", readFileSync(join(out, "m.pdf")))).toMatch(/Pages:\s+4/u);
  });

  test("where it is refused writes nothing", () => {
    const dir = folder();
    const { status, err } = ribwright("markers", "--out", join(dir, "m.pdf"), "--marks", "9");
    expect(status).toBe(2);
    expect(err).toMatch(/^--marks is 9;/u);
    expect(existsSync(join(dir, "m.pdf"))).toBe(false);
  });
});
