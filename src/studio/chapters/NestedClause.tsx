import { useState } from "react";
import { MOST_NESTED } from "../../export/data/layerStyles.ts";
import { makeNested, useRun } from "../files/exporting.ts";
import { NESTED, type NestedOf, nestedBodies, nestedFault } from "../files/nested.ts";
import { Clause } from "../page/Clause.tsx";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";

type SlotProps = { readonly of: NestedOf; readonly choose: (of: NestedOf) => void };

function NestedSlot({ of, choose }: SlotProps) {
  const say = useSay();
  const work = useStudio((s) => s.history.present);
  return (
    <span className="w">
      <select
        aria-label={say("nested.what")}
        data-nested
        value={of}
        onChange={(event) => choose(NESTED.find((one) => one === event.target.value) ?? "work")}
      >
        {NESTED.map((one) => (
          <option key={one} value={one}>
            {say(`nested.of.${one}`, { count: nestedBodies(one, work).length })}
          </option>
        ))}
      </select>
    </span>
  );
}

/** Several bodies or sizes in one file: each a layer, each with its own kind of line. */
export function NestedClause() {
  const say = useSay();
  const work = useStudio((s) => s.history.present);
  const working = useRun((run) => run.state === "working");
  const [of, setOf] = useState<NestedOf>(work.bodies.length > 1 ? "work" : "women");
  const count = nestedBodies(of, work).length;
  const fault = nestedFault(count);
  return (
    <Clause
      text={say("nested.say")}
      given={{ nested: <NestedSlot of={of} choose={setOf} /> }}
      note={say("nested.note")}
    >
      {fault ? (
        <p className="refuse" role="alert">
          {say(`nested.${fault}`, { count, most: MOST_NESTED })}
        </p>
      ) : (
        <div className="row">
          <button
            type="button"
            className="go quiet"
            disabled={working}
            onClick={() => makeNested(of)}
          >
            {say("nested.make", { count })}
          </button>
        </div>
      )}
    </Clause>
  );
}
