import { Fragment, memo, type ReactNode } from "react";
import { isField } from "../fields/fields.ts";
import { isWordField } from "../fields/wordFields.ts";
import { runsOf } from "../words/sentence.ts";
import { NumberSlot } from "./NumberSlot.tsx";
import { TextSlot } from "./TextSlot.tsx";
import { WordSlot } from "./WordSlot.tsx";

type Props = {
  /** Words with slots; a slot is a number, a word, a name, or one of `given`. */
  readonly text: string;
  readonly given?: Readonly<Record<string, ReactNode>>;
  readonly placeholder?: string;
};

const slotFor = (name: string, { given, placeholder }: Omit<Props, "text">): ReactNode => {
  if (given && Object.hasOwn(given, name)) return given[name];
  if (isField(name)) {
    return <NumberSlot id={name} {...(placeholder === undefined ? {} : { placeholder })} />;
  }
  if (isWordField(name)) return <WordSlot id={name} />;
  if (name === "body.name") return <TextSlot of="name" />;
  if (name === "body.part") return <TextSlot of="part" />;
  return null;
};

const withMark = (slot: ReactNode, mark: string): ReactNode =>
  mark === "" ? (
    slot
  ) : (
    <span className="keep">
      {slot}
      {mark}
    </span>
  );

/** A sentence of the handbook with what may be changed in it. */
export const Sentence = memo(function Sentence({ text, ...slots }: Props) {
  return runsOf(text).map((part, i) => {
    const key = part.kind === "slot" ? part.name : `${i}`;
    return (
      <Fragment key={key}>
        {part.kind === "words" ? part.text : withMark(slotFor(part.name, slots), part.mark)}
      </Fragment>
    );
  });
});
