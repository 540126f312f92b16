import { found, type Told } from "../told.ts";
import { cutOffFile } from "./cutOffFile.ts";

/** RFC 9649 (WebP): RIFF, length, WEBP, then parts; the first tells the size (from memory). */
const FIRST_PART = 12;
const DATA = FIRST_PART + 8;
const LEAST = DATA + 10;

const textAt = (bytes: Uint8Array, at: number): string =>
  String.fromCharCode(...bytes.subarray(at, at + 4));

export const isWebp = (bytes: Uint8Array): boolean =>
  textAt(bytes, 0) === "RIFF" && textAt(bytes, 8) === "WEBP";

/** The size that a WebP says it has; told where the file is shorter than it says. */
export const readWebpFacts = (
  bytes: Uint8Array,
): Told<{ readonly width: number; readonly height: number }> => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < LEAST || view.getUint32(4, true) + 8 > bytes.length) {
    return cutOffFile(bytes.length);
  }
  const kind = textAt(bytes, FIRST_PART);
  const u24 = (at: number): number => view.getUint16(at, true) + 65536 * view.getUint8(at + 2);
  if (kind === "VP8X") return found({ width: u24(DATA + 4) + 1, height: u24(DATA + 7) + 1 });
  if (kind === "VP8L") {
    const bits = view.getUint32(DATA + 1, true);
    return found({ width: (bits & 0x3fff) + 1, height: ((bits >>> 14) & 0x3fff) + 1 });
  }
  const side = (at: number): number => view.getUint16(at, true) & 0x3fff;
  return found({ width: side(DATA + 6), height: side(DATA + 8) });
};
