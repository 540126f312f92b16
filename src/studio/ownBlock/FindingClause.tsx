import type { Block } from "../../drafting/piece.ts";
import { preview } from "../../trace/doctor/examine.ts";
import type { Finding, Remedy } from "../../trace/doctor/remedy.ts";
import { type Print, usePrint } from "../state/print.ts";
import { Mark } from "../tape/Mark.tsx";
import { isFindingId } from "./findingEdges.ts";
import { inWords } from "./inWords.ts";
import { OWN_PIECES, type OwnBlock } from "./ownBlock.ts";
import { type OwnSay, useOwnSay } from "./ownSay.ts";
import { changeOwn, putOwn, useOwn } from "./state.ts";

/** What a finding is called. */
export const findingName = (id: string, say: OwnSay): string =>
  isFindingId(id) ? say(`own.finding.${id}`) : id;

/** What a remedy would move, and what it would spoil. */
const outcome = (block: Block, remedy: Remedy, say: OwnSay, p: Print): string => {
  const { moves, worse } = preview(block, remedy);
  const moved = OWN_PIECES.filter((piece) => moves[piece] > 0.05).map((piece) =>
    say("own.trial.moves", { piece: say(`own.piece.${piece}`), by: p.full(moves[piece]) }),
  );
  const spoilt =
    worse.length > 0
      ? [say("own.trial.worse", { names: worse.map((id) => findingName(id, say)).join(", ") })]
      : [];
  const all = [...moved, ...spoilt];
  return all.length > 0 ? all.join(" ") : say("own.trial.nothing");
};

type Props = { readonly finding: Finding; readonly block: Block; readonly now: OwnBlock };

/** A remedy is tried before it is done: the drawing shows the old line under the new. */
export function FindingClause({ finding, block, now }: Props) {
  const say = useOwnSay();
  const p = usePrint();
  const trial = useOwn((s) => s.trial);
  const { id, verdict, message, remedies } = finding;
  const isLeft = now.remedies.some((chosen) => chosen.finding === id && chosen.remedy === "leave");
  const tried = trial?.finding === id ? remedies.find((r) => r.id === trial.remedy) : undefined;
  const chosen = tried?.id ?? (isLeft ? "leave" : null);
  const apply = (remedy: Remedy) => {
    const others = now.remedies.filter(
      (other) => !(other.finding === id && other.remedy === "leave"),
    );
    changeOwn(
      { ...now, remedies: [...others, { finding: id, remedy: remedy.id }] },
      say("own.step.remedy", { name: findingName(id, say) }),
    );
    putOwn({ trial: null });
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: pointer and focus only light its lines
    <div
      className={`clause plain finding${tried ? " here" : ""}`}
      data-finding={id}
      onPointerEnter={() => putOwn({ lit: id })}
      onPointerLeave={() => putOwn({ lit: null })}
      onFocus={() => putOwn({ lit: id })}
    >
      <div>
        <p className={`findingHead state ${verdict}`}>
          <Mark state={verdict} /> {findingName(id, say)}
          <span className="verdictWord">{say(isLeft ? "own.left" : `own.verdict.${verdict}`)}</span>
        </p>
        <p className="note">{inWords(message, p)}</p>
        {remedies.length > 0 ? (
          <fieldset className="remedies">
            <legend className="vh">{say("own.remedies", { name: findingName(id, say) })}</legend>
            {remedies.map((remedy) => (
              <label key={remedy.id}>
                <input
                  type="radio"
                  name={`remedy-${id}`}
                  data-remedy={remedy.id}
                  checked={chosen === remedy.id}
                  onChange={() => putOwn({ trial: { finding: id, remedy: remedy.id } })}
                />{" "}
                {inWords(remedy.words, p)}
              </label>
            ))}
          </fieldset>
        ) : null}
        {tried ? (
          <>
            <p className="note" role="status">
              {outcome(block, tried, say, p)}
            </p>
            <div className="row">
              <button type="button" className="go quiet" onClick={() => apply(tried)}>
                {say(tried.id === "leave" ? "own.trial.leave" : "own.trial.do")}
              </button>
              <button type="button" className="plainLink" onClick={() => putOwn({ trial: null })}>
                {say("own.trial.not")}
              </button>
            </div>
          </>
        ) : null}
      </div>
    </div>
  );
}
