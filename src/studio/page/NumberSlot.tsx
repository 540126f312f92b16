import { type KeyboardEvent, useRef, useState } from "react";
import { type FieldId, fieldOf } from "../fields/fields.ts";
import { dropGesture, labelOf, setNumber } from "../state/changes.ts";
import { nudged, type Reach } from "../state/nudge.ts";
import { type Print, printField, printValue, unitMark, usePrint } from "../state/print.ts";
import { rangeNow, takeTyped } from "../state/refusing.ts";
import { put, studio, useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";

type Props = { readonly id: FieldId; readonly placeholder?: string };

const REACH: Readonly<Record<string, { readonly by: 1 | -1; readonly reach: Reach }>> = {
  ArrowUp: { by: 1, reach: "step" },
  ArrowDown: { by: -1, reach: "step" },
  PageUp: { by: 1, reach: "leap" },
  PageDown: { by: -1, reach: "leap" },
};

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

const unitName = (id: FieldId, p: Print) => {
  const { kind } = fieldOf(id);
  return kind === "length" ? (`unit.${p.unit}` as const) : (`unit.${kind}` as const);
};

/** What the input shows and does while it is in hand. */
const useTyping = (id: FieldId, p: Print) => {
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
  return { typing, setTyping, gesture, begin, type, keep, putBack };
};

export function NumberSlot({ id, placeholder }: Props) {
  const p = usePrint();
  const say = useSay();
  const value = useStudio((s) => fieldOf(id).read(s.history.present));
  const refused = useStudio((s) => s.refused[id]);
  const { typing, setTyping, gesture, begin, type, keep, putBack } = useTyping(id, p);
  const shown = value === null ? "" : printValue(id, value, p);
  const text = refused?.typed ?? typing ?? shown;
  const { least, most } = rangeNow(id, work());
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>) => {
    const way = REACH[event.key];
    if (way) {
      event.preventDefault();
      setTyping(null);
      setRefused(id, null);
      nudged(id, way.by, event.shiftKey ? "fine" : way.reach, gesture.current);
    }
    if (event.key === "Enter") keep();
    if (event.key === "Escape") putBack();
  };
  const mark = unitMark(id, p);
  const width = Math.max(1, (text === "" ? (placeholder ?? "…") : text).length);
  return (
    <span className={`n${refused ? " bad" : ""}${value === null && !refused ? " none" : ""}`}>
      <input
        role="spinbutton"
        inputMode="decimal"
        autoComplete="off"
        spellCheck={false}
        data-field={id}
        size={width}
        value={text}
        placeholder={placeholder ?? "…"}
        aria-label={`${labelOf(id)}, ${say(unitName(id, p))}`}
        aria-valuemin={least}
        aria-valuemax={most}
        aria-valuenow={value ?? undefined}
        aria-valuetext={value === null ? say("notGiven") : printField(id, value, p)}
        aria-invalid={refused ? true : undefined}
        aria-describedby={refused ? `refused-${id}` : undefined}
        onFocus={begin}
        onChange={(event) => {
          if (refused) setRefused(id, null);
          type(event.target.value);
        }}
        onKeyDown={onKeyDown}
        onBlur={() => {
          keep();
          put({ lit: null });
        }}
        onPointerEnter={() => put({ lit: id })}
        onPointerLeave={(event) => {
          if (document.activeElement !== event.currentTarget) put({ lit: null });
        }}
      />
      {mark !== "" && value !== null ? (
        <span className="u" aria-hidden="true">
          {mark}
        </span>
      ) : null}
    </span>
  );
}
