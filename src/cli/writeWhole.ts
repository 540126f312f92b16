import { randomBytes } from "node:crypto";
import {
  mkdirSync,
  readdirSync,
  renameSync,
  rmdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { dirname, join, resolve } from "node:path";
import { codeOf } from "./fileWords.ts";

/** Files of one folder, by name. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** What a run calls its unfinished folders: no two runs share a mark, and a dead run's is known. */
export type RunMark = string;

const STAGE = /^\.ribwright-(\d+)-[0-9a-f]+(-[\w.-]+)?$/u;

export const newRunMark = (): RunMark =>
  `.ribwright-${process.pid}-${randomBytes(4).toString("hex")}`;

/** Whether the process that wrote here is gone. Our own number, met before we wrote, is a reused one. */
const isGone = (pid: number): boolean => {
  if (pid === process.pid) return true;
  try {
    process.kill(pid, 0);
    return false;
  } catch (error) {
    return codeOf(error) === "ESRCH";
  }
};

/** Node's own way of making all folders of a path never ends where one cannot be made (/proc). */
const makeFolder = (path: string): void => {
  if (isFolder(path)) return;
  const above = dirname(path);
  if (above !== path) makeFolder(above);
  try {
    mkdirSync(path);
  } catch (error) {
    if (!isFolder(path)) throw error; // another run may just have made it
  }
};

/** Makes the folder that a run writes into, and clears what runs that were cut off left in it. */
export const openFolder = (folder: string): void => {
  makeFolder(resolve(folder));
  for (const name of readdirSync(folder)) {
    const pid = STAGE.exec(name)?.[1];
    if (pid !== undefined && isGone(Number(pid))) discard(join(folder, name));
  }
};

/** Removes whatever this run has left unfinished in a folder. */
export const clearRun = (folder: string, mark: RunMark): void => {
  try {
    for (const name of readdirSync(folder))
      if (name === mark || name.startsWith(`${mark}-`)) discard(join(folder, name));
  } catch {
    // The folder itself may never have been made; there is nothing to clear then.
  }
};

const discard = (path: string): void => rmSync(path, { recursive: true, force: true });

const isFolder = (path: string): boolean =>
  statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;

/** Writes the files under an unfinished name and hands that over to be put in place. */
const staged = (stage: string, files: Files, place: () => void): void => {
  try {
    mkdirSync(stage);
    for (const [name, content] of Object.entries(files)) writeFileSync(join(stage, name), content);
    place();
  } catch (error) {
    discard(stage);
    throw error;
  }
};

const moveEach = (files: Files, stage: string, folder: string): void => {
  for (const name of Object.keys(files)) renameSync(join(stage, name), join(folder, name));
  rmdirSync(stage);
};

/**
 * Puts whole files into a folder that is there: they are written aside first, so that a run that is
 * cut off leaves no half file under a final name. Files of the same names are replaced.
 */
export const writeInto = (folder: string, files: Files, mark: RunMark): void => {
  const stage = join(folder, mark);
  staged(stage, files, () => moveEach(files, stage, folder));
};

/** The same for a folder of its own inside `parent`: a new one appears with all its files at once. */
export const writeFolder = (parent: string, name: string, files: Files, mark: RunMark): void => {
  const [folder, stage] = [join(parent, name), join(parent, `${mark}-${name}`)];
  staged(stage, files, () => {
    try {
      renameSync(stage, folder);
    } catch (error) {
      // Most often there is none yet, so it is not asked for beforehand.
      if (!isFolder(folder)) throw error;
      moveEach(files, stage, folder);
    }
  });
};
