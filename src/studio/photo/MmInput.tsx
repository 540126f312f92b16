import { type KeyboardEvent, useState } from "react";
import type { Mm } from "../../geometry/units.ts";
import { usePrint } from "../state/print.ts";
import { readLength } from "../units/readLength.ts";
import { useSay } from "../words/say.ts";
import { usePhotoSay } from "./photoSay.ts";

type Props = {
  readonly label: string;
  readonly value: Mm | null;
  readonly least: Mm;
  readonly most: Mm;
  /** Called once the maker is done with it; null where it was emptied. */
  readonly onTake: (value: Mm | null) => void;
  readonly id: string;
};

const STEPS: Readonly<Record<string, Mm>> = {
  ArrowUp: 1,
  ArrowDown: -1,
  PageUp: 10,
  PageDown: -10,
};

/** A length of a sentence that belongs to no body: typed in any unit, nudged by keys, refused in words. */
export function MmInput({ label, value, least, most, onTake, id }: Props) {
  const say = useSay();
  const told = usePhotoSay();
  const p = usePrint();
  const [typed, setTyped] = useState<string | null>(null);
  const [isRefused, setRefused] = useState(false);
  const shown = value === null ? "" : p.exact(value);
  const text = typed ?? shown;
  const end = (): void => {
    if (typed === null || typed === shown) {
      setTyped(null);
      setRefused(false);
      return;
    }
    const read = readLength(typed, p.unit);
    const isEmpty = !read.ok && read.why === "empty";
    const isSound = read.ok && !read.added && read.value >= least && read.value <= most;
    setRefused(!isEmpty && !isSound);
    if (!isEmpty && !isSound) return;
    setTyped(null);
    onTake(read.ok ? read.value : null);
  };
  const onKeyDown = (event: KeyboardEvent<HTMLInputElement>): void => {
    if (event.key === "Enter") end();
    if (event.key === "Escape") {
      setTyped(null);
      setRefused(false);
    }
    const step = STEPS[event.key];
    if (step === undefined || value === null) return;
    event.preventDefault();
    const by = event.shiftKey ? step / 10 : step;
    onTake(Math.min(most, Math.max(least, Math.round((value + by) * 1000) / 1000)));
  };
  return (
    <>
      <span className={`n${isRefused ? " bad" : ""}${value === null && !isRefused ? " none" : ""}`}>
        <input
          role="spinbutton"
          inputMode="decimal"
          autoComplete="off"
          spellCheck={false}
          data-mm={id}
          size={Math.max(2, text.length)}
          value={text}
          placeholder="…"
          aria-label={`${label}, ${say(`unit.${p.unit}`)}`}
          aria-valuenow={value ?? undefined}
          aria-valuemin={least}
          aria-valuemax={most}
          aria-valuetext={value === null ? say("notGiven") : p.full(value)}
          aria-invalid={isRefused ? true : undefined}
          aria-describedby={isRefused ? `refused-mm-${id}` : undefined}
          onChange={(event) => {
            setRefused(false);
            setTyped(event.target.value);
          }}
          onBlur={end}
          onKeyDown={onKeyDown}
        />
        {text === "" ? null : (
          <span className="u" aria-hidden="true">
            {p.unit}
          </span>
        )}
      </span>
      {isRefused ? (
        <span className="refuse mmRefused" id={`refused-mm-${id}`} role="alert">
          {told("photo.refused", {
            what: label,
            typed: typed ?? "",
            least: p.full(least),
            most: p.full(most),
          })}
        </span>
      ) : null}
    </>
  );
}
