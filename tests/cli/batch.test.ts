import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { file, folder, json, listing, ribwright, STACK, tableOf } from "./ribwright.ts";

const ids = (summary: string): readonly string[] =>
  summary
    .trim()
    .split("\r\n")
    .slice(1)
    .map((line) => line.split(",")[0] ?? "");

const run = (table: string, ...more: readonly string[]) => {
  const out = join(folder(), "a", "out");
  const ended = ribwright("batch", "--bodies", file("b.csv", table), "--out", out, ...more);
  return { ...ended, folder: out, summary: readFileSync(join(out, "summary.csv"), "utf8") };
};

describe("a batch", () => {
  test("does the good rows and refuses the bad ones, each in its place", () => {
    const table = [
      "\ufeffid,name,height,chest,wrist,weight",
      'a,"Ada\nof York",1660,960,155,60',
      "b,,166,96,,60",
      "c,,1700,1000,thin,60",
      "",
      "a,,1700,1000,,60",
      "d,,1700,1000,,60",
      "=e,,1700,1000,,60",
      "-f,,1700,1000,,60",
    ].join("\r\n");
    const { status, out, err, folder: into, summary } = run(table, "--no-sheets");
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).not.toMatch(STACK);
    expect(err).toContain("Not known and left alone: weight (nearest measure: height).");
    expect(err).toContain("Row 2 (b): height is 166 mm");
    expect(err).toContain(`3 drafted, 4 refused, in ${into}`);
    expect(ids(summary)).toEqual(["a", "d", "'-f"]);
    expect(json(join(into, "refused.json"))).toMatchObject([
      { row: 2, id: "b", field: "height", value: "166" },
      { row: 3, id: "c", field: "wrist", value: "thin" },
      { row: 4, id: "a", field: "id", value: "a" },
      { row: 6, id: "=e", field: "id", value: "=e" },
    ]);
    expect(listing(into)).toEqual(
      ["-f", "-f/report.json", "a", "a/report.json", "d", "d/report.json"]
        .concat(["refused.json", "summary.csv"])
        .sort(),
    );
  });

  test("with nothing refused ends with 0 and an empty list", () => {
    const { status, folder: into } = run("id,height,chest\na,1660,960\n", "--no-sheets");
    expect(status).toBe(0);
    expect(json(join(into, "refused.json"))).toEqual([]);
  });

  test("writes what draft writes, byte for byte", () => {
    const { folder: into, status } = run("id,height,chest\nada,1660,960\n");
    const body = file("b.json", '{"id":"ada","measures":{"chest":960,"height":1660}}');
    const one = join(folder(), "one");
    expect([status, ribwright("draft", "--body", body, "--out", one).status]).toEqual([0, 0]);
    const files = ["pattern.dxf", "pattern.pdf", "pattern.svg", "report.json"];
    expect(listing(one)).toEqual(files);
    expect(listing(join(into, "ada"))).toEqual(files);
    for (const name of files)
      expect(readFileSync(join(into, "ada", name)).equals(readFileSync(join(one, name)))).toBe(
        true,
      );
  });

  test("on several cores gives the order and the bytes of one", () => {
    const many = run(tableOf(150), "--no-sheets");
    const few = run(tableOf(20), "--no-sheets");
    expect(ids(many.summary)).toEqual(Array.from({ length: 150 }, (_, i) => `b${i}`));
    expect(many.summary.startsWith(few.summary.trimEnd())).toBe(true);
    for (let i = 0; i < 20; i++) {
      const [one, other] = [many, few].map((end) =>
        readFileSync(join(end.folder, `b${i}`, "report.json"), "utf8"),
      );
      expect(one).toBe(other);
    }
  });

  test("replaces what an earlier run wrote, and touches nothing else", () => {
    const out = folder();
    mkdirSync(join(out, "a"));
    writeFileSync(join(out, "a", "notes.txt"), "mine");
    writeFileSync(join(out, "a", "report.json"), "old");
    writeFileSync(join(out, "summary.csv"), "old");
    mkdirSync(join(out, "gone"));
    const table = file("b.csv", "id,height,chest\na,1660,960\ngone,1,1\n");
    const { status } = ribwright("batch", "--bodies", table, "--no-sheets", "--out", out);
    expect(status).toBe(2);
    expect(listing(out)).toEqual(
      ["a", "a/notes.txt", "a/report.json", "gone", "refused.json", "summary.csv"].sort(),
    );
    expect(readFileSync(join(out, "a", "notes.txt"), "utf8")).toBe("mine");
    expect(json(join(out, "a", "report.json"))).toMatchObject({ body: { id: "a" } });
    expect(readFileSync(join(out, "summary.csv"), "utf8")).not.toContain("gone");
  });

  test("goes on past a body whose folder cannot be made", () => {
    const out = folder();
    writeFileSync(join(out, "a"), "a file where the folder should be");
    const table = file("b.csv", "id,height,chest\na,1660,960\nb,1660,960\n");
    const { status, err } = ribwright("batch", "--bodies", table, "--no-sheets", "--out", out);
    expect(status).toBe(2);
    expect(err).toMatch(/Row 1 \(a\): .*a file.* where a folder is needed/u);
    expect(listing(out)).toEqual(["a", "b", "b/report.json", "refused.json", "summary.csv"]);
  });

  test("tells of singers whom the survey of adults does not know", () => {
    const { err } = run("id,age,height,chest\na,14,1550,790\n", "--no-sheets");
    expect(err).toContain("Under 17: a. What is estimated rests on a survey of adults");
  });
});
