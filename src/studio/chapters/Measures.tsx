import { KEPT_IDS, type KeptId, MEASURE_IDS, type MeasureId } from "../../drafting/measures.ts";
import { heldBody, newBody, type Work } from "../../project/work.ts";
import { measureField } from "../fields/measureFields.ts";
import { Clause } from "../page/Clause.tsx";
import { change } from "../state/changes.ts";
import { useMade } from "../state/made.ts";
import { printField, usePrint } from "../state/print.ts";
import { put, useStudio, work } from "../state/store.ts";
import { useSentence } from "../tape/sentences.ts";
import { useSay } from "../words/say.ts";

const addBody = (now: Work): Work => {
  const taken = now.bodies.map(({ id }) => id);
  let place = now.bodies.length + 1;
  while (taken.includes(`body-${place}`)) place++;
  const [first, ...rest] = now.bodies;
  return {
    ...now,
    bodies: [first, ...rest, newBody(`body-${place}`)],
    held: now.bodies.length,
  };
};

/** What stands under a measure: how it is taken while it is in hand, else its estimate. */
function MeasureNote({ id }: { readonly id: MeasureId | KeptId }) {
  const say = useSay();
  const p = usePrint();
  const made = useMade();
  const lit = useStudio((s) => s.lit === `measures.${id}`);
  const given = useStudio((s) => heldBody(s.history.present).measures[id] !== undefined);
  const estimate = made?.body.estimated.find((found) => found.id === id);
  const { least, most } = measureField(`measures.${id}`).range;
  const field = `measures.${id}` as const;
  const takes = say("measures.takes", {
    least: printField(field, least, p),
    most: printField(field, most, p),
  });
  const said = [
    lit ? `${say(`how.${id}`)} ${takes}` : "",
    !given && (id === "chest" || id === "height") ? say("measures.needed") : "",
    estimate && !given && (lit || estimate.beyondSurvey)
      ? say(estimate.beyondSurvey ? "measures.estimateWide" : "measures.estimate", {
          value: p.full(Math.round(estimate.value)),
          plus: p.full(Math.round(estimate.plusMinus)),
        })
      : "",
  ].filter((text) => text !== "");
  return said.join(" ");
}

function Measure({ id }: { readonly id: MeasureId | KeptId }) {
  const say = useSay();
  const p = usePrint();
  const made = useMade();
  const sentence = useSentence();
  const estimate = made?.body.estimated.find((found) => found.id === id);
  const doubt = made?.checks.find((check) => check.id === `measure-${id}`);
  const placeholder = estimate
    ? say("measures.estimateShort", {
        value: p.length(Math.round(estimate.value)).replace(/^≈\s?/u, ""),
        plus: p.length(Math.round(estimate.plusMinus)).replace(/^≈\s?/u, ""),
      })
    : "…";
  return (
    <Clause text={say(`measure.${id}`)} placeholder={placeholder} note={<MeasureNote id={id} />}>
      {doubt ? <p className="doubt">{sentence(doubt)}</p> : null}
    </Clause>
  );
}

export function Measures() {
  const say = useSay();
  const figure = useStudio((s) => s.figureShown);
  return (
    <div className="tight">
      <div className="clauses">
        <Clause text={say("measures.who")} />
        <Clause text={say("measures.size")}>
          <button
            type="button"
            className="plainLink"
            aria-pressed={figure}
            onClick={() => put({ figureShown: !figure })}
          >
            {say(figure ? "measures.toTapes" : "measures.toFigure")}
          </button>
        </Clause>
        {MEASURE_IDS.map((id) => (
          <Measure key={id} id={id} />
        ))}
      </div>
      <details className="fold">
        <summary>{say("measures.more")}</summary>
        {KEPT_IDS.map((id) => (
          <Measure key={id} id={id} />
        ))}
      </details>
      <p className="note">{`${say("measures.source")} ${say("measures.adults")}`}</p>
      <div className="row">
        <button
          type="button"
          className="plainLink"
          onClick={() => change(addBody(work()), () => say("step.body"))}
        >
          {say("measures.add")}
        </button>
      </div>
    </div>
  );
}
