import { readFileSync } from "node:fs";
import { inflateSync } from "node:zlib";
import type { Picture } from "../../../src/trace/photo/picture.ts";

/** A PNG as `greyPng` writes it: grey, eight bits, rows unfiltered. */
export const readGreyPng = (file: string): Picture => {
  const bytes = readFileSync(file);
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  const parts: Buffer[] = [];
  for (let at = 8; at + 12 <= bytes.length; ) {
    const length = bytes.readUInt32BE(at);
    if (bytes.toString("latin1", at + 4, at + 8) === "IDAT") {
      parts.push(bytes.subarray(at + 8, at + 8 + length));
    }
    at += 12 + length;
  }
  const rows = inflateSync(Buffer.concat(parts));
  const grey = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    grey.set(rows.subarray(y * (width + 1) + 1, (y + 1) * (width + 1)), y * width);
  }
  return { grey, width, height };
};
