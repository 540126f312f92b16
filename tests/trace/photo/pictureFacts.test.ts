import { describe, expect, test } from "vitest";
import { readPictureFacts } from "../../../src/trace/photo/pictureFacts.ts";
import { greyPng } from "../../support/photo/greyPng.ts";

const reasonOf = (bytes: Uint8Array): string => {
  const told = readPictureFacts(bytes);
  return "fault" in told ? told.fault.reason : `found ${told.found.width} × ${told.found.height}`;
};

const png = (width: number, height: number): Buffer =>
  greyPng({ grey: new Uint8Array(width * height), width, height });

/** RFC 9649's three kinds, by the bytes that tell their size. */
const webp = (kind: "VP8 " | "VP8L" | "VP8X", width: number, height: number): Buffer => {
  const bytes = Buffer.alloc(40);
  bytes.write("RIFF", 0, "latin1");
  bytes.writeUInt32LE(32, 4);
  bytes.write(`WEBP${kind}`, 8, "latin1");
  if (kind === "VP8 ") {
    bytes.writeUInt16LE(width, 26);
    bytes.writeUInt16LE(height, 28);
  } else if (kind === "VP8L") {
    bytes[20] = 0x2f;
    bytes.writeUInt32LE(((height - 1) << 14) | (width - 1), 21);
  } else {
    bytes.writeUIntLE(width - 1, 24, 3);
    bytes.writeUIntLE(height - 1, 27, 3);
  }
  return bytes;
};

describe("what a file says of its picture", () => {
  test("a PNG's size", () => {
    expect(reasonOf(png(640, 480))).toBe("found 640 × 480");
  });

  test.each(["VP8 ", "VP8L", "VP8X"] as const)("the size of a WebP of kind %s", (kind) => {
    expect(reasonOf(webp(kind, 4000, 3000))).toBe("found 4000 × 3000");
  });

  test("a PNG that ends early is told, wherever it ends", () => {
    const whole = png(300, 300);
    for (const share of [0.1, 0.5, 0.9]) {
      const part = whole.subarray(0, Math.round(whole.length * share));
      expect(reasonOf(part)).toMatch(/^The picture file ends early, after \d+ bytes/u);
    }
    expect(reasonOf(whole.subarray(0, -4))).toMatch(/ends early/u);
  });

  test("a WebP shorter than it says is told", () => {
    expect(reasonOf(webp("VP8X", 4000, 3000).subarray(0, 38))).toMatch(/ends early/u);
  });

  test("200 megapixels are refused before anything is decoded", () => {
    expect(reasonOf(webp("VP8X", 16_000, 12_500))).toBe(
      "The picture has 200 megapixels; the limit is 120.",
    );
  });

  test("a preview is told, and so is what is no picture", () => {
    expect(reasonOf(png(120, 160))).toMatch(/its shorter side must have 200 or more/u);
    expect(reasonOf(Buffer.from("%PDF-1.7"))).toMatch(/^The file is no picture that can be read;/u);
    expect(reasonOf(Buffer.from("\0\0\0\x18ftypheic", "latin1"))).toMatch(/a HEIC picture/u);
    expect(reasonOf(new Uint8Array())).toMatch(/^The file is empty;/u);
  });
});
