import { type Picture, writeGrey } from "../../trace/photo/picture.ts";
import { readPictureFacts } from "../../trace/photo/pictureFacts.ts";
import { faulty, found, type Told } from "../../trace/told.ts";
import type { PictureFile } from "./photoJobs.ts";

/** Rows turned grey at a time: a picture's colours are never held twice. */
const BAND = 256;
/** The longer side of what is shown of a picture. */
const SHOWN = 2400;

/** A picture decoded, and its colours kept for what is shown. */
type Decoded = { readonly picture: Picture; readonly shown: ImageBitmap };

const contextOf = (canvas: OffscreenCanvas): OffscreenCanvasRenderingContext2D => {
  const context = canvas.getContext("2d", { willReadFrequently: true });
  if (!context) throw new Error("This browser gives a worker no canvas.");
  return context;
};

const greyOf = (bitmap: ImageBitmap): Picture => {
  const { width, height } = bitmap;
  const grey = new Uint8Array(width * height);
  const canvas = new OffscreenCanvas(width, Math.min(BAND, height));
  const context = contextOf(canvas);
  for (let top = 0; top < height; top += BAND) {
    const rows = Math.min(BAND, height - top);
    context.drawImage(bitmap, 0, top, width, rows, 0, 0, width, rows);
    writeGrey(context.getImageData(0, 0, width, rows).data, grey, top * width);
  }
  return { grey, width, height };
};

const shownOf = (bitmap: ImageBitmap): ImageBitmap => {
  const by = Math.min(1, SHOWN / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(
    Math.max(1, Math.round(bitmap.width * by)),
    Math.max(1, Math.round(bitmap.height * by)),
  );
  const context = contextOf(canvas);
  context.imageSmoothingQuality = "high";
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return canvas.transferToImageBitmap();
};

const undecoded = (file: Blob): Told<never> =>
  faulty(
    "picture",
    `${file.size} bytes`,
    "The browser cannot decode this picture; its file is damaged or of a kind it does not know.",
    "Open it in another program and save it as a JPEG.",
  );

const decoded = async (file: Blob): Promise<Told<Decoded>> => {
  const facts = readPictureFacts(new Uint8Array(await file.arrayBuffer()));
  if ("fault" in facts) return facts;
  const bitmap = await createImageBitmap(file, { imageOrientation: "from-image" }).catch(
    () => null,
  );
  if (!bitmap) return undecoded(file);
  const picture = greyOf(bitmap);
  const shown = shownOf(bitmap);
  bitmap.close();
  return found({ picture, shown });
};

/** More pictures than this are not held at once: the one used longest ago is decoded again. */
const MOST_HELD = 3;
const held = new Map<string, Picture>();

const hold = (id: string, picture: Picture): void => {
  held.delete(id);
  held.set(id, picture);
  for (const first of [...held.keys()].slice(0, Math.max(0, held.size - MOST_HELD))) {
    held.delete(first);
  }
};

/** A picture opened for the first time, with what is shown of it. */
export const opened = async ({ id, file }: PictureFile): Promise<Told<Decoded>> => {
  const told = await decoded(file);
  if ("found" in told) hold(id, told.found.picture);
  return told;
};

/** The greys of a picture, decoded where they are not at hand. */
export const pictureOf = async (asked: PictureFile): Promise<Told<Picture>> => {
  const known = held.get(asked.id);
  if (known) {
    hold(asked.id, known);
    return found(known);
  }
  const told = await opened(asked);
  if ("fault" in told) return told;
  told.found.shown.close();
  return found(told.found.picture);
};

/** A grey picture as a bitmap, made smaller by whole steps until its sides are at most `most`. */
export const bitmapOf = (picture: Picture, most: number): ImageBitmap => {
  const { grey, width } = picture;
  const by = Math.max(1, Math.ceil(Math.max(width, picture.height) / most));
  const [wide, high] = [Math.floor(width / by), Math.floor(picture.height / by)];
  const canvas = new OffscreenCanvas(Math.max(1, wide), Math.max(1, high));
  const context = contextOf(canvas);
  const rows = Math.max(1, Math.floor(2 ** 20 / Math.max(1, wide)));
  for (let top = 0; top < high; top += rows) {
    const count = Math.min(rows, high - top);
    const image = context.createImageData(wide, count);
    for (let y = 0; y < count; y++) {
      for (let x = 0; x < wide; x++) {
        const value = meanOf(grey, (top + y) * by * width + x * by, width, by);
        const k = (y * wide + x) << 2;
        image.data[k] = value;
        image.data[k + 1] = value;
        image.data[k + 2] = value;
        image.data[k + 3] = 255;
      }
    }
    context.putImageData(image, 0, top);
  }
  return canvas.transferToImageBitmap();
};

const meanOf = (grey: Uint8Array, from: number, width: number, by: number): number => {
  if (by === 1) return grey[from] ?? 0;
  let sum = 0;
  for (let r = 0; r < by; r++) for (let c = 0; c < by; c++) sum += grey[from + r * width + c] ?? 0;
  return sum / (by * by);
};
