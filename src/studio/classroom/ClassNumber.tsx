import { type KeyboardEvent, useRef, useState } from "react";
import { type ChoiceFieldId, fieldOf } from "../fields/fields.ts";
import { labelOf } from "../state/changes.ts";
import { nudgedValue, wayOfKey } from "../state/nudge.ts";
import { printField, printValue, unitMark, usePrint } from "../state/print.ts";
import { rangeNow, takeTyped } from "../state/refusing.ts";
import type { Refused } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { plainFractions } from "./classVoice.ts";
import { setTaught, taughtWork } from "./teaching.ts";

type Props = {
  readonly id: ChoiceFieldId;
  readonly refused: Refused | null;
  readonly refuse: (refused: Refused | null) => void;
};

/** A number of the step's sentence, changed before the class. Its keys are not the teacher's keys. */
export function ClassNumber({ id, refused, refuse }: Props) {
  const say = useSay();
  const p = usePrint();
  const [typed, setTyped] = useState<string | null>(null);
  const before = useRef<number | null>(null);
  const escaped = useRef(false);
  const now = taughtWork();
  const value = fieldOf(id).read(now) ?? 0;
  const take = (text: string, done: boolean) => {
    const taken = takeTyped(id, text, taughtWork(), p);
    if ("value" in taken && taken.value !== null) setTaught(id, taken.value);
    refuse("refused" in taken && done ? taken.refused : null);
  };
  /** Enter and leaving keep what was typed; Escape puts back what stood before. */
  const settle = () => {
    if (escaped.current) {
      if (before.current !== null) setTaught(id, before.current);
      refuse(null);
    } else if (typed !== null) take(typed, true);
    escaped.current = false;
    setTyped(null);
  };
  const press = (event: KeyboardEvent<HTMLInputElement>) => {
    event.stopPropagation();
    const way = wayOfKey(event.key, event.shiftKey);
    if (way) {
      event.preventDefault();
      const to = nudgedValue(id, taughtWork(), way, p.unit);
      setTyped(null);
      refuse(null);
      if (to !== null) setTaught(id, to);
    }
    if (event.key !== "Enter" && event.key !== "Escape") return;
    escaped.current = event.key === "Escape";
    event.currentTarget.blur();
  };
  const text = typed ?? refused?.typed ?? plainFractions(printValue(id, value, p));
  const { least, most } = rangeNow(id, now);
  return (
    <span className={`n${refused ? " bad" : ""}`}>
      <input
        role="spinbutton"
        inputMode="decimal"
        autoComplete="off"
        data-class-field={id}
        size={Math.max(1, text.length)}
        value={text}
        aria-label={`${labelOf(id)}, ${say(`unit.${p.unit}`)}`}
        aria-keyshortcuts="C"
        aria-valuemin={least}
        aria-valuemax={most}
        aria-valuenow={value}
        aria-valuetext={printField(id, value, p)}
        aria-invalid={refused ? true : undefined}
        aria-describedby={refused ? "classRefused" : undefined}
        onFocus={(event) => {
          before.current = value;
          event.currentTarget.select();
        }}
        onChange={(event) => {
          setTyped(event.target.value);
          take(event.target.value, false);
        }}
        onKeyDown={press}
        onBlur={settle}
      />
      <span className="u" aria-hidden="true">
        {unitMark(id, p)}
      </span>
    </span>
  );
}
