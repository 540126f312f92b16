import type { Fault } from "../drafting/fault.ts";
import { faultOfFile } from "../project/textFile.ts";

/** What the system said of a file or folder, and what a maker can do about it. */
const WORDS: Readonly<Record<string, readonly [reason: string, cure: string]>> = {
  EACCES: ["may not be opened by you.", "Ask for the rights to it, or take another place."],
  EPERM: ["may not be changed by you.", "Ask for the rights to it, or take another place."],
  EISDIR: ["is a folder, where a file is needed.", "Name a file, or move the folder away."],
  ENOTDIR: ["has a file on its way where a folder is needed.", "Name another folder."],
  EEXIST: ["is a file, where a folder is needed.", "Name another folder, or move the file away."],
  EROFS: ["lies on a disk that can only be read.", "Take another place."],
  ENOSPC: ["has no room left on its disk.", "Make room, or take another disk."],
  EDQUOT: ["has no room left in your share of the disk.", "Make room, or take another disk."],
  EFBIG: ["would be larger than files may be here.", "Take another disk, or raise that limit."],
  ENAMETOOLONG: ["has too long a name.", "Shorten it."],
  ELOOP: ["is a link that leads in a circle.", "Name the file itself."],
  EMFILE: ["cannot be opened: too many files are open.", "Close other programs and run again."],
  EIO: ["cannot be read or written: the disk fails.", "Take another disk."],
  EXDEV: ["leads to another disk.", "Name a folder on one disk."],
};

/** ENOENT where a file is to be read, and where one is to be made. */
const NOT_THERE = ["is not there.", "Look for a slip in its name."] as const;
const NOT_MADE = ["cannot be made there.", "Take another place."] as const;

/** The code that Node gives with a failed call to the system; null for any other error. */
export const codeOf = (error: unknown): string | null =>
  error instanceof Error && "code" in error && typeof error.code === "string" ? error.code : null;

/** A failed call to the system as a fault; any other error is our own mistake and is thrown on. */
const faultOfCall = (error: unknown, file: string, absent: readonly [string, string]): Fault => {
  const code = codeOf(error);
  if (code === null || !(error instanceof Error && "syscall" in error)) throw error;
  const words = code === "ENOENT" ? absent : WORDS[code];
  const [reason, cure] = words ?? [`cannot be used (${code}).`, "Take another place."];
  return faultOfFile(file, reason, cure);
};

export const faultOfReading = (error: unknown, file: string): Fault =>
  faultOfCall(error, file, NOT_THERE);
export const faultOfWriting = (error: unknown, file: string): Fault =>
  faultOfCall(error, file, NOT_MADE);

/** After these nothing more can be written anywhere in the folder: a run ends. */
const ENDS_RUN = ["ENOSPC", "EDQUOT", "EFBIG", "EROFS", "EIO"];
export const endsRun = (error: unknown): boolean => ENDS_RUN.includes(codeOf(error) ?? "");
