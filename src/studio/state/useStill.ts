import { useRef } from "react";
import { useStudio } from "./store.ts";

/** A value as it is, except while a pin is being pulled: then as it was before. */
export const useStill = <T>(value: T): T => {
  const dragging = useStudio((s) => s.dragging);
  const still = useRef(value);
  if (!dragging) still.current = value;
  return still.current;
};
