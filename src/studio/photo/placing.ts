import { useEffect } from "react";
import type { OwnPiece } from "../ownBlock/ownBlock.ts";
import { own } from "../ownBlock/state.ts";
import { eye, forPiece, look, useEye } from "./eye.ts";
import { lackOf } from "./marks.ts";
import { askPictures, isStopped } from "./photoClient.ts";
import type { Placing } from "./photoJobs.ts";
import type { PhotoPiece } from "./photoWork.ts";
import { filesOf } from "./pictureFiles.ts";
import { usePiece, usePieceName } from "./piece.ts";

/** Typing and dragging rest for so long before the marks are reckoned anew, ms. */
const REST = 200;

/** All that a placing depends on: another key, another placing. */
export const placingKey = ({ photos, by, distances, sheet, bends, waves }: PhotoPiece): string =>
  JSON.stringify([photos.map(({ name: _, ...rest }) => rest), by, distances, sheet, bends, waves]);

const place = async (name: OwnPiece, key: string): Promise<void> => {
  const piece = own().photo[name];
  const pictures = await filesOf(piece.photos);
  const told = await askPictures("place", { pictures, piece, along: [] });
  // Meanwhile the maker may have changed something: then another answer is on its way.
  if (isStopped(told) || placingKey(own().photo[name]) !== key) return;
  look({ placing: forPiece(eye().placing, name, { key, is: told }) });
};

/** The placing of a piece, as far as it is known and still true. */
export const placingOf = (name: OwnPiece): Placing | null => {
  const known = eye().placing[name];
  if (!known || known.key !== placingKey(own().photo[name])) return null;
  return "found" in known.is ? known.is.found : null;
};

/** Keeps the placing of the piece in hand true, and tells it. */
export const usePlacing = () => {
  const name = usePieceName();
  const piece = usePiece();
  const known = useEye((s) => s.placing[name]);
  const lack = lackOf(piece);
  const key = placingKey(piece);
  const isKnown = known?.key === key;
  useEffect(() => {
    if (lack !== null || isKnown) return;
    const waits = setTimeout(() => place(name, key), REST);
    return () => clearTimeout(waits);
  }, [name, key, lack, isKnown]);
  return { lack, told: isKnown && lack === null ? (known?.is ?? null) : null };
};
