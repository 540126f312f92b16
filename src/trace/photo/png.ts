import { found, type Told } from "../told.ts";
import { cutOffFile } from "./cutOffFile.ts";

/** ISO/IEC 15948 (PNG), 5: eight bytes, then parts of length, type, data, check (from memory). */
const SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];
const PART = 12;
const HEAD = 0x49484452;
const END = 0x49454e44;

export const isPng = (bytes: Uint8Array): boolean => SIGNATURE.every((v, i) => bytes[i] === v);

/** The size that a PNG says it has; told where it ends before its last part. */
export const readPngFacts = (
  bytes: Uint8Array,
): Told<{ readonly width: number; readonly height: number }> => {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  let size: { readonly width: number; readonly height: number } | null = null;
  let at = SIGNATURE.length;
  while (at + PART <= bytes.length) {
    const length = view.getUint32(at);
    const type = view.getUint32(at + 4);
    const next = at + PART + length;
    if (next > bytes.length) break;
    if (type === HEAD && length >= 8) {
      size = { width: view.getUint32(at + 8), height: view.getUint32(at + 12) };
    }
    if (type === END) return size ? found(size) : cutOffFile(bytes.length);
    at = next;
  }
  return cutOffFile(bytes.length);
};
