import { Fragment, useLayoutEffect, useRef, useState } from "react";
import type { LessonStep } from "../../guide/lesson/step.ts";
import { tell, tellBlank, tellSlot } from "../../guide/words/tell.ts";
import type { ChoiceFieldId } from "../fields/fields.ts";
import type { Refused } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { runsOf } from "../words/sentence.ts";
import { ClassNumber } from "./ClassNumber.tsx";
import type { ClassState } from "./classKeys.ts";
import { useClassVoice } from "./classVoice.ts";
import { lessonField } from "./lessonFields.ts";

type Props = { readonly step: LessonStep; readonly state: ClassState };

function Questions({ step, state }: Props) {
  const say = useSay();
  const voice = useClassVoice();
  return (
    <section className="classAsk" aria-label={say("class.ask")}>
      <h2>{say("class.ask")}</h2>
      <ul>
        {step.questions.map(({ ask, working }) => (
          <li key={`${ask.key} ${working.key}`}>
            {tell(voice, ask)}
            {state.answers ? <b data-answer>{tell(voice, working)}</b> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

type SlotProps = {
  readonly step: LessonStep;
  readonly name: string;
  readonly refused: ByField;
  readonly refuse: (id: ChoiceFieldId, refused: Refused | null) => void;
};
type ByField = { readonly [K in ChoiceFieldId]?: Refused | null };

/** A number that the teacher may change, or one that was worked out. */
function SentenceSlot({ step, name, refused, refuse }: SlotProps) {
  const voice = useClassVoice();
  const { key, slots } = step.sentence;
  const id = lessonField(key, name);
  if (id)
    return (
      <ClassNumber id={id} refused={refused[id] ?? null} refuse={(found) => refuse(id, found)} />
    );
  const slot = slots[name];
  return slot ? tellSlot(voice, slot) : null;
}

/** The step's sentence with its numbers; what is refused stands below it. */
function StepSentence({ step }: { readonly step: LessonStep }) {
  const voice = useClassVoice();
  const [refused, setRefused] = useState<ByField>({});
  const refuse = (id: ChoiceFieldId, found: Refused | null) => setRefused({ [id]: found });
  const [found] = Object.values(refused).filter((one) => one !== null);
  return (
    <>
      <p className="classSentence">
        {runsOf(voice.words[step.sentence.key]).map((run, i) => (
          <Fragment key={run.kind === "slot" ? run.name : `${i}`}>
            {run.kind === "words" ? (
              run.text
            ) : (
              <span className="keep">
                <SentenceSlot step={step} name={run.name} refused={refused} refuse={refuse} />
                {run.mark}
              </span>
            )}
          </Fragment>
        ))}
      </p>
      {found ? (
        <p className="classRefused" id="classRefused" role="alert">
          <b>{found.lead}</b> {found.cure}
        </p>
      ) : null}
    </>
  );
}

/** Where a step says more than goes on the page, its letters stand closer: nothing is scrolled. */
const useTight = () => {
  const leaf = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const { current } = leaf;
    current?.classList.remove("tight");
    if (current && current.scrollHeight > current.clientHeight) current.classList.add("tight");
  });
  return leaf;
};

/** The step's name, its sentence, the reason, and what the class may work out. */
export function ClassWords({ step, state }: Props) {
  const leaf = useTight();
  const say = useSay();
  const voice = useClassVoice();
  const speak = state.numbers ? tell : tellBlank;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: where it scrolls it must take the focus
    <section ref={leaf} className="classWords" aria-label={tell(voice, step.title)} tabIndex={0}>
      <div aria-live="polite">
        <h1>{tell(voice, step.title)}</h1>
        <StepSentence key={step.id} step={step} />
        <p className="classWhy">{speak(voice, step.why)}</p>
      </div>
      {step.questions.length > 0 ? <Questions step={step} state={state} /> : null}
      {step.before.length > 0 ? (
        <p className="classLegend" aria-hidden="true">
          <svg width="70" height="10" viewBox="0 0 70 10" aria-hidden="true">
            <path className="cl-moves" d="M2 5H68" />
          </svg>
          {say("class.new")}
          <svg width="70" height="10" viewBox="0 0 70 10" aria-hidden="true">
            <path className="cl-old" d="M2 5H68" />
          </svg>
          {say("class.old")}
        </p>
      ) : null}
    </section>
  );
}
