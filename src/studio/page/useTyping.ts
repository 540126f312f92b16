import { type ChangeEvent, type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import type { FieldId } from "../fields/fields.ts";
import { dropGesture, setNumber } from "../state/changes.ts";
import { nudged, type Way, wayOfKey } from "../state/nudge.ts";
import type { Print } from "../state/print.ts";
import { takeTyped } from "../state/refusing.ts";
import { put, studio, work } from "../state/store.ts";

let gestures = 0;

const setRefused = (id: FieldId, refused: ReturnType<typeof studio>["refused"][FieldId] | null) => {
  const { [id]: _, ...others } = studio().refused;
  put({ refused: refused ? { ...others, [id]: refused } : others });
};

/** Takes what was typed: live where it can be, refused in words once the maker is done with it. */
const take = (id: FieldId, typed: string, p: Print, gesture: string, done: boolean): boolean => {
  const taken = takeTyped(id, typed, work(), p);
  if ("value" in taken) {
    setNumber(id, taken.value, gesture);
    if (studio().refused[id]) setRefused(id, null);
    return true;
  }
  if (done) setRefused(id, taken.refused);
  return false;
};

type Typing = {
  readonly begin: () => void;
  readonly type: (text: string) => void;
  readonly keep: () => void;
  readonly putBack: () => void;
  readonly nudge: (way: Way) => void;
};

/** What the input does with keys, pointer and focus. */
const handlersOf = (id: FieldId, { begin, type, keep, putBack, nudge }: Typing) => ({
  onFocus: begin,
  onChange: (event: ChangeEvent<HTMLInputElement>) => {
    if (studio().refused[id]) setRefused(id, null);
    type(event.target.value);
  },
  onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => {
    const way = wayOfKey(event.key, event.shiftKey);
    if (way) {
      event.preventDefault();
      nudge(way);
    }
    if (event.key === "Enter") keep();
    if (event.key === "Escape") putBack();
  },
  onBlur: () => {
    keep();
    put({ lit: null });
  },
  onPointerEnter: () => put({ lit: id }),
  onPointerLeave: (event: PointerEvent<HTMLInputElement>) => {
    if (document.activeElement !== event.currentTarget) put({ lit: null });
  },
});

/** What the input shows and does while it is in hand. */
export const useTyping = (id: FieldId, p: Print) => {
  const [typing, setTyping] = useState<string | null>(null);
  const gesture = useRef("");
  const begin = () => {
    gesture.current = `type-${id}-${++gestures}`;
    put({ lit: id });
  };
  const type = (text: string) => {
    setTyping(text);
    // "+3" is so much more than it was: taken once, at the end.
    if (!text.trim().startsWith("+")) take(id, text, p, gesture.current, false);
  };
  const keep = () => {
    if (typing !== null && take(id, typing, p, gesture.current, true)) setTyping(null);
    gesture.current = `type-${id}-${++gestures}`;
  };
  const putBack = () => {
    dropGesture(gesture.current);
    setTyping(null);
    setRefused(id, null);
  };
  const nudge = (way: Way) => {
    setTyping(null);
    setRefused(id, null);
    nudged(id, way, gesture.current);
  };
  return { typing, on: handlersOf(id, { begin, type, keep, putBack, nudge }) };
};
