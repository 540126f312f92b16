import { studio } from "../state/store.ts";
import { printNumber } from "../units/printLength.ts";
import { eye, look, type Tool } from "./eye.ts";
import { askPictures } from "./photoClient.ts";
import type { PictureFile } from "./photoJobs.ts";
import { photoSay } from "./photoSay.ts";
import type { Photo, PlacedBy } from "./photoWork.ts";
import { keepPicture } from "./pictureFiles.ts";
import { changePiece, pieceNow } from "./piece.ts";

const MARKS_ENOUGH = 4;

/** Where the tool found the marks itself, a tap sets no other by mistake. */
export const toolFor = ({ marks }: Photo, by: PlacedBy): Tool => {
  if (by === "scale") return "length";
  return marks.length >= MARKS_ENOUGH ? "look" : "mark";
};

const busy = (share: number): void => look({ busy: { what: "opening", share } });

/** The picture as it is shown, decoded where it was not yet; null where it cannot be. */
export const open = async (picture: PictureFile) => {
  const known = eye().opened[picture.id];
  if (known) return known;
  const told = await askPictures("open", { picture });
  if ("fault" in told) {
    look({ fault: told.fault });
    return null;
  }
  look({ opened: { ...eye().opened, [picture.id]: told.found } });
  return told.found;
};

/** A picture of the piece in hand: in place of those that it has, or one more of the same piece. */
export const takePicture = async (file: File, isMore: boolean): Promise<void> => {
  const picture = { id: crypto.randomUUID(), file };
  look({ fault: null });
  busy(0.1);
  const shown = await open(picture);
  if (!shown) {
    look({ busy: null });
    return;
  }
  busy(0.6);
  const { by, photos } = pieceNow();
  const told = by === "marks" ? await askPictures("marks", { picture }) : null;
  keepPicture(picture.id, file);
  const photo: Photo = {
    id: picture.id,
    name: file.name,
    width: shown.width,
    height: shown.height,
    marks: told && "found" in told ? told.found : [],
    edges: [],
    lengths: [],
  };
  const kept = isMore ? photos : [];
  changePiece({ photos: [...kept, photo] }, photoSay("photo.step.picture", { name: file.name }));
  look({
    busy: null,
    fault: told && "fault" in told ? told.fault : null,
    photo: picture.id,
    stage: "picture",
    tool: toolFor(photo, by),
    cursor: null,
    held: null,
  });
};

export const megapixels = ({ width, height }: Pick<Photo, "width" | "height">): string =>
  printNumber((width * height) / 1e6, 1, studio().language);
