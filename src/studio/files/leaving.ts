import type { Kept } from "./keeping.ts";

const KEY = "ribwright:leaving";

/**
 * Puts the work where it can be written at once. A page that is closed is not waited for, so what
 * is written to the database then may not arrive; this does. Without room it is left undone.
 */
export const putAtDoor = (text: string, revision: number): void => {
  try {
    localStorage.setItem(KEY, `${revision} ${text}`);
  } catch {
    // No room, or none allowed: the database is still tried.
  }
};

/** What was put there when the page was left, with the revision that it follows; taken away. */
export const takeFromDoor = (): Kept | null => {
  try {
    const found = localStorage.getItem(KEY);
    localStorage.removeItem(KEY);
    const parts = found === null ? null : /^(\d+) (.*)$/su.exec(found);
    const [, revision, text] = parts ?? [];
    return revision === undefined || text === undefined
      ? null
      : { revision: Number(revision), text };
  } catch {
    return null;
  }
};
