import type { ReactNode } from "react";
import { type FieldId, isField } from "../fields/fields.ts";
import { useStudio } from "../state/store.ts";
import { slotsOf } from "../words/sentence.ts";
import { ButtonArt } from "./ButtonArt.tsx";
import { Sentence } from "./Sentence.tsx";

type Button = {
  readonly on: boolean;
  readonly name: string;
  readonly press: (on: boolean) => void;
};

type Props = {
  readonly text: string;
  readonly given?: Readonly<Record<string, ReactNode>>;
  readonly placeholder?: string;
  readonly button?: Button;
  readonly note?: ReactNode;
  readonly number?: number;
  readonly children?: ReactNode;
};

/** What was refused in this clause, and what to do, beside its number. */
function Refusals({ fields }: { readonly fields: readonly FieldId[] }) {
  const refused = useStudio((s) => s.refused);
  return fields.map((id) => {
    const found = refused[id];
    return found ? (
      <p key={id} className="refuse" id={`refused-${id}`} role="alert">
        <b>{found.lead}</b> {found.cure}
      </p>
    ) : null;
  });
}

/** One sentence of a chapter, with its button where it has one, and the sum under it. */
export function Clause({ text, given, placeholder, button, note, number, children }: Props) {
  const fields = slotsOf(text).filter(isField);
  const here = useStudio(
    (s) =>
      (s.lit !== null && fields.includes(s.lit)) ||
      fields.some((id) => s.refused[id] !== undefined),
  );
  const classes = `clause${button ? "" : " plain"}${here ? " here" : ""}${button && !button.on ? " off" : ""}`;
  return (
    <div className={classes} data-clause={fields.join(" ")}>
      {button ? (
        <button
          type="button"
          className="btn"
          role="switch"
          aria-checked={button.on}
          aria-label={button.name}
          onClick={() => button.press(!button.on)}
        >
          <ButtonArt on={button.on} />
        </button>
      ) : null}
      <div>
        <p className="said">
          {number === undefined ? null : <b className="sn">{number}</b>}
          <Sentence
            text={text}
            {...(given ? { given } : {})}
            {...(placeholder === undefined ? {} : { placeholder })}
          />
        </p>
        {note ? <p className="note">{note}</p> : null}
        <Refusals fields={fields} />
        {children}
      </div>
    </div>
  );
}
