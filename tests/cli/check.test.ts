import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, ribwright, STACK } from "./ribwright.ts";

const drafted = (): string => {
  const out = folder();
  const table = file("b.csv", "id,height,chest\na,1660,960\n");
  ribwright("batch", "--bodies", table, "--no-sheets", "--out", out);
  return join(out, "a", "report.json");
};

describe("check", () => {
  test("says nothing on standard output of a report that holds, and ends with 0", () => {
    const { status, out, err } = ribwright("check", drafted());
    expect({ status, out }).toEqual({ status: 0, out: "" });
    expect(err).toMatch(/report\.json: all lines, seams, notches and bands hold\.\n$/u);
  });

  test("names the edge and the seam that do not hold, one a line, and ends with 2", () => {
    const report = readFileSync(drafted(), "utf8");
    const place = report.indexOf('"raglan"', report.indexOf('"pieces"'));
    const bent = report.slice(0, place) + report.slice(place).replace(/M(\d+)/u, "M9$1");
    const { status, out, err } = ribwright("check", file("bent.json", bent));
    expect({ status, err }).toEqual({ status: 2, err: "" });
    expect(out).toMatch(/^front\.raglan: /mu);
    expect(out).toMatch(/^raglan-front: /mu);
    for (const line of out.trim().split("\n")) expect(line).toMatch(/^[\w.-]+: .+\.$/u);
  });

  test.each<[string, string, RegExp]>([
    ["no JSON", "{", /r\.json is not JSON/u],
    ["a block", '{"format":"ribwright-block"}', /r\.json is not a report that this program wrote/u],
    ["half a report", '{"format":"ribwright-report","version":1}', /is not a report/u],
    ["empty", "", /r\.json is empty/u],
  ])("refuses a file that is %s in one sentence", (_, text, says) => {
    const { status, out, err } = ribwright("check", file("r.json", text));
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toMatch(says);
    expect(err).not.toMatch(STACK);
    expect(err.trim().split("\n")).toHaveLength(1);
  });
});
