import { type FieldId, fieldOf } from "../fields/fields.ts";
import { labelOf } from "../state/changes.ts";
import { type Print, printField, printValue, unitMark, usePrint } from "../state/print.ts";
import { rangeNow } from "../state/refusing.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { useTyping } from "./useTyping.ts";

type Props = { readonly id: FieldId; readonly placeholder?: string };

const unitName = (id: FieldId, p: Print) => {
  const { kind } = fieldOf(id);
  return kind === "length" ? (`unit.${p.unit}` as const) : (`unit.${kind}` as const);
};

/** What a screen reader is told of a number. */
const useSpoken = (id: FieldId, p: Print) => {
  const say = useSay();
  const value = useStudio((s) => fieldOf(id).read(s.history.present));
  const refused = useStudio((s) => s.refused[id] !== undefined);
  const { least, most } = rangeNow(id, work());
  return {
    "aria-label": `${labelOf(id)}, ${say(unitName(id, p))}`,
    "aria-valuemin": least,
    "aria-valuemax": most,
    "aria-valuenow": value ?? undefined,
    "aria-valuetext": value === null ? say("notGiven") : printField(id, value, p),
    "aria-invalid": refused ? true : undefined,
    "aria-describedby": refused ? `refused-${id}` : undefined,
  };
};

/** A number of a sentence: typed, nudged by keys, refused in words. */
export function NumberSlot({ id, placeholder = "…" }: Props) {
  const p = usePrint();
  const value = useStudio((s) => fieldOf(id).read(s.history.present));
  const refused = useStudio((s) => s.refused[id]);
  const { typing, on } = useTyping(id, p);
  const spoken = useSpoken(id, p);
  const shown = value === null ? "" : printValue(id, value, p);
  const text = refused?.typed ?? typing ?? shown;
  const mark = value === null ? "" : unitMark(id, p);
  const width = Math.max(1, (text === "" ? placeholder : text).length);
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
        placeholder={placeholder}
        {...spoken}
        {...on}
      />
      {mark === "" ? null : (
        <span className="u" aria-hidden="true">
          {mark}
        </span>
      )}
    </span>
  );
}
