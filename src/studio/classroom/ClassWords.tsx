import type { LessonStep } from "../../guide/lesson/step.ts";
import { tell, tellBlank } from "../../guide/words/tell.ts";
import { useVoice } from "../guide/voice.ts";
import { useSay } from "../words/say.ts";
import type { ClassState } from "./classKeys.ts";

type Props = { readonly step: LessonStep; readonly state: ClassState };

function Questions({ step, state }: Props) {
  const say = useSay();
  const voice = useVoice();
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

/** The step's name, its sentence, the reason, and what the class may work out. */
export function ClassWords({ step, state }: Props) {
  const say = useSay();
  const voice = useVoice();
  const speak = state.numbers ? tell : tellBlank;
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: where it scrolls it must take the focus
    <section className="classWords" aria-label={tell(voice, step.title)} tabIndex={0}>
      <div aria-live="polite">
        <h1>{tell(voice, step.title)}</h1>
        <p className="classSentence">{speak(voice, step.sentence)}</p>
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
