import type { LessonStep } from "../../guide/lesson/step.ts";
import { tell } from "../../guide/words/tell.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import {
  type ClassState,
  goBack,
  goOn,
  goToStep,
  playAgain,
  turnAnswers,
  turnGround,
  turnNumbers,
} from "./classKeys.ts";
import { useClassVoice } from "./classVoice.ts";
import { leaveClass, turnFullScreen } from "./teaching.ts";

type Change = (state: ClassState, last: number) => ClassState;

type Props = {
  readonly steps: readonly LessonStep[];
  readonly state: ClassState;
  readonly turn: (change: Change) => void;
};

type ToolProps = {
  readonly letter: string;
  readonly text: string;
  readonly pressed?: boolean;
  readonly press: () => void;
};

function Tool({ letter, text, pressed, press }: ToolProps) {
  return (
    <button type="button" aria-pressed={pressed} aria-keyshortcuts={letter} onClick={press}>
      <span className="key" aria-hidden="true">
        {letter}
      </span>{" "}
      {text}
    </button>
  );
}

type HeadProps = Props & { readonly toNumber: () => void };

/** The work's name, the teacher's keys as buttons, and which step this is. No body is named. */
export function ClassHead({ steps, state, turn, toNumber }: HeadProps) {
  const say = useSay();
  const title = useStudio((s) => s.history.present.title);
  const name = say("class.title");
  return (
    <header className="classHead">
      <p>{title === "" ? name : title}</p>
      <fieldset aria-label={say("class.tools")}>
        <Tool
          letter="N"
          text={say("class.numbers")}
          pressed={state.numbers}
          press={() => turn(turnNumbers)}
        />
        <Tool
          letter="A"
          text={say("class.answers")}
          pressed={state.answers}
          press={() => turn(turnAnswers)}
        />
        <Tool letter="R" text={say("class.again")} press={() => turn(playAgain)} />
        <Tool
          letter="L"
          text={say("class.black")}
          pressed={state.black}
          press={() => turn(turnGround)}
        />
        <Tool letter="C" text={say("class.change")} press={toNumber} />
        {document.fullscreenEnabled ? (
          <Tool letter="F" text={say("class.full")} press={turnFullScreen} />
        ) : null}
        <Tool letter="Esc" text={say("class.leave")} press={leaveClass} />
      </fieldset>
      <p data-class-step>{say("class.of", { at: state.at + 1, all: steps.length })}</p>
    </header>
  );
}

const stitchOf = (i: number, at: number): string => (i < at ? "done" : i === at ? "now" : "toCome");

/** The steps as stitches (done, now, to come), Back and On. */
export function ClassFoot({ steps, state, turn }: Props) {
  const say = useSay();
  const voice = useClassVoice();
  const last = steps.length - 1;
  return (
    <footer className="classFoot">
      <nav aria-label={say("class.steps")}>
        <ol>
          {steps.map(({ id, title }, i) => (
            <li key={id}>
              <button
                type="button"
                className={stitchOf(i, state.at)}
                aria-current={i === state.at ? "step" : undefined}
                onClick={() => turn(goToStep(i))}
              >
                {tell(voice, title)}
              </button>
            </li>
          ))}
        </ol>
      </nav>
      <button
        type="button"
        className="go quiet"
        disabled={state.at === 0}
        onClick={() => turn(goBack)}
      >
        ← {say("class.back")}
      </button>
      <button type="button" className="go" disabled={state.at === last} onClick={() => turn(goOn)}>
        {say("class.on")} →
      </button>
    </footer>
  );
}
