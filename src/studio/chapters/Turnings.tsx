import { CUT_HEIGHT_ALLOWANCES } from "../../drafting/data/ranges.ts";
import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";

export function Turnings() {
  const say = useSay();
  const p = usePrint();
  const bands = useStudio((s) => s.history.present.choices.allowances.bands);
  return (
    <>
      <div className="clauses">
        <Clause text={say("turn.seams")} note={say("turn.seamsNote")} />
        <Clause
          text={say("turn.bands")}
          note={say("turn.bandsNote", {
            least: p.full(Math.max(30, CUT_HEIGHT_ALLOWANCES * bands)),
          })}
        />
        <Clause text={say("turn.v")} note={say("turn.vNote")} />
      </div>
      <p className="note">{say("turn.notches")}</p>
    </>
  );
}
