import { describe, expect, test } from "vitest";
import { readJpegFacts } from "../../../src/trace/photo/jpeg.ts";

/** An EXIF part that says one thing, the orientation, in either order of bytes (EXIF 2.3, 4.6). */
const exif = (orientation: number, little: boolean): readonly number[] => {
  const u16 = (v: number) => (little ? [v & 255, v >> 8] : [v >> 8, v & 255]);
  const u32 = (v: number) => (little ? [v, 0, 0, 0] : [0, 0, 0, v]);
  const tiff = [
    ...(little ? [0x49, 0x49] : [0x4d, 0x4d]),
    ...u16(42),
    ...u32(8),
    ...u16(1),
    ...u16(0x0112),
    ...u16(3),
    ...u32(1),
    ...u16(orientation),
    0,
    0,
    ...u32(0),
  ];
  const body = [0x45, 0x78, 0x69, 0x66, 0, 0, ...tiff];
  return [0xff, 0xe1, 0, body.length + 2, ...body];
};

const FRAME = [0xff, 0xc0, 0, 11, 8, 0x0b, 0xb8, 0x0f, 0xa0, 1, 1, 0x11, 0];
const SCAN = [0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0, 0x12, 0xff, 0x00, 0x34];
const jpeg = (parts: readonly number[], end: readonly number[] = [0xff, 0xd9]): Uint8Array =>
  Uint8Array.from([0xff, 0xd8, ...parts, ...FRAME, ...SCAN, ...end]);

describe("the facts of a JPEG", () => {
  test.each([
    [1, true],
    [6, true],
    [8, false],
    [3, false],
  ])("orientation %i is read in either order of bytes", (orientation, little) => {
    expect(readJpegFacts(jpeg(exif(orientation, little)))).toEqual({
      found: { width: 4000, height: 3000, orientation },
    });
  });

  test("a picture without EXIF stands upright", () => {
    expect(readJpegFacts(jpeg([]))).toEqual({
      found: { width: 4000, height: 3000, orientation: 1 },
    });
  });

  test("what a camera hangs on behind the picture is of no matter", () => {
    expect(readJpegFacts(jpeg([], [0xff, 0xd9, 1, 2, 3, 4]))).toHaveProperty("found");
  });

  test.each([
    ["before its end mark", jpeg([], [])],
    ["in its frame", jpeg([]).slice(0, 9)],
    ["after two bytes", jpeg([]).slice(0, 2)],
  ])("a file cut off %s is told", (_, bytes) => {
    const told = readJpegFacts(bytes);
    expect("fault" in told && told.fault.reason).toMatch(/ends early, after \d+ bytes/);
  });

  test("another kind of file is told", () => {
    const told = readJpegFacts(Uint8Array.from([0x89, 0x50, 0x4e, 0x47]));
    expect("fault" in told && told.fault.reason).toBe("The file is not a JPEG picture.");
  });
});
