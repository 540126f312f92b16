import { useRef } from "react";
import { heldBody, withBody } from "../../project/work.ts";
import { change } from "../state/changes.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";

const MOST_LETTERS = 60;
const KEYS = { name: "measures.name", part: "measures.part" } as const;
const NONE = { name: "measures.noName", part: "measures.noPart" } as const;
let gestures = 0;

/** The body's name, or its part in the work, typed in the sentence itself. */
export function TextSlot({ of }: { readonly of: "name" | "part" }) {
  const say = useSay();
  const text = useStudio((s) => heldBody(s.history.present)[of]);
  const gesture = useRef("");
  const set = (value: string) =>
    change(
      withBody(work(), (body) => ({ ...body, [of]: value.slice(0, MOST_LETTERS) })),
      () => say("step.word", { what: say(KEYS[of]), to: value }),
      gesture.current,
    );
  const width = Math.max(3, (text === "" ? say(NONE[of]) : text).length);
  return (
    <span className="n text" translate="no">
      <input
        value={text}
        placeholder={say(NONE[of])}
        aria-label={say(KEYS[of])}
        autoComplete="off"
        maxLength={MOST_LETTERS}
        size={width}
        onFocus={() => {
          gesture.current = `text-${++gestures}`;
        }}
        onChange={(event) => set(event.target.value)}
      />
    </span>
  );
}
