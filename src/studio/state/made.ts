import type { Choices } from "../../drafting/choices.ts";
import type { Block } from "../../drafting/piece.ts";
import { type Made, make } from "../../project/make.ts";
import { bodyOf, heldBody, isBlockOfBody, type Work, type WorkBody } from "../../project/work.ts";
import { keptParts } from "./sameValue.ts";
import { useStudio } from "./store.ts";

/** What the work comes to: the garment and its checks, or why there is none. */
export type Drawn = {
  /** null: no body yet. After a fault, the last good one. */
  readonly made: Made | null;
  /** A fault of ours, in the program's words. */
  readonly fault: string | null;
};

type Given = { readonly body: WorkBody; readonly choices: Choices; readonly block: Block | null };

const NOTHING: Drawn = { made: null, fault: null };

/** Kept by input: the same body, choices and block are not drafted twice. One entry is enough. */
let last: { readonly given: Given; readonly drawn: Drawn } | null = null;

/** What did not change stays the same value, so that nothing of it is drawn anew. */
const withKeptPieces = (made: Made): Made => {
  const before = last?.drawn.made?.garment.pieces;
  if (!before) return made;
  const { garment } = made;
  return { ...made, garment: { ...garment, pieces: keptParts(before, garment.pieces) } };
};

const draft = ({ body, choices, block }: Given): Drawn => {
  const whole = bodyOf(body);
  if (!whole) return NOTHING;
  try {
    return { made: withKeptPieces(make(whole, choices, block)), fault: null };
  } catch (fault) {
    return { made: last?.drawn.made ?? null, fault: String(fault) };
  }
};

/** The maker's own block where it is used; every other body is drafted from its measures. */
export const blockOf = (work: Work): Block | null =>
  work.block && work.useBlock && isBlockOfBody(work) ? work.block.block : null;

export const drawnOf = (work: Work): Drawn => {
  const given = { body: heldBody(work), choices: work.choices, block: blockOf(work) };
  const same =
    last !== null &&
    last.given.body === given.body &&
    last.given.choices === given.choices &&
    last.given.block === given.block;
  if (same && last) return last.drawn;
  const drawn = draft(given);
  last = { given, drawn };
  return drawn;
};

export const useMade = (): Made | null => drawnOf(useStudio((s) => s.history.present)).made;

/** Of what the work comes to, only what is asked for: drawn anew when that changes, not at every move. */
export const useOfDrawn = <T>(choose: (drawn: Drawn) => T): T =>
  useStudio((s) => choose(drawnOf(s.history.present)));

const isMade = ({ made }: Drawn): boolean => made !== null;
export const useIsMade = (): boolean => useOfDrawn(isMade);
