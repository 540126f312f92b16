import type { Check } from "../../checks/check.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { checkFigure, checkName } from "./checkWords.ts";
import { Mark } from "./Mark.tsx";

/** Where the tape has no room for more: the worst check. */
export function Worst({ check }: { readonly check: Check }) {
  const say = useSay();
  const p = usePrint();
  const words = useStudio((s) => s.words);
  return (
    <div className={`narrowTape ${check.verdict}`}>
      <span className="v1">
        <Mark state={check.verdict} />
        {say(`verdict.${check.verdict}`)}
      </span>
      <span>{`${checkName(check.id, words, say)}, ${checkFigure(check, p, say)}`}</span>
    </div>
  );
}
