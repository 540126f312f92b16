import { useMemo } from "react";
import type { Garment } from "../../bands/garment.ts";
import { makingUp } from "../../guide/makingUp.ts";
import type { GuideStep } from "../../guide/step.ts";
import { tell } from "../../guide/words/tell.ts";
import { ButtonArt } from "../page/ButtonArt.tsx";
import { change } from "../state/changes.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { MarksTable } from "./MarksTable.tsx";
import { PictureView } from "./PictureView.tsx";
import { isForChild, isSewn, withSewn } from "./sewn.ts";
import { useVoice } from "./voice.ts";

/** On one leaf the pictures stand in the page, as wide as it or less. */
const NARROW = { width: 350, height: 270 } as const;

function Pictures({ step }: { readonly step: GuideStep }) {
  return (
    <div className="onlyNarrow stepPictures">
      {step.pictures.map((picture) => (
        <PictureView key={`${step.id} ${picture.title.key}`} picture={picture} {...NARROW} />
      ))}
    </div>
  );
}

function Care({ step }: { readonly step: GuideStep }) {
  const say = useSay();
  const voice = useVoice();
  return (
    <>
      {step.stitches.map(({ told }) => (
        <p key={told.key} className="note">
          {tell(voice, told)}
        </p>
      ))}
      {step.cautions.length === 0 ? null : (
        <div className="caution">
          <b>{say("making.take")}</b>
          <ul>
            {step.cautions.map((caution) => (
              <li key={caution.key}>{tell(voice, caution)}</li>
            ))}
          </ul>
        </div>
      )}
    </>
  );
}

function Step({ step, place }: { readonly step: GuideStep; readonly place: number }) {
  const say = useSay();
  const voice = useVoice();
  const done = useStudio((s) => isSewn(s.history.present, step.id));
  const title = tell(voice, step.title);
  return (
    <li className={`clause${done ? " sewn" : ""}`} data-step={step.id}>
      <button
        type="button"
        className="btn"
        role="switch"
        aria-checked={done}
        aria-label={`${place}, ${title}`}
        onClick={() => change(withSewn(work(), step.id, !done), () => say("step.sewn"))}
      >
        <ButtonArt on={done} />
      </button>
      <div>
        <h2>
          <b className="sn">{place}</b>
          {title}
        </h2>
        {step.sentences.map((sentence) => (
          <p key={sentence.key} className="said">
            {tell(voice, sentence)}
          </p>
        ))}
        <Pictures step={step} />
        {step.marks ? <MarksTable marks={step.marks} /> : null}
        <Care step={step} />
      </div>
    </li>
  );
}

/** The guide's steps, each to be buttoned when it is sewn. */
export function MakingSteps({ garment }: { readonly garment: Garment }) {
  const say = useSay();
  const now = useStudio((s) => s.history.present);
  const isChild = isForChild(now);
  const steps = useMemo(() => makingUp(garment, { isChild }), [garment, isChild]);
  const done = steps.filter(({ id }) => isSewn(now, id)).length;
  return (
    <>
      <p className="note" role="status">
        {say("making.done", { done, all: steps.length })}
      </p>
      <ol className="clauses guideSteps">
        {steps.map((step, i) => (
          <Step key={step.id} step={step} place={i + 1} />
        ))}
      </ol>
    </>
  );
}
