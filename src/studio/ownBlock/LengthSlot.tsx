import { type ChangeEvent, type KeyboardEvent, useId, useRef, useState } from "react";
import { createPortal } from "react-dom";
import { type Print, usePrint } from "../state/print.ts";
import { readLength } from "../units/readLength.ts";
import { STEPS } from "../units/unit.ts";
import { useSay } from "../words/say.ts";
import { useOwnSay } from "./ownSay.ts";

type Props = {
  readonly label: string;
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  readonly mayBeEmpty?: boolean;
  /** Takes a length in mm; the same gesture while the same number is in hand. */
  readonly take: (value: number | null, gesture: string) => void;
  readonly focus?: () => void;
};

let gestures = 0;

const markOf = ({ unit, language }: Print): string =>
  unit === "in" && language === "de" ? "Zoll" : unit;

/** How far the keys move a length: an arrow by a step, with Shift by less, a page key by more. */
const nudgeOf = (key: string, fine: boolean, { unit }: Print): number => {
  const { step, fine: small, leap } = STEPS[unit];
  const by = fine ? small : step;
  switch (key) {
    case "ArrowUp":
      return by;
    case "ArrowDown":
      return -by;
    case "PageUp":
      return leap;
    case "PageDown":
      return -leap;
    default:
      return 0;
  }
};

const DUST = 1e6;

/** What the slot shows and does while a length is typed in it. */
const useLengthTyping = ({ label, value, least, most, mayBeEmpty = false, take, focus }: Props) => {
  const ownSay = useOwnSay();
  const p = usePrint();
  const gesture = useRef("");
  const [typing, setTyping] = useState<string | null>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const begin = () => {
    gesture.current = `length-${++gestures}`;
  };
  const putBack = () => {
    setTyping(null);
    setRefused(null);
  };
  const tryTo = (text: string, done: boolean): boolean => {
    const read = readLength(text, p.unit);
    if (!read.ok && read.why === "empty" && mayBeEmpty) {
      take(null, gesture.current);
      return true;
    }
    const length = read.ok ? read.value + (read.added ? (value ?? 0) : 0) : Number.NaN;
    if (length >= least && length <= most) {
      take(length, gesture.current);
      return true;
    }
    const range = { label, least: p.full(least), most: p.full(most) };
    if (done) setRefused(ownSay("own.refused", { typed: text, ...range }));
    return false;
  };
  const keep = () => {
    if (typing !== null && tryTo(typing, true)) setTyping(null);
    begin();
  };
  const nudge = (by: number) => {
    putBack();
    const to = Math.round(((value ?? 0) + by) * DUST) / DUST;
    take(Math.min(most, Math.max(least, to)), gesture.current);
  };
  const on = {
    onFocus: () => {
      begin();
      focus?.();
    },
    onChange: (event: ChangeEvent<HTMLInputElement>) => {
      setRefused(null);
      setTyping(event.target.value);
      if (!event.target.value.trim().startsWith("+")) tryTo(event.target.value, false);
    },
    onBlur: keep,
    onKeyDown: (event: KeyboardEvent<HTMLInputElement>) => {
      const by = nudgeOf(event.key, event.shiftKey, p);
      if (by !== 0 && value !== null) {
        event.preventDefault();
        nudge(by);
      }
      if (event.key === "Enter") keep();
      if (event.key === "Escape") putBack();
    },
  };
  return { text: typing ?? (value === null ? "" : p.exact(value)), refused, on };
};

/** A length of the door: typed in the maker's unit, moved by keys, refused in words beside it. */
export function LengthSlot(props: Props) {
  const { label, value, least, most } = props;
  const say = useSay();
  const p = usePrint();
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const { text, refused, on } = useLengthTyping(props);
  // Under the whole sentence: within it, it would tear the sentence apart.
  const clause = input.current?.closest(".clause")?.lastElementChild;
  return (
    <>
      <span className={`n${refused ? " bad" : ""}${text === "" ? " none" : ""}`}>
        <input
          ref={input}
          role="spinbutton"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          size={Math.max(2, text.length)}
          value={text}
          placeholder="…"
          aria-label={`${label}, ${say(`unit.${p.unit}`)}`}
          aria-valuemin={least}
          aria-valuemax={most}
          aria-valuenow={value ?? undefined}
          aria-valuetext={value === null ? say("notGiven") : p.full(value)}
          aria-invalid={refused ? true : undefined}
          aria-describedby={refused ? id : undefined}
          {...on}
        />
        {text === "" ? null : (
          <span className="u" aria-hidden="true">
            {markOf(p)}
          </span>
        )}
      </span>
      {refused && clause
        ? createPortal(
            <span className="refuse slotRefuse" id={id} role="alert">
              {refused}
            </span>,
            clause,
          )
        : null}
    </>
  );
}
