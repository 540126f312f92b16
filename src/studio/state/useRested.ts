import { startTransition, useEffect, useState } from "react";
import { useStudio } from "./store.ts";

/** Checks are read when the hand has rested for so long; in ms. */
const REST = 80;

/** A value as it is, except while a pin is being pulled: then as it was when the hand last rested. */
export const useRested = <T>(value: T): T => {
  const dragging = useStudio((s) => s.dragging);
  const [rested, setRested] = useState(value);
  useEffect(() => {
    if (!dragging) {
      setRested(value);
      return;
    }
    // Off the frame: a pull that goes on comes first.
    const timer = setTimeout(() => startTransition(() => setRested(value)), REST);
    return () => clearTimeout(timer);
  }, [value, dragging]);
  return dragging ? rested : value;
};
