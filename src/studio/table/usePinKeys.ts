import { type KeyboardEvent, useRef } from "react";
import type { FieldId } from "../fields/fields.ts";
import { nudged } from "../state/nudge.ts";
import { put } from "../state/store.ts";

const BY: Readonly<Record<string, 1 | -1>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  PageUp: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageDown: -1,
};

let runs = 0;

/** A pin in the hand of the keyboard: arrows nudge it, one visit is one step of undo. */
export const usePinKeys = (field: FieldId, putBack: () => void) => {
  const gesture = useRef("");
  return {
    onKeyDown: (event: KeyboardEvent<SVGGElement>) => {
      const by = BY[event.key];
      if (event.key === "Escape") putBack();
      if (by === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      const reach = event.key.startsWith("Page") ? "leap" : event.shiftKey ? "fine" : "step";
      nudged(field, { by, reach }, gesture.current);
    },
    onFocus: () => {
      gesture.current = `pin-${field}-${++runs}`;
      put({ lit: field });
    },
    onBlur: () => put({ lit: null }),
  };
};
