import { useRef } from "react";
import { sameValue } from "./sameValue.ts";
import { type Studio, useStudio } from "./store.ts";

/** Something of the studio; while it holds the same it is the same value, and nothing is drawn anew. */
export const useSame = <T>(choose: (studio: Studio) => T): T => {
  const kept = useRef<T | null>(null);
  return useStudio((s) => {
    const next = choose(s);
    if (kept.current === null || !sameValue(kept.current, next)) kept.current = next;
    return kept.current;
  });
};
