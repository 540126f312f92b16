import { faulty, found, type Told } from "../told.ts";
import { readJpegFacts } from "./jpeg.ts";
import { soundSize } from "./picture.ts";
import { isPng, readPngFacts } from "./png.ts";
import { isWebp, readWebpFacts } from "./webp.ts";

/** What a picture's file says of itself before it is decoded; the size as it is looked at. */
export type PictureFacts = { readonly width: number; readonly height: number };

const isJpeg = (bytes: Uint8Array): boolean => bytes[0] === 0xff && bytes[1] === 0xd8;

/** A phone's own format, ISO/IEC 23008-12: browsers can seldom open it. */
const isHeic = (bytes: Uint8Array): boolean =>
  /^ftyp(?:hei|hev|mif|msf)/u.test(String.fromCharCode(...bytes.subarray(4, 11)));

const noPicture = (what: string): Told<never> =>
  faulty(
    "picture",
    what,
    `The file is ${what}; a JPEG, PNG or WebP picture is needed.`,
    "Save the picture as a JPEG, or set the camera to JPEG.",
  );

const jpegFacts = (bytes: Uint8Array): Told<PictureFacts> => {
  const told = readJpegFacts(bytes);
  if ("fault" in told) return told;
  const { width, height, orientation } = told.found;
  // From the fifth on the camera was held on its side.
  return found(orientation >= 5 ? { width: height, height: width } : { width, height });
};

const factsOf = (bytes: Uint8Array): Told<PictureFacts> => {
  if (bytes.length === 0) return noPicture("empty");
  if (isJpeg(bytes)) return jpegFacts(bytes);
  if (isPng(bytes)) return readPngFacts(bytes);
  if (isWebp(bytes)) return readWebpFacts(bytes);
  return noPicture(isHeic(bytes) ? "a HEIC picture" : "no picture that can be read");
};

/** A picture's size from its bytes; told where it is no picture, ends early, or is out of bounds. */
export const readPictureFacts = (bytes: Uint8Array): Told<PictureFacts> => {
  const facts = factsOf(bytes);
  if ("fault" in facts) return facts;
  const size = soundSize(facts.found.width, facts.found.height);
  return "fault" in size ? size : facts;
};
