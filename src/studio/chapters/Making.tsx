import { heldBody, type Work } from "../../project/work.ts";
import { ButtonArt } from "../page/ButtonArt.tsx";
import { change } from "../state/changes.ts";
import { printField, usePrint } from "../state/print.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { type StepId, stepsOf } from "./makingSteps.ts";

const NONE: readonly string[] = [];

const withSewn = (now: Work, step: StepId, on: boolean): Work => {
  const { id } = heldBody(now);
  const others = (now.sewn[id] ?? NONE).filter((done) => done !== step);
  return { ...now, sewn: { ...now.sewn, [id]: on ? [...others, step] : others } };
};

function Step({ step, place }: { readonly step: StepId; readonly place: number }) {
  const say = useSay();
  const p = usePrint();
  const { allowances, alterations } = useStudio((s) => s.history.present.choices);
  const done = useStudio((s) => {
    const now = s.history.present;
    return (now.sewn[heldBody(now).id] ?? NONE).includes(step);
  });
  const text = say(`making.${step}`, {
    v: printField("vInsert.allowance", alterations.vInsert.allowance, p),
    raglan: printField("allowances.raglan", allowances.raglan, p),
    underarm: printField("allowances.underarm", allowances.underarm, p),
    side: printField("allowances.side", allowances.side, p),
    bands: printField("allowances.bands", allowances.bands, p),
  });
  return (
    <div className={`clause${done ? "" : " off"}`}>
      <button
        type="button"
        className="btn"
        role="switch"
        aria-checked={done}
        aria-label={`${place}, ${say(`making.title.${step}`)}`}
        onClick={() => change(withSewn(work(), step, !done), () => say("step.sewn"))}
      >
        <ButtonArt on={done} />
      </button>
      <p className="said">
        <b className="sn">{place}</b>
        {text}
      </p>
    </div>
  );
}

export function Making() {
  const say = useSay();
  const now = useStudio((s) => s.history.present);
  const steps = stepsOf(now.choices.alterations.vInsert.on);
  const done = (now.sewn[heldBody(now).id] ?? NONE).filter((id) => steps.some((s) => s === id));
  return (
    <div className="tight">
      <div className="clauses">
        {steps.map((step, i) => (
          <Step key={step} step={step} place={i + 1} />
        ))}
      </div>
      <p className="note">
        {say("making.done", { done: done.length, all: steps.length })} {say("making.needle")}
      </p>
      <p className="caution">{say("making.caution")}</p>
    </div>
  );
}
