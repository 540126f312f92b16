import { type OwnKey, useOwnSay } from "./ownSay.ts";
import { putOwn, type Step } from "./state.ts";
import { useOpenSteps } from "./useOpenSteps.ts";

type Props = {
  readonly to: Step;
  /** What is still wanted before it; said where the step is closed. */
  readonly why: OwnKey | null;
};

/** On to the next step, or what it waits for. */
export function NextStep({ to, why }: Props) {
  const say = useOwnSay();
  const open = useOpenSteps().includes(to) && why === null;
  return (
    <div className="row">
      <button
        type="button"
        className="go"
        disabled={!open}
        onClick={() => putOwn({ step: to, told: null })}
      >
        {say(`own.next.${to}`)}
      </button>
      {why ? <span className="note">{say(why)}</span> : null}
    </div>
  );
}
