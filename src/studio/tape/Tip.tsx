import type { Check } from "../../checks/check.ts";
import { useSay } from "../words/say.ts";
import type { State } from "./Mark.tsx";
import { WAITING } from "./waiting.ts";

type TipProps = {
  readonly checks: readonly Check[] | null;
  readonly spread: () => void;
  readonly openWorst: () => void;
};

/** The tape's end: how many checks, and how they stand. */
export function Tip({ checks, spread, openWorst }: TipProps) {
  const say = useSay();
  if (!checks) {
    return (
      <div className="tip">
        <b>{say("tape.count", { all: WAITING.length })}</b>
        {say("tape.wait")}
        <br />
        {say("tape.waitFor")}
      </div>
    );
  }
  const count = (state: State) => checks.filter(({ verdict }) => verdict === state).length;
  const rest = say("tape.rest", { attend: count("attend"), stop: count("stop") });
  return (
    <div className="tip">
      <b>{say("tape.count", { all: checks.length })}</b>
      {say("tape.sound", { n: count("sound") })}
      <br />
      <span className="rest">
        {count("attend") + count("stop") === 0 ? (
          rest
        ) : (
          <button type="button" className="plainLink" onClick={openWorst}>
            {rest}
          </button>
        )}
        <br />
      </span>
      <button type="button" className="plainLink onlyNarrow" onClick={spread}>
        {say("tape.all")}
      </button>
    </div>
  );
}
