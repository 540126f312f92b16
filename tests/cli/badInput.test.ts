import { closeSync, ftruncateSync, openSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { bodyFile, file, folder, json, listing, ribwright, STACK } from "./ribwright.ts";

const NL = "\n";

/** A file of so many MB that takes no room. */
const hugeFile = (MB: number): string => {
  const path = file("huge", "");
  const descriptor = openSync(path, "r+");
  ftruncateSync(descriptor, MB * 1_000_000);
  closeSync(descriptor);
  return path;
};

/** A file that is there and opens, and that nobody can read: not even root. */
const unreadable = (): string => "/proc/self/mem";

const sentences = (text: string): number => text.trim().split(NL).length;

type Bad = readonly [what: string, make: () => string, says: RegExp];

/** Files that are no input to anything. */
const FILES: readonly Bad[] = [
  ["not there", () => join(folder(), "none"), /none is not there\. Look for a slip/u],
  ["a folder", folder, /is a folder, where a file is needed\. Name a file/u],
  ["beyond a file", () => join(bodyFile(), "x"), /where a folder is needed/u],
  ["unreadable", unreadable, /cannot be read|may not be opened/u],
  ["empty", () => file("empty", ""), /empty is empty\. Give/u],
  ["100 MB large", () => hugeFile(100), /huge is larger than \d+ MB, the most that is read/u],
  ["without an end", () => "/dev/zero", /is larger than \d+ MB/u],
  ["a program", () => file("bin", new Uint8Array([127, 69, 76, 70, 0])), /bin is not text/u],
  ["in UTF-16", () => file("w", new Uint8Array([255, 254, 105, 0])), /UTF-16; only UTF-8/u],
  ["in Latin-1", () => file("l", new Uint8Array([105, 100, 233])), /not UTF-8\. Save it again/u],
];

describe("a table of bodies that is", () => {
  test.each(FILES)(
    "%s is refused in one sentence, and the run says so in its files",
    (_, make, says) => {
      const out = join(folder(), "out");
      const { status, out: said, err } = ribwright("batch", "--bodies", make(), "--out", out);
      expect({ status, said }).toEqual({ status: 2, said: "" });
      expect(err).toMatch(says);
      expect(err).not.toMatch(STACK);
      expect(sentences(err)).toBe(2); // the refusal, and what came of the run
      expect(json(join(out, "refused.json"))).toMatchObject([{ row: null, id: "", field: "file" }]);
      expect(listing(out)).toEqual(["refused.json", "summary.csv"]);
    },
  );
});

describe("a body that is", () => {
  test.each(FILES)("%s is refused in one sentence, and nothing is written", (_, make, says) => {
    const out = join(folder(), "out");
    const { status, out: said, err } = ribwright("draft", "--body", make(), "--out", out);
    expect({ status, said }).toEqual({ status: 2, said: "" });
    expect(err).toMatch(says);
    expect(err).not.toMatch(STACK);
    expect(sentences(err)).toBe(1);
    expect(() => listing(out)).toThrow("ENOENT");
  });

  test.each<[string, unknown, RegExp]>([
    ["in centimetres", { id: "a", measures: { chest: 96, height: 166 } }, /write cm as the unit/u],
    ["in inches", { id: "a", measures: { chest: 38, height: 65 } }, /write in as the unit/u],
    ["not in braces", [1, 2], /The file is a list; it must be a body in braces/u],
    ["without a chest", { id: "a", measures: { height: 1660 } }, /chest is missing/u],
    ["measured in words", { id: "a", measures: { chest: "wide", height: 1 } }, /not a number/u],
  ])("%s is refused in one sentence", (_, body, says) => {
    const path = file("body.json", JSON.stringify(body));
    const { status, err } = ribwright("draft", "--body", path, "--out", join(folder(), "out"));
    expect(status).toBe(2);
    expect(err).toMatch(says);
    expect(sentences(err)).toBe(1);
  });

  test("no standard size is refused, and the nearest is named", () => {
    const { status, err } = ribwright("draft", "--size", "W90-reglar", "--out", folder());
    expect(status).toBe(2);
    expect(err).toMatch(/^W90-reglar is not a standard size; .* Did you mean W90-regular\?\n$/u);
  });
});

describe("choices and blocks", () => {
  test.each<[string, string, RegExp]>([
    ["no JSON", "{", /c\.json is not JSON/u],
    ["a key that is not known", '{"fitt":{}}', /"fitt" is not known.*Did you mean fit\?/u],
    ["a rib of 0 % stretch", '{"cloth":{"rib":{"stretch":0}}}', /from 0\.02 to 2/u],
    ["an ease out of its range", '{"fit":{"chestEase":401}}', /from -60 to 400 mm/u],
    ["a number without end", '{"fit":{"chestEase":1e999}}', /is Infinity; it must be/u],
  ])("with %s are refused", (_, text, says) => {
    const path = file("c.json", text);
    const words = ["draft", "--body", bodyFile(), "--choices", path, "--out", folder()];
    const { status, out, err } = ribwright(...words);
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toMatch(says);
    expect(sentences(err)).toBe(1);
  });

  test("are each told of, with the body, in one go", () => {
    const [body, choices] = [file("b.json", "{}"), file("c.json", '{"fit":7}')];
    const block = file("k.json", '{"format":"ribwright-block","version":1}');
    const { status, err } = ribwright(
      ...["draft", "--body", body, "--choices", choices, "--block", block, "--out", folder()],
    );
    expect(status).toBe(2);
    expect(err.trim().split(NL)).toEqual([
      "measures is missing; it must be a group of measures in braces. Write it.",
      "fit is 7; it must be a group of choices in braces. Change it.",
      'unit is missing; it must be "mm", "cm" or "in". Write it.',
      "pieces is missing; it must be a group in braces. Write it.",
    ]);
  });

  test("of a batch are refused in its files", () => {
    const out = folder();
    const choices = file("c.json", '{"fit":{"chestEase":401}}');
    const table = file("b.csv", "id,height,chest\na,1660,960");
    const { status } = ribwright(
      ...["batch", "--bodies", table, "--choices", choices, "--out", out],
    );
    expect(status).toBe(2);
    expect(json(join(out, "refused.json"))).toMatchObject([{ row: null, field: "fit.chestEase" }]);
  });
});

describe("a wrong word on the command line", () => {
  test.each([
    ["draf", "--out", "o"],
    ["draft", "--body", "b.json", "--out", "o", "--paper", "a5"],
    ["batch", "--bodies", "b.csv", "--out", "o", "--fast"],
    ["draft", "--body", "b.json", "--out", "o", "--date", "1.1.2026"],
    ["check"],
    [],
  ])("%s is refused with the usage", (...words) => {
    const { status, out, err } = ribwright(...words);
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toContain("npm run -s ribwright -- ");
    expect(err).not.toMatch(STACK);
  });
});
