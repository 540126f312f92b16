import { memo } from "react";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { Mark, type State } from "./Mark.tsx";

type CellProps = {
  readonly id: string;
  readonly state: State;
  readonly name: string;
  readonly figure: string;
  readonly press: ((at: HTMLElement) => void) | null;
};

/** One check on the tape: its state by shape and word, its name, its figure. */
export const Cell = memo(function Cell({ id, state, name, figure, press }: CellProps) {
  const say = useSay();
  const open = useStudio((s) => s.openCheck === id);
  return (
    <li className={`${state}${open ? " open" : ""}`}>
      <button
        type="button"
        aria-expanded={press ? open : undefined}
        disabled={!press}
        data-check={id}
        onClick={(event) => press?.(event.currentTarget)}
      >
        <span className="v1">
          <Mark state={state} />
          {say(`verdict.${state}`)}
        </span>
        <span className="nm">{name}</span>
        <span className="v">{figure}</span>
      </button>
    </li>
  );
});
