import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  bodyFile,
  file,
  folder,
  listing,
  ribwright,
  ribwrightOnFullDisk,
  STACK,
  tableOf,
} from "./ribwright.ts";

const draft = (out: string): readonly string[] => ["draft", "--body", bodyFile(), "--out", out];
const batch = (bodies: number, out: string): readonly string[] => [
  ...["batch", "--bodies", file("b.csv", tableOf(bodies)), "--no-sheets", "--out", out],
];

describe("a folder that cannot be written to", () => {
  test.each<[string, () => string, RegExp]>([
    ["because it is a file", bodyFile, /body\.json is a file, where a folder is needed/u],
    ["because it lies in a file", () => join(bodyFile(), "out"), /on its way where a folder is/u],
    ["because nobody can make it", () => "/proc/ribwright", /cannot be made there\. Take/u],
    ["because its name is too long", () => join(folder(), "x".repeat(300)), /too long a name/u],
  ])("%s is told of in one sentence", (_, place, says) => {
    for (const words of [draft(place()), batch(2, place())]) {
      const { status, out, err } = ribwright(...words);
      expect({ status, out }).toEqual({ status: 2, out: "" });
      expect(err).toMatch(says);
      expect(err).not.toMatch(STACK);
      expect(err.trim().split("\n")).toHaveLength(1);
    }
  });
});

/** Source: setrlimit(2), RLIMIT_FSIZE: writes beyond the limit fail half-way, as on a full disk. */
describe("a full disk", () => {
  test("leaves a draft with nothing, not even half a file", () => {
    const out = join(folder(), "out");
    const { status, out: said, err } = ribwrightOnFullDisk(8, ...draft(out));
    expect({ status, said }).toEqual({ status: 2, said: "" });
    expect(err).toMatch(/out would be larger than files may be here\. Take another disk/u);
    expect(err).not.toMatch(STACK);
    expect(listing(out)).toEqual([]);
  });

  test("leaves the files of an earlier draft as they were", () => {
    const out = folder();
    writeFileSync(join(out, "report.json"), "earlier");
    expect(ribwrightOnFullDisk(8, ...draft(out)).status).toBe(2);
    expect(listing(out)).toEqual(["report.json"]);
  });

  test.each([3, 200])("ends a batch of %d in one sentence", (bodies) => {
    const out = join(folder(), "out");
    const { status, out: said, err } = ribwrightOnFullDisk(8, ...batch(bodies, out));
    expect({ status, said }).toEqual({ status: 2, said: "" });
    expect(err).toMatch(/would be larger than files may be here/u);
    expect(err).toMatch(new RegExp(`${bodies} bodies were not drafted`, "u"));
    expect(err).not.toMatch(STACK);
    expect(listing(out).filter((name) => !/^(summary\.csv|refused\.json)$/u.test(name))).toEqual(
      [],
    );
  });
});
