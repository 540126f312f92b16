import { useEffect, useRef } from "react";
import type { Check } from "../../checks/check.ts";
import { Sentence } from "../page/Sentence.tsx";
import { labelOf } from "../state/changes.ts";
import { usePrint } from "../state/print.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { checkLimit, checkName, checkValue, remediesOf } from "./checkWords.ts";
import { useSentence } from "./sentences.ts";

type Props = { readonly check: Check; readonly left: number };

/** Closes the card and gives the focus back to its cell. */
const close = (id: string): void => {
  put({ openCheck: null });
  document.querySelector<HTMLElement>(`[data-check="${id}"]`)?.focus();
};

/** One check opened: what was measured, the limit, what to change with its number in place. */
export function Card({ check, left }: Props) {
  const say = useSay();
  const p = usePrint();
  const words = useStudio((s) => s.words);
  const sentence = useSentence();
  const reason = useStudio((s) => s.history.present.signed[check.id]);
  const head = useRef<HTMLHeadingElement>(null);
  // The card of another check takes the focus anew.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the check's id is the reason to focus
  useEffect(() => head.current?.focus(), [check.id]);
  const name = checkName(check.id, words, say);
  const remedies = remediesOf(check.id);
  return (
    <section
      className="card"
      aria-label={name}
      style={{ left }}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        close(check.id);
      }}
    >
      <h2 ref={head} tabIndex={-1}>
        {name} <span className={check.verdict}>{say(`verdict.${check.verdict}`)}</span>
      </h2>
      <p>{sentence(check)}</p>
      <p>
        {say("card.measured", {
          value: checkValue(check, check.value, p),
          limit: checkLimit(check, p, say),
        })}
      </p>
      {remedies.map((id) => (
        <p key={id}>
          {labelOf(id)}: <Sentence text={`{${id}}`} />
        </p>
      ))}
      {reason === undefined ? null : <p>{say("card.signed", { reason })}</p>}
      <div className="row">
        <button type="button" className="plainLink" onClick={() => close(check.id)}>
          {say("card.close")}
        </button>
      </div>
    </section>
  );
}
