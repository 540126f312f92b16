import { createStore, del, get, keys, set } from "idb-keyval";
import type { PictureFile } from "./photoJobs.ts";
import type { Photo, PhotoWork } from "./photoWork.ts";

/** Files of pictures lie on the device under their ids, apart from what was marked in them. */
const room = createStore("ribwright-pictures", "files");
/** At hand as well: a device without room for them keeps them until the page is closed. */
const atHand = new Map<string, Blob>();

export const keepPicture = (id: string, file: Blob): void => {
  atHand.set(id, file);
  set(id, file, room).catch(() => undefined);
};

const fileOf = async (id: string): Promise<Blob | null> => {
  const known = atHand.get(id);
  if (known) return known;
  const kept: unknown = await get(id, room).catch(() => null);
  if (!(kept instanceof Blob)) return null;
  atHand.set(id, kept);
  return kept;
};

/** The files of some pictures, as far as they are still there. */
export const filesOf = async (photos: readonly Photo[]): Promise<readonly PictureFile[]> => {
  const files = await Promise.all(photos.map(async ({ id }) => ({ id, file: await fileOf(id) })));
  return files.flatMap(({ id, file }) => (file ? [{ id, file }] : []));
};

/** Drops the files that no piece shows any more; once, when the page is opened. */
export const dropUnused = async ({ front, back, sleeve }: PhotoWork): Promise<void> => {
  const used = new Set([front, back, sleeve].flatMap(({ photos }) => photos.map(({ id }) => id)));
  const kept = await keys<string>(room).catch((): string[] => []);
  for (const id of kept) if (!used.has(id)) await del(id, room).catch(() => undefined);
};
