import { create } from "zustand";
import type { Work } from "../../project/work.ts";
import type { History } from "./history.ts";
import { studio, useStudio } from "./store.ts";

/** Checks are read when the hand has rested for so long; in ms. */
const REST = 80;

type Rested = { readonly history: History<Work, string> };

/**
 * The work as it is, except while a pin is being pulled: then as it was when the hand last rested.
 * What is read and not drawn follows this, and is left alone by every move.
 */
export const useRested = create<Rested>()(() => ({ history: studio().history }));

let waiting: ReturnType<typeof setTimeout> | undefined;

const rest = (): void => {
  const { history } = studio();
  if (history !== useRested.getState().history) useRested.setState({ history });
};

useStudio.subscribe((now, before) => {
  if (now.history === before.history && now.dragging === before.dragging) return;
  clearTimeout(waiting);
  if (now.dragging) waiting = setTimeout(rest, REST);
  else rest();
});
