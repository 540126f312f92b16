import { faulty, found, type Told } from "../told.ts";
import { cutOffFile } from "./cutOffFile.ts";

/** How a camera was held, by the EXIF number: 1 upright, 3 upside down, 6 and 8 on its side. */
type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

const ORIENTATIONS: readonly Orientation[] = [1, 2, 3, 4, 5, 6, 7, 8];

/** What the bytes of a JPEG say before it is decoded. Orientations 5 to 8 swap width and height. */
export type JpegFacts = {
  readonly width: number;
  readonly height: number;
  readonly orientation: Orientation;
};

/** Marks of ITU-T T.81, annex B, and the tag of EXIF 2.3, 4.6.4 (from memory). */
const START = 0xd8;
const END = 0xd9;
const SCAN = 0xda;
const EXIF = 0xe1;
const ORIENTATION_TAG = 0x0112;

const isFrame = (mark: number): boolean =>
  mark >= 0xc0 && mark <= 0xcf && mark !== 0xc4 && mark !== 0xc8 && mark !== 0xcc;

type Reader = { readonly u16: (at: number) => number; readonly u32: (at: number) => number };

const readerOf = (bytes: Uint8Array, little: boolean): Reader => {
  const at = (i: number): number => bytes[i] ?? 0;
  const u16 = (i: number): number => (little ? at(i) | (at(i + 1) << 8) : (at(i) << 8) | at(i + 1));
  const u32 = (i: number): number =>
    little ? u16(i) + 65536 * u16(i + 2) : 65536 * u16(i) + u16(i + 2);
  return { u16, u32 };
};

/** The orientation in an EXIF part that starts at `from`; 1 where it holds none. */
const orientationIn = (bytes: Uint8Array, from: number, length: number): Orientation => {
  const head = String.fromCharCode(...bytes.subarray(from, from + 4));
  if (head !== "Exif") return 1;
  const tiff = from + 6;
  const { u16, u32 } = readerOf(bytes, bytes[tiff] === 0x49);
  const list = tiff + u32(tiff + 4);
  const count = u16(list);
  for (let i = 0; i < count; i++) {
    const entry = list + 2 + 12 * i;
    if (entry + 12 > from + length) return 1;
    if (u16(entry) === ORIENTATION_TAG) {
      const value = u16(entry + 8);
      return ORIENTATIONS.find((known) => known === value) ?? 1;
    }
  }
  return 1;
};

/**
 * True where the mark that ends a JPEG stands after its scan begins. Inside a scan a byte ff is
 * always followed by 00 or a restart mark, so the mark is no part of the picture. What cameras hang
 * on behind it (a second picture, a short film) is of no matter.
 */
const endsWhole = (bytes: Uint8Array, scan: number): boolean => {
  let i = bytes.indexOf(0xff, scan + 2);
  while (i >= 0) {
    if (bytes[i + 1] === END) return true;
    i = bytes.indexOf(0xff, i + 1);
  }
  return false;
};

/**
 * Size and orientation of a JPEG, read from its bytes; told where it is no JPEG or ends early. The
 * picture itself is not decoded.
 */
export const readJpegFacts = (bytes: Uint8Array): Told<JpegFacts> => {
  const { u16 } = readerOf(bytes, false);
  if (bytes[0] !== 0xff || bytes[1] !== START) {
    return faulty(
      "picture",
      "no JPEG",
      "The file is not a JPEG picture.",
      "Choose a JPEG or PNG picture.",
    );
  }
  let orientation: Orientation = 1;
  let size: { readonly width: number; readonly height: number } | null = null;
  let at = 2;
  while (at + 4 <= bytes.length) {
    const mark = bytes[at + 1] ?? 0;
    if (bytes[at] !== 0xff) return cutOffFile(bytes.length);
    if (mark === 0xff) {
      at++;
      continue;
    }
    const length = u16(at + 2);
    if (mark === SCAN) {
      return size && endsWhole(bytes, at)
        ? found({ ...size, orientation })
        : cutOffFile(bytes.length);
    }
    if (mark === EXIF && orientation === 1) orientation = orientationIn(bytes, at + 4, length);
    if (isFrame(mark)) size = { height: u16(at + 5), width: u16(at + 7) };
    at += 2 + length;
  }
  return cutOffFile(bytes.length);
};
