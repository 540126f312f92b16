import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { PROGRAM } from "../../src/export/data/program.ts";

test("the version that leaves the program is that of its package file", () => {
  const { name, version } = JSON.parse(readFileSync("package.json", "utf8"));
  expect(PROGRAM).toEqual({ name, version });
});
