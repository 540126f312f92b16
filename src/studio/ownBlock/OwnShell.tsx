import { type ReactNode, useEffect, useRef } from "react";
import { BackAndOn } from "../shell/UndoRedo.tsx";
import { LooksSentence, ViewWords } from "../shell/ViewWords.tsx";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { leaveBringing } from "./bringing.ts";
import { useOwnSay } from "./ownSay.ts";
import { putOwn, redoOwn, STEPS, type Step, undoOwn, useOwn } from "./state.ts";
import { useOpenSteps, useStepInHand } from "./useOpenSteps.ts";

function UndoRedoOwn() {
  const back = useOwn((s) => s.history.past.at(-1)?.name);
  const on = useOwn((s) => s.history.future.at(-1)?.name);
  return <BackAndOn back={back} on={on} undo={undoOwn} redo={redoOwn} />;
}

function Leave() {
  const say = useOwnSay();
  return (
    <button type="button" onClick={leaveBringing}>
      {say("own.leave")}
    </button>
  );
}

/** Book cloth with a thumb-cut for each step; a step is closed until what it needs is there. */
function StepSpine() {
  const say = useOwnSay();
  const step = useStepInHand();
  const open = useOpenSteps();
  return (
    <nav className="spine cloth" aria-label={say("own.steps")} data-region>
      <div className="brand">Ribwright</div>
      <p className="brandSub">{say("own.name")}</p>
      <div className="bands" />
      <ol>
        {STEPS.map((name, i) => (
          <li key={name}>
            <button
              type="button"
              className="chapter"
              aria-current={name === step ? "page" : undefined}
              aria-label={say(`own.short.${name}`)}
              disabled={!open.includes(name)}
              onClick={() => putOwn({ step: name, told: null })}
            >
              <span>{say(`own.short.${name}`)}</span>
              <i data-numeral={i + 1} />
            </button>
          </li>
        ))}
      </ol>
      <div className="foot">
        <Leave />
        <LooksSentence />
      </div>
    </nav>
  );
}

function StepHeads() {
  const say = useOwnSay();
  const step = useStepInHand();
  return (
    <>
      <section className="headL" aria-label={say("own.undoRegion")} data-region>
        <em>{say(`own.title.${step}`)}</em>
        <UndoRedoOwn />
      </section>
      <section className="headR" aria-label={say("own.name")} data-region>
        <span className="who">{say("own.name")}</span>
        <span className="viewSaid">
          <ViewWords sentence={say("own.view")} />
        </span>
      </section>
    </>
  );
}

/** The step's page of sentences: its heading, what it asks, and the foot that stands under it. */
export function OwnPage({ step, children }: { readonly step: Step; readonly children: ReactNode }) {
  const say = useOwnSay();
  const head = useRef<HTMLHeadingElement>(null);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another step is the reason to scroll
  useEffect(() => {
    head.current?.closest(".page")?.scrollTo(0, 0);
  }, [step]);
  return (
    <main className="page" id="page" aria-label={say(`own.title.${step}`)} data-region>
      <div key={step} className="turned">
        <h1 ref={head}>{say(`own.title.${step}`)}</h1>
        <p className="lead">{say(`own.lead.${step}`)}</p>
        {children}
        <div className="pageFoot onlyLeaves">
          <p className="onlyNarrow">
            <UndoRedoOwn />
          </p>
          <p className="viewLine">
            <ViewWords sentence={say("own.view")} />
          </p>
          <div className="foot">
            <Leave />
            <LooksSentence />
          </div>
        </div>
      </div>
    </main>
  );
}

/** Spine and heads of the door; the step brings its page and its table. */
export function OwnShell({ children }: { readonly children: ReactNode }) {
  const say = useSay();
  // Only pictures are looked at with the page folded away: other tables have no button to bring it back.
  const isPhoto = useOwn((s) => s.step === "pieces" && s.history.present.way === "photo");
  const folded = useStudio((s) => s.pageFolded) && isPhoto;
  return (
    <div className={`studio bringing${folded ? " folded" : ""}`}>
      <a className="skip" href="#page">
        {say("skip.page")}
      </a>
      <StepSpine />
      <StepHeads />
      {children}
    </div>
  );
}
