import { expect } from "vitest";
import type { Garment } from "../../src/bands/garment.ts";
import type { Check, Verdict } from "../../src/checks/check.ts";
import { checkIn } from "../support/workedGarment.ts";

/** What a check must come to: its verdict, and what its sentence must say in so many words. */
type Wanted = {
  readonly verdict: Verdict;
  /** As the maker reads them: the value, the limit. */
  readonly says: readonly string[];
  /** What to change; a sound check has nothing to change. */
  readonly cure: string;
};

/** One check of a garment, held to its verdict, its value and limit in words, and its cure. */
export const expectCheck = (garment: Garment, id: string, wanted: Wanted): Check => {
  const check = checkIn(garment, id);
  const message = check.message.replaceAll("\u00a0", " ");
  expect([id, check.verdict]).toEqual([id, wanted.verdict]);
  for (const words of wanted.says) expect(message).toContain(words);
  if (wanted.verdict === "sound") expect(message).not.toContain(wanted.cure);
  else expect(message).toContain(wanted.cure);
  expect(message).toMatch(/\.$/);
  return check;
};
