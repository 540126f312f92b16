import { makeFile, useRun } from "../files/exporting.ts";
import { chooseHome, useHome } from "../files/homePaper.ts";
import { Late, late } from "../guide/Late.tsx";
import { isForChild, withForChild } from "../guide/sewn.ts";
import { useWakeLock } from "../guide/useWakeLock.ts";
import { Clause } from "../page/Clause.tsx";
import { change } from "../state/changes.ts";
import { useMade } from "../state/made.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { ForClass } from "./ForClass.tsx";
import { RunNote } from "./RunNote.tsx";

const MakingSteps = late(() =>
  import("../guide/MakingSteps.tsx").then(({ MakingSteps: steps }) => ({ default: steps })),
);

const HOME_PAPERS = { a4: "A4", letter: "Letter" } as const;

/** What guide and handouts are printed on: a home or school printer's sheets. */
function HomePaperSlot() {
  const say = useSay();
  const paper = useHome();
  return (
    <span className="w">
      <select
        aria-label={say("making.paper")}
        data-home-paper
        value={paper}
        onChange={(event) => chooseHome(event.target.value === "letter" ? "letter" : "a4")}
      >
        {Object.entries(HOME_PAPERS).map(([value, title]) => (
          <option key={value} value={value}>
            {title}
          </option>
        ))}
      </select>
    </span>
  );
}

/** The guide to be taken to the machine. */
function GuideFile() {
  const say = useSay();
  const working = useRun((run) => run.state === "working");
  return (
    <Clause text={say("making.files")} given={{ paper: <HomePaperSlot /> }}>
      <div className="row">
        <button type="button" className="go" disabled={working} onClick={() => makeFile("guide")}>
          {say("making.guide")}
        </button>
      </div>
    </Clause>
  );
}

/** Whether the garment is for a child: then the first step warns of cords and small parts. */
function ForChild() {
  const say = useSay();
  const on = useStudio((s) => isForChild(s.history.present));
  const name = say("making.child");
  const press = (to: boolean) =>
    change(withForChild(work(), to), () => say(to ? "step.on" : "step.off", { what: name }));
  return (
    <Clause
      text={say("making.childText")}
      note={say(on ? "making.childOn" : "making.childOff")}
      button={{ on, name, press }}
    />
  );
}

/** The order of sewing for this body, step by step. */
export function Making() {
  const say = useSay();
  const made = useMade();
  const awake = useWakeLock();
  if (!made) return <p className="refuse">{say("block.none")}</p>;
  return (
    <div className="making">
      {awake ? <p className="note">{say("making.awake")}</p> : null}
      <div className="clauses">
        <ForChild />
      </div>
      <Late>
        <MakingSteps garment={made.garment} />
      </Late>
      <div className="clauses">
        <GuideFile />
      </div>
      <ForClass />
      <RunNote />
    </div>
  );
}
