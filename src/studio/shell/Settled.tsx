import { useEffect, useState } from "react";
import { drawnOf } from "../state/made.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";

/** Said this long after the last change: dragging is silent until it rests. In ms. */
const REST = 400;

/** The settled result of a change, for a screen reader: what was done and how the checks stand. */
export function Settled() {
  const say = useSay();
  const history = useStudio((s) => (s.dragging ? null : s.history));
  const [said, setSaid] = useState("");
  useEffect(() => {
    const step = history?.past.at(-1)?.name;
    if (!history || step === undefined) return;
    const timer = setTimeout(() => {
      const checks = drawnOf(history.present).made?.checks ?? [];
      const count = (state: string) => checks.filter(({ verdict }) => verdict === state).length;
      const stand = say("said.checks", {
        sound: count("sound"),
        attend: count("attend"),
        stop: count("stop"),
      });
      setSaid(say("say.settled", { what: step, checks: checks.length > 0 ? stand : "" }));
    }, REST);
    return () => clearTimeout(timer);
  }, [history, say]);
  return (
    <div className="vh" aria-live="polite" data-settled>
      {said}
    </div>
  );
}
