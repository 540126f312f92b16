import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { namedPiece } from "./blockNow.ts";
import { ChoiceSlot } from "./ChoiceSlot.tsx";
import { EdgesTable } from "./EdgesTable.tsx";
import { addCorner, beginEdgeAt, NO_NAMING, nameAs } from "./edgeChanges.ts";
import { edgeWord } from "./edgeWord.ts";
import { NextStep } from "./NextStep.tsx";
import { edgesOf } from "./naming.ts";
import { OwnPage } from "./OwnShell.tsx";
import { type Brought, OWN_PIECES, type OwnPiece } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { putOwn, useOwn } from "./state.ts";
import { ToldFault } from "./ToldFault.tsx";

/** Named so, a shape is hardly this piece: it is said, never refused. */
const HARDLY_LIKE = 0.05;

type Props = { readonly piece: OwnPiece; readonly brought: Brought };

/** Half or whole, this side up or the other. */
function Lies({ piece, brought }: Props) {
  const say = useOwnSay();
  const naming = brought.naming ?? NO_NAMING;
  const { isWhole, isTurnedOver } = naming;
  const half = (
    <ChoiceSlot
      name="half"
      label={say("own.half.label")}
      value={isWhole ? "whole" : "half"}
      options={[
        ["half", say("own.half")],
        ["whole", say("own.whole")],
      ]}
      choose={(to) =>
        nameAs(piece, brought, { isTurnedOver, isWhole: to === "whole" }, say("own.step.half"))
      }
    />
  );
  const side = (
    <ChoiceSlot
      name="side"
      label={say("own.side.label")}
      value={isTurnedOver ? "over" : "up"}
      options={[
        ["up", say("own.side.up")],
        ["over", say("own.side.over")],
      ]}
      choose={(to) =>
        nameAs(piece, brought, { isWhole, isTurnedOver: to === "over" }, say("own.step.side"))
      }
    />
  );
  return (
    <Clause
      text={say(piece === "sleeve" ? "own.lies.sleeve" : "own.lies")}
      given={{ half, side }}
    />
  );
}

/** Each edge and the corner at which it begins. */
function EdgeCorners({ piece, brought }: Props) {
  const say = useOwnSay();
  const studioSay = useSay();
  const lit = useOwn((s) => s.lit);
  const naming = brought.naming ?? NO_NAMING;
  const corners = brought.runs.map(
    (_, i) => [String(i), say("own.corner", { corner: i + 1 })] as const,
  );
  return (
    <ul className="edgeLines">
      {edgesOf(piece, naming.isWhole).map((edge, i) => (
        <li
          key={edge}
          className={lit === edge ? "isLit" : ""}
          onFocus={() => putOwn({ lit: edge })}
          onPointerEnter={() => putOwn({ lit: edge })}
        >
          {say("own.edge.begins", { edge: edgeWord(edge, studioSay, say) })}{" "}
          <ChoiceSlot
            label={say("own.edge.begins", { edge: edgeWord(edge, studioSay, say) })}
            name={`corner.${edge}`}
            value={String(naming.corners[i] ?? "")}
            options={
              naming.corners[i] === undefined ? [["", say("own.corner.none")], ...corners] : corners
            }
            choose={(to) => {
              if (to !== "") beginEdgeAt(piece, brought, i, Number(to), say("own.step.corner"));
            }}
          />
        </li>
      ))}
    </ul>
  );
}

function PieceEdges({ piece, brought }: Props) {
  const say = useOwnSay();
  const studioSay = useSay();
  const lit = useOwn((s) => s.lit);
  const naming = brought.naming ?? NO_NAMING;
  const named = namedPiece(piece, brought);
  const edge = edgesOf(piece, naming.isWhole).indexOf(lit ?? "");
  const run = naming.corners[edge];
  const part = edge < 0 || run === undefined ? null : run;
  return (
    <>
      <Lies piece={piece} brought={brought} />
      <Clause text={say("own.edges")} note={say("own.edges.how")}>
        <EdgeCorners piece={piece} brought={brought} />
        <div className="row">
          <button
            type="button"
            className="plainLink"
            onClick={() => nameAs(piece, brought, naming, say("own.step.proposed"))}
          >
            {say("own.edges.propose")}
          </button>
          <button
            type="button"
            className="plainLink"
            disabled={part === null}
            onClick={() => {
              if (part !== null) addCorner(piece, brought, part, null, say("own.step.addCorner"));
            }}
          >
            {say("own.edges.part", {
              edge: edge < 0 || lit === null ? "…" : edgeWord(lit, studioSay, say),
            })}
          </button>
        </div>
        {"fault" in named ? <ToldFault fault={named.fault} /> : null}
        {"found" in named && named.found.score < HARDLY_LIKE ? (
          <p className="doubt">{say("own.edges.hardly", { piece: say(`own.piece.${piece}`) })}</p>
        ) : null}
      </Clause>
    </>
  );
}

/** Which corner begins which edge: proposed by the shape, changed by the maker. */
export function EdgesStep() {
  const say = useOwnSay();
  const p = usePrint();
  const pieces = useOwn((s) => s.history.present.pieces);
  const wanted = useOwn((s) => s.piece);
  const there = OWN_PIECES.filter((name) => pieces[name]);
  const piece = there.find((name) => name === wanted) ?? there[0] ?? "front";
  const brought = pieces[piece];
  const missing = OWN_PIECES.filter((name) => !pieces[name]);
  return (
    <>
      <OwnPage step="edges">
        <div className="clauses">
          <Clause
            text={say("own.hold")}
            given={{
              piece: (
                <ChoiceSlot
                  label={say("own.hold.label")}
                  name="piece"
                  value={piece}
                  options={there.map((name) => [name, say(`own.piece.${name}`)] as const)}
                  choose={(to) => putOwn({ piece: to, lit: null })}
                />
              ),
            }}
            note={
              brought && brought.foretold !== null
                ? say("own.foretold", { file: brought.from, error: p.full(brought.foretold) })
                : brought && say("own.from", { file: brought.from })
            }
          />
          {brought ? <PieceEdges piece={piece} brought={brought} /> : null}
        </div>
        <NextStep to="turnings" why={missing.length > 0 ? "own.next.missing" : null} />
      </OwnPage>
      {brought ? <EdgesTable piece={piece} brought={brought} /> : null}
    </>
  );
}
