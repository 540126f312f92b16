import { describe, expect, test } from "vitest";
import { commandOf } from "../../src/cli/arguments.ts";
import { COMMANDS, usageOf } from "../../src/cli/usage.ts";

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
      date: "2026-02-28",
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
      sheets: false,
      out: "out",
    });
    expect(of("batch --bodies b.csv --out out --paper letter")).toMatchObject({
      sheets: true,
      paper: "letter",
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
    expect("sentence" in command ? command.sentence : "").toContain(says);
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

  test("keeps to lines that a terminal of 110 columns shows whole", () => {
    for (const name of [null, ...COMMANDS])
      for (const line of usageOf(name).split("\n")) expect(line.length).toBeLessThanOrEqual(110);
  });
});
