import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import {
  clearRun,
  newRunMark,
  openFolder,
  writeFolder,
  writeInto,
} from "../../src/cli/writeWhole.ts";
import { folder, listing } from "./ribwright.ts";

const FILES = { "report.json": "{}", "pattern.pdf": new Uint8Array([37, 80, 68, 70]) };
const NAMES = ["pattern.pdf", "report.json"];

describe("files that are written whole", () => {
  test("stand in their folder, and nothing is left aside", () => {
    const out = folder();
    writeInto(out, FILES, newRunMark());
    expect(listing(out)).toEqual(NAMES);
    expect(readFileSync(join(out, "pattern.pdf"), "utf8")).toBe("%PDF");
  });

  test("replace those of the same name, and no others", () => {
    const out = folder();
    mkdirSync(join(out, "a"));
    for (const name of ["report.json", "mine.txt"]) writeFileSync(join(out, "a", name), "old");
    writeFolder(out, "a", FILES, newRunMark());
    expect(listing(join(out, "a"))).toEqual(["mine.txt", ...NAMES]);
    expect(readFileSync(join(out, "a", "report.json"), "utf8")).toBe("{}");
    expect(listing(out).filter((name) => name.startsWith("."))).toEqual([]);
  });

  test("may go through a link to a folder", () => {
    const [out, other] = [folder(), folder()];
    symlinkSync(other, join(out, "a"));
    writeFolder(out, "a", FILES, newRunMark());
    expect(listing(other)).toEqual(NAMES);
  });

  test("are none at all where one of them cannot be put in place", () => {
    const out = folder();
    writeFileSync(join(out, "a"), "a file");
    expect(() => writeFolder(out, "a", FILES, newRunMark())).toThrow("ENOTDIR");
    expect(() => writeInto(join(out, "none"), FILES, newRunMark())).toThrow("ENOENT");
    expect(listing(out)).toEqual(["a"]);
  });

  test("take no more room aside once the run is cleared", () => {
    const out = folder();
    const [mine, other] = [newRunMark(), newRunMark()];
    for (const mark of [mine, other]) mkdirSync(join(out, `${mark}-a`));
    clearRun(out, mine);
    expect(listing(out)).toEqual([`${other}-a`]);
    clearRun(join(out, "none"), mine);
  });

  test("stand in a folder that is made with all that is above it", () => {
    const out = join(folder(), "a", "b");
    openFolder(out);
    openFolder(out);
    expect(listing(out)).toEqual([]);
  });
});
