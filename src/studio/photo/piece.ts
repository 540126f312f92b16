import type { OwnPiece } from "../ownBlock/ownBlock.ts";
import { changeOwn, own, useOwn } from "../ownBlock/state.ts";
import type { Photo, PhotoPiece } from "./photoWork.ts";

export const pieceName = (): OwnPiece => useOwn.getState().piece;
export const pieceNow = (): PhotoPiece => own().photo[pieceName()];
export const usePiece = (): PhotoPiece => useOwn((s) => s.history.present.photo[s.piece]);
export const usePieceName = (): OwnPiece => useOwn((s) => s.piece);

/** One named step on the piece in hand; with the same gesture as the last it is part of it. */
export const changePiece = (to: Partial<PhotoPiece>, step: string, gesture?: string): void => {
  const now = own();
  const name = pieceName();
  changeOwn(
    { ...now, photo: { ...now.photo, [name]: { ...now.photo[name], ...to } } },
    step,
    gesture,
  );
};

export const changePhoto = (
  id: string,
  to: (photo: Photo) => Photo,
  step: string,
  gesture?: string,
): void =>
  changePiece(
    { photos: pieceNow().photos.map((photo) => (photo.id === id ? to(photo) : photo)) },
    step,
    gesture,
  );

let count = 0;
/** A name for a run of changes that are one step of undo. */
export const newGesture = (what: string): string => `photo-${what}-${++count}`;
