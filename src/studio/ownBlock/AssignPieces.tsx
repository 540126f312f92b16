import { Fragment } from "react";
import { isClosedShape } from "../../trace/edges/sortDrawing.ts";
import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { ChoiceSlot } from "./ChoiceSlot.tsx";
import { assigned, choiceOf, pieceIn, shapeInHand, sortedOf } from "./drawing.ts";
import { changeDrawing } from "./drawingChanges.ts";
import { edgeWord } from "./edgeWord.ts";
import { edgesOf } from "./naming.ts";
import { type ByHand, type Drawing, OWN_PIECES, type OwnPiece } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { putOwn, useOwn } from "./state.ts";
import { ToldFault } from "./ToldFault.tsx";

const choiceFrom = (text: string): ByHand =>
  text === "edges" || text === "none" ? text : Number(text);

/** The drawing's lines as a list to choose from. */
const useLines = (drawing: Drawing): readonly (readonly [string, string])[] => {
  const say = useOwnSay();
  const p = usePrint();
  return sortedOf(drawing).shapes.map((shape, i) => [
    String(i),
    say(isClosedShape(shape) ? "own.line.closed" : "own.line.open", {
      line: i + 1,
      length: p.full(shape.length),
    }),
  ]);
};

const step = (drawing: Drawing, target: string, choice: ByHand, name: string): void => {
  changeDrawing(assigned(drawing, target, choice), name);
  if (typeof choice === "number") putOwn({ lit: `shape.${choice}` });
};

type PieceProps = { readonly drawing: Drawing; readonly piece: OwnPiece };

/** Each edge of a piece and the line that it is. */
function EdgeLines({ drawing, piece }: PieceProps) {
  const say = useOwnSay();
  const studioSay = useSay();
  const lines = useLines(drawing);
  const named = sortedOf(drawing).edges;
  return (
    <ul className="edgeLines">
      {edgesOf(piece, false).map((edge) => {
        const target = `${piece}.${edge}`;
        const chosen = drawing.byHand[target];
        const value =
          typeof chosen === "number" ? String(chosen) : named.has(target) ? "named" : "none";
        const byName = named.has(target) ? [["named", say("own.line.named")] as const] : [];
        return (
          <li key={edge}>
            {edgeWord(edge, studioSay, say)}:{" "}
            <ChoiceSlot
              label={`${say(`own.piece.${piece}`)}, ${edgeWord(edge, studioSay, say)}`}
              name={target}
              value={value}
              options={[...byName, ["none", say("own.line.none")], ...lines]}
              choose={(to) => {
                if (to !== "named") step(drawing, target, choiceFrom(to), say("own.step.line"));
              }}
            />
          </li>
        );
      })}
    </ul>
  );
}

function PieceClause({ drawing, piece }: PieceProps) {
  const say = useOwnSay();
  const lines = useLines(drawing);
  const choice = choiceOf(drawing, piece);
  const told = pieceIn(drawing, piece);
  const shape = typeof choice === "number" ? sortedOf(drawing).shapes[choice] : undefined;
  const isOpen = shape !== undefined && !isClosedShape(shape);
  const isTaken = told !== null && "found" in told;
  const elsewhere = useOwn((s) => s.history.present.pieces[piece]?.from);
  const join = () =>
    changeDrawing(
      {
        ...drawing,
        byHand: { ...drawing.byHand, [piece]: choice },
        joined: [...drawing.joined, piece],
      },
      say("own.step.join"),
    );
  return (
    <Clause
      text={say("own.piece.is", { piece: say(`own.piece.${piece}`) })}
      given={{
        line: (
          <ChoiceSlot
            label={say(`own.piece.${piece}`)}
            name={piece}
            value={String(choice)}
            options={[["none", say("own.line.none")], ["edges", say("own.line.edges")], ...lines]}
            choose={(to) => step(drawing, piece, choiceFrom(to), say("own.step.line"))}
          />
        ),
      }}
      note={
        isTaken && isOpen
          ? say("own.line.joined")
          : choice === "none" && elsewhere !== undefined
            ? say("own.piece.elsewhere", { file: elsewhere })
            : null
      }
    >
      {choice === "edges" ? <EdgeLines drawing={drawing} piece={piece} /> : null}
      {told && "fault" in told ? (
        <ToldFault fault={told.fault}>
          {isOpen ? (
            <div className="row">
              <button type="button" className="go quiet" onClick={join}>
                {say("own.line.join")}
              </button>
            </div>
          ) : null}
        </ToldFault>
      ) : null}
    </Clause>
  );
}

/** The line that was clicked: what it is. */
function LineInHand({ drawing }: { readonly drawing: Drawing }) {
  const say = useOwnSay();
  const studioSay = useSay();
  const p = usePrint();
  const lit = useOwn((s) => s.lit);
  const at = shapeInHand(lit);
  const shape = sortedOf(drawing).shapes[at];
  if (!shape) return null;
  const targets = OWN_PIECES.flatMap((piece) => [
    piece,
    ...edgesOf(piece, false).map((edge) => `${piece}.${edge}`),
  ]);
  const isIt = (target: string): boolean =>
    target.includes(".") ? drawing.byHand[target] === at : choiceOf(drawing, target) === at;
  const now = targets.find(isIt) ?? "none";
  const wordFor = (target: string): string => {
    const [piece = "", edge] = target.split(".");
    const word = say(`own.piece.${OWN_PIECES.find((name) => name === piece) ?? "front"}`);
    return edge === undefined ? word : `${word}, ${edgeWord(edge, studioSay, say)}`;
  };
  const choose = (target: string) => {
    if (target === "none") {
      if (now !== "none") step(drawing, now, "none", say("own.step.line"));
      return;
    }
    const [piece = "", edge] = target.split(".");
    const ready = edge === undefined ? drawing : assigned(drawing, piece, "edges");
    step(ready, target, at, say("own.step.line"));
  };
  return (
    <Clause
      text={say("own.inHand", { number: at + 1, length: p.full(shape.length) })}
      given={{
        is: (
          <ChoiceSlot
            label={say("own.inHand.label")}
            name="inHand"
            value={now}
            options={[
              ["none", say("own.line.nothing")],
              ...targets.map((target) => [target, wordFor(target)] as const),
            ]}
            choose={choose}
          />
        ),
      }}
    />
  );
}

/** Which line is which piece, or which edge: as named, as proposed, or by hand. */
export function AssignPieces({ drawing }: { readonly drawing: Drawing }) {
  return (
    <>
      <LineInHand drawing={drawing} />
      {OWN_PIECES.map((piece) => (
        <Fragment key={piece}>
          <PieceClause drawing={drawing} piece={piece} />
        </Fragment>
      ))}
    </>
  );
}
