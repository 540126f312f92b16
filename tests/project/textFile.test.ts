import { describe, expect, test } from "vitest";
import { readChoices } from "../../src/project/choicesSchema.ts";
import { readJson, readText } from "../../src/project/textFile.ts";

const bytes = (...values: readonly number[]) => new Uint8Array(values);
const utf8 = (text: string) => new TextEncoder().encode(text);
const why = (read: object) => ("fault" in read ? JSON.stringify(read.fault) : "");

describe("a file of text", () => {
  test("loses its byte order mark and nothing else", () => {
    expect(readText(utf8("\ufeffid,é\r\n"), "f")).toEqual({ text: "id,é\r\n" });
  });

  test.each([
    ["UTF-16", bytes(0xff, 0xfe, 0x69, 0x00), /UTF-16/u],
    ["UTF-16 the other way round", bytes(0xfe, 0xff, 0x00, 0x69), /UTF-16/u],
    ["a program", bytes(0x7f, 0x45, 0x4c, 0x46, 0x00), /is not text/u],
    ["Latin-1", bytes(0x69, 0xe9, 0x2c), /not UTF-8/u],
  ])("is not %s", (_, given, says) => {
    expect(why(readText(given, "bodies.csv"))).toMatch(says);
    expect(why(readText(given, "bodies.csv"))).toContain("Save it again as UTF-8 text.");
  });
});

describe("a file of JSON", () => {
  test("is parsed, and checked by another", () => {
    expect(readJson(utf8('\ufeff{ "a": [1] }'), "f")).toEqual({ json: { a: [1] } });
  });

  test("says at which line it breaks", () => {
    expect(why(readJson(utf8('{\n "a": 1,\n "b" 2 }'), "c.json"))).toContain(
      "c.json is not JSON: it breaks at line 3.",
    );
  });

  test.each(["", " \n", "NaN", "{'a': 1}", "[1", '{"a": NaN}'])("is not %j", (text) => {
    expect(why(readJson(utf8(text), "c.json"))).toMatch(/c\.json is (empty|not JSON)/u);
  });

  test("may be nested deeper than anything we read, and does no harm", () => {
    const depth = 100_000;
    const deep = readJson(utf8("[".repeat(depth) + "]".repeat(depth)), "c.json");
    const json = "json" in deep ? deep.json : null;
    expect(readChoices(json)).toMatchObject({
      faults: [{ reason: "The file is a list; it must be a group of choices in braces." }],
    });
    expect(why(readJson(utf8("[".repeat(depth)), "c.json"))).toContain("is not JSON");
  });
});
