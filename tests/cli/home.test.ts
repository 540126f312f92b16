import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { commandOf } from "../../src/cli/arguments.ts";
import { poppler } from "../support/pdf.ts";
import { folder, ribwright } from "./ribwright.ts";

const sentenceOf = (line: string): string => {
  const command = commandOf(line.split(" "));
  return command.command === "wrong" ? command.sentence : command.command;
};

describe("what guide and handout ask for", () => {
  test.each([
    ["guide --body a.json --out o", "guide"],
    ["handout --size W90 --out o --paper letter --language de", "handout"],
    ["handout --class c.csv --out o", "handout"],
    ["guide --out o", "--body BODY.json is missing (or --size NAME)."],
    ["handout --out o", "--body BODY.json is missing (or --size NAME, --class CLASS.csv)."],
    ["guide --body a.json", "--out DIR is missing."],
    [
      "guide --body a.json --size W90 --out o",
      "--body and --size stand together; one of them is enough.",
    ],
    [
      "handout --class c.csv --body a.json --out o",
      "--class and a body stand together; one of them is enough.",
    ],
    [
      "handout --class c.csv --block b.json --out o",
      "--block and --class stand together; pupils' blocks are drafted.",
    ],
    ["guide --size W90 --out o --paper a0", "--paper is a0; it must be one of a4, letter."],
    ["guide --size W90 --out o --language fr", "--language is fr; it must be one of en, de."],
    [
      "guide --size W90 --out o --date 2026-02-30",
      "--date is 2026-02-30; it must be a day written YYYY-MM-DD.",
    ],
  ])("%s: %s", (line, wanted) => {
    expect(sentenceOf(line)).toBe(wanted);
  });
});

const table = (dir: string, count: number, more = ""): string => {
  const file = join(dir, "6b.csv");
  const rows = Array.from({ length: count }, (_, i) => `p${i + 1},900,1600`);
  writeFileSync(file, `${["id,chest,height", ...rows].join("\n")}\n${more}`);
  return file;
};

describe("guide", () => {
  test("writes one file, and cautions a child's wearer of cords", () => {
    const dir = folder();
    const body = join(dir, "body.json");
    const measures = { chest: 700, height: 1400 };
    writeFileSync(body, JSON.stringify({ id: "kim", age: 11, measures }));
    const { status } = ribwright("guide", "--body", body, "--out", join(dir, "out"));
    expect(status).toBe(0);
    expect(readdirSync(join(dir, "out"))).toEqual(["guide.pdf"]);
    const pdf = readFileSync(join(dir, "out", "guide.pdf"));
    expect(poppler("pdftotext", pdf)).toContain("No cord");
  });
});

describe("handout of a class", () => {
  test("writes a sheet for each pupil; one that is refused is told and stops nobody", () => {
    const dir = folder();
    const file = table(dir, 2, "p3,90,1600\n");
    const { status, err } = ribwright("handout", "--class", file, "--out", join(dir, "out"));
    expect(status).toBe(2);
    expect(err).toMatch(/^Row 3 \(p3\): chest is 90/mu);
    const pdf = readFileSync(join(dir, "out", "class.pdf"));
    expect(poppler("pdfinfo", pdf)).toMatch(/Pages:\s+2/u);
  });

  test("of 41 pupils is refused with one sentence, and nothing is written", () => {
    const dir = folder();
    const { status, err } = ribwright(
      "handout",
      "--class",
      table(dir, 41),
      "--out",
      join(dir, "o"),
    );
    expect(status).toBe(2);
    expect(err).toMatch(/has 41 pupils; a class has 40 at most\. Part the table into two\.\n$/u);
    expect(existsSync(join(dir, "o"))).toBe(false);
  });
});
