import { createStore, get, update } from "idb-keyval";

/** What the device keeps: the work's text, and how often it was written. */
export type Kept = { readonly revision: number; readonly text: string };

const room = createStore("ribwright", "work");
const KEY = "handbook";

const isKept = (value: unknown): value is Kept =>
  typeof value === "object" &&
  value !== null &&
  "revision" in value &&
  typeof value.revision === "number" &&
  "text" in value &&
  typeof value.text === "string";

export const keptNow = async (): Promise<Kept | null> => {
  const found: unknown = await get(KEY, room);
  return isKept(found) ? found : null;
};

export type Keeping = { readonly kept: Kept } | { readonly theirs: Kept };

/**
 * Writes the work if nobody else did since `revision`, in one transaction: two windows cannot
 * both think that they were first. With `revision` null it is written whatever stands there.
 */
export const keep = async (text: string, revision: number | null): Promise<Keeping> => {
  let outcome: Keeping | null = null;
  await update(
    KEY,
    (old: unknown) => {
      const was = isKept(old) ? old : null;
      if (was && revision !== null && was.revision !== revision) {
        outcome = { theirs: was };
        return old;
      }
      const kept = { revision: (was?.revision ?? 0) + 1, text };
      outcome = { kept };
      return kept;
    },
    room,
  );
  return outcome ?? { kept: { revision: (revision ?? 0) + 1, text } };
};
