import { describe, expect, test } from "vitest";
import { commandOf } from "../../src/cli/arguments.ts";
import { COMMANDS, usageOf } from "../../src/cli/usage.ts";
import { PAPER_NAMES } from "../../src/export/data/paper.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";

const of = (line: string) => commandOf(line === "" ? [] : line.split(" "));

describe("the command line", () => {
  test("draft takes a body, choices, a block, a paper, a date and a folder", () => {
    const line = "draft --body b.json --choices c.json --block k.json --paper a0 --date 2026-02-28";
    expect(of(`${line} --out out`)).toEqual({
      command: "draft",
      body: { file: "b.json" },
      choices: "c.json",
      block: "k.json",
      paper: "a0",
      print: DEFAULT_PRINT,
      date: "2026-02-28",
      also: { copyShop: null, projector: false },
      out: "out",
    });
  });

  test("draft takes a size in place of a body, and A4 where no paper is named", () => {
    expect(of("draft --size W90 --out=out")).toMatchObject({
      body: { size: "W90" },
      paper: "a4",
      date: null,
      choices: null,
    });
  });

  test("batch takes a table, and may leave the sheets out", () => {
    expect(of("batch --bodies b.csv --no-sheets --out out")).toEqual({
      command: "batch",
      bodies: "b.csv",
      choices: null,
      paper: "a4",
      print: DEFAULT_PRINT,
      sheets: false,
      out: "out",
    });
    expect(of("batch --bodies b.csv --out out --paper letter")).toMatchObject({
      sheets: true,
      paper: "letter",
    });
  });

  test("draft takes how the sheets are printed", () => {
    const line =
      "draft --size W90 --out o --paper 210x330 --turn fewest --margins 5,6,12,7 --join butt";
    expect(
      of(`${line} --overlap 14 --square-along 49.3 --square-across 50.45 --only A1,B2`),
    ).toMatchObject({
      paper: "210x330",
      print: {
        turn: "fewest",
        margins: { top: 5, right: 6, bottom: 12, left: 7 },
        join: "butt",
        overlap: 14,
        square: { along: 49.3, across: 50.45 },
        only: ["A1", "B2"],
      },
    });
    expect(of("draft --size W90 --out o --margins 12")).toMatchObject({
      print: { margins: { top: 12, right: 12, bottom: 12, left: 12 } },
    });
  });

  test("check takes one report", () => {
    expect(of("check r.json")).toEqual({ command: "check", report: "r.json" });
  });

  test("a value may begin with a hyphen after an equals sign", () => {
    expect(of("draft --body=-b.json --out=-o")).toMatchObject({
      body: { file: "-b.json" },
      out: "-o",
    });
  });

  test("help may be asked of all or of one command", () => {
    expect(of("--help")).toEqual({ command: "help", of: null });
    expect(of("help")).toEqual({ command: "help", of: null });
    for (const name of COMMANDS)
      expect(of(`${name} --help`)).toEqual({ command: "help", of: name });
    expect(of("--version")).toEqual({ command: "version" });
  });

  const wrong: readonly (readonly [line: string, says: string])[] = [
    ["", "A command is missing."],
    ["drat --out out", "drat is not a command. Did you mean draft?"],
    ["--out out", "--out is not a command."],
    ["draft --size W90 --out o --paper 40x60", "The paper is 40 × 60 mm; a sheet must be 190"],
    ["draft --size W90 --out o --margins 210", "The margins left and right are 420 mm together"],
    ["draft --size W90 --out o --overlap 120", "The overlap is 120 mm; on this paper it may be"],
    ["draft --size W90 --out o --square-along 0", "The test square measures 0 mm along the feed"],
    ["draft --size W90 --out o --square-across 300", "The test square measures 300 mm across"],
    ["draft --size W90 --out o --margins 1,2", "--margins is 1,2; it must be one number"],
    ["draft --size W90 --out o --overlap 1cm", "--overlap is 1cm; it must be a number of"],
    ["draft --size W90 --out o --turn up", "--turn is up; it must be one of portrait,"],
    [
      "draft --size W90 --out o --only a-1",
      'only.0 is "a-1"; it must be the name of a sheet, such as A1.',
    ],
    ["batch --bodies b.csv --out o --only A1", "--only is not an option."],
    ["draft --out out", "--body BODY.json is missing (or --size NAME)."],
    ["draft --body b.json", "--out DIR is missing."],
    ["draft --body b.json --size W90 --out o", "--body and --size stand together; one of them"],
    ["draft --body --out o", "--body needs a value after it."],
    ["draft --body b.json --out", "--out needs a value after it."],
    ["draft --body= --out o", "--body needs a value after it."],
    ["draft --bodi b.json --out o", "--bodi is not an option. Did you mean --body?"],
    ["draft -b b.json --out o", "-b is not an option."],
    ["draft --body b.json --out o --out p", "--out stands there twice."],
    ["draft --body b.json --out o --paper A5", "--paper is A5; it must be one of a4, letter, a3"],
    ["draft --body b.json --out o --paper A4", "--paper is A4; it must be one of a4, letter, a3"],
    ["draft --body b.json --out o --date 2026-02-30", "--date is 2026-02-30; it must be a day"],
    ["draft --body b.json --out o --date today", "--date is today; it must be a day written"],
    ["draft --body b.json --out o c.json", "c.json stands there without an option before it."],
    ["draft --body b.json --out o --no-sheets", "--no-sheets is not an option."],
    ["batch --out o", "--bodies BODIES.csv is missing."],
    ["batch --bodies b.csv", "--out DIR is missing."],
    ["batch --bodies b.csv --out o --no-sheets=yes", "--no-sheets takes no value."],
    ["batch --bodies b.csv --out o --block k.json", "--block is not an option."],
    ["check", "The report to check is missing."],
    ["check a.json b.json", "One report at a time; 1 more are given."],
  ];
  test.each(wrong)("`%s` is refused in one sentence", (line, says) => {
    const command = of(line);
    expect(command.command).toBe("wrong");
    const told = "sentence" in command ? command.sentence : "";
    expect(told.replaceAll("\u00a0", " ")).toContain(says);
  });
});

describe("the usage", () => {
  test("names every option that its command takes, and the exit status", () => {
    for (const name of COMMANDS) expect(usageOf(name)).toContain("Exit status: 0 all done");
    for (const option of ["--body", "--size", "--choices", "--block", "--paper", "--date", "--out"])
      expect(usageOf("draft")).toContain(`  ${option} `);
    for (const option of ["--bodies", "--choices", "--paper", "--no-sheets", "--out"])
      expect(usageOf("batch")).toContain(`  ${option} `);
    for (const name of COMMANDS) expect(usageOf(null)).toContain(`ribwright -- ${name}`);
  });

  test("names every paper", () => {
    for (const name of PAPER_NAMES) expect(usageOf("draft")).toContain(name);
  });

  test("keeps to lines that a terminal of 110 columns shows whole", () => {
    for (const name of [null, ...COMMANDS])
      for (const line of usageOf(name).split("\n")) expect(line.length).toBeLessThanOrEqual(110);
  });
});
