import { makeFile, useRun } from "../files/exporting.ts";
import { homePaper } from "../files/exportJob.ts";
import { Late, late } from "../guide/Late.tsx";
import { isForChild, withForChild } from "../guide/sewn.ts";
import { useWakeLock } from "../guide/useWakeLock.ts";
import { Clause } from "../page/Clause.tsx";
import { change } from "../state/changes.ts";
import { useMade } from "../state/made.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { RunNote } from "./RunNote.tsx";

const MakingSteps = late(() =>
  import("../guide/MakingSteps.tsx").then(({ MakingSteps: steps }) => ({ default: steps })),
);

const FILES = ["guide", "handout", "answers"] as const;

/** The guide and the class's handout as files, to be taken to the machine. */
function Files() {
  const say = useSay();
  const paper = useStudio((s) => s.history.present.paper);
  const working = useRun((run) => run.state === "working");
  const name = { a4: "A4", letter: "Letter" }[homePaper(paper)];
  return (
    <>
      <p className="note filesNote">{say("making.files", { paper: name })}</p>
      <div className="row">
        {FILES.map((kind) => (
          <button
            key={kind}
            type="button"
            className={kind === "guide" ? "go" : "go quiet"}
            disabled={working}
            onClick={() => makeFile(kind)}
          >
            {say(`making.${kind}`)}
          </button>
        ))}
      </div>
      <RunNote />
    </>
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
      <Files />
    </div>
  );
}
