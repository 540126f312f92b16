import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type JsonBytes, jsonBytes } from "../../src/export/jsonBytes.ts";
import { toPathData } from "../../src/geometry/pathData.ts";
import { cubic, line } from "../../src/geometry/segment.ts";

const written = (write: (out: JsonBytes) => void): string => {
  const out = jsonBytes();
  write(out);
  return new TextDecoder("utf-8", { fatal: true }).decode(out.bytes());
};

const millionths = fc.integer({ min: -2e12, max: 2e12 }).map((n) => n / 1e6);
const point = fc.record({ x: millionths, y: millionths });

describe("JSON written as bytes", () => {
  it("writes a number of six decimals as JSON does", () => {
    fc.assert(
      fc.property(millionths, (value) => {
        expect(written((out) => out.number(value))).toBe(JSON.stringify(value));
      }),
    );
  });

  it.each([
    [0, "0"],
    [-0, "0"],
    [-4e-7, "0"],
    [5e-7, "0.000001"],
    [0.9999996, "1"],
    [-999.9999996, "-1000"],
    [100, "100"],
    [1234.5, "1234.5"],
    [999_999.5, "999999.5"],
    [1_000_000.25, "1000000.25"],
    [999_999.9999999, "999999.9999999"],
    [-999_999.9999996, "-999999.9999996"],
  ])("writes %d as %s", (value, text) => {
    expect(written((out) => out.number(value))).toBe(text);
  });

  it("writes any text as JSON does", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (value) => {
        expect(JSON.parse(written((out) => out.text(value)))).toBe(value);
      }),
    );
    expect(written((out) => out.text('Ödön said "50\u00a0mm"\n\\ 日本 🧵'))).toBe(
      JSON.stringify('Ödön said "50\u00a0mm"\n\\ 日本 🧵'),
    );
  });

  it("writes lone surrogates and signs of control as JSON does", () => {
    const units = fc.oneof(
      fc.integer({ min: 0, max: 0x9f }),
      fc.integer({ min: 0xd800, max: 0xdfff }),
      fc.integer({ min: 0, max: 0xffff }),
    );
    fc.assert(
      fc.property(fc.array(units), (codes) => {
        const value = String.fromCharCode(...codes);
        expect(JSON.parse(written((out) => out.text(value)))).toBe(value);
      }),
    );
  });

  it("keeps texts apart that are written by turns, one of them given up half-way", () => {
    const [one, given, other] = [jsonBytes(), jsonBytes(), jsonBytes()];
    const long = "y".repeat(100_000);
    one.raw("[");
    given.text("given up");
    other.text(long);
    one.text("中");
    const otherBytes = other.bytes();
    const third = jsonBytes();
    third.text("third");
    given.text("and never ended");
    one.raw("]");
    const all = [one.bytes(), third.bytes(), otherBytes];
    expect(all.map((bytes) => new TextDecoder().decode(bytes))).toEqual([
      '["中"]',
      '"third"',
      `"${long}"`,
    ]);
  });

  it("writes a path that rounds up to a million as path data", () => {
    const far = [line({ x: 999_999.9999999, y: 0 }, { x: 5, y: 5 })] as const;
    expect(written((out) => out.path(far))).toBe(`"${toPathData(far)}"`);
  });

  it("writes a path as path data", () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        const path = [line(a, b), cubic(b, c, d, a)] as const;
        expect(written((out) => out.path(path))).toBe(`"${toPathData(path)}"`);
      }),
    );
  });

  it("makes room for as much as there is", () => {
    const long = "x".repeat(100_000);
    const all = written((out) => {
      for (let i = 0; i < 5; i++) out.text(long);
    });
    expect(all).toBe(`"${long}"`.repeat(5));
  });
});
