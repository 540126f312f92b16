import { useState } from "react";
import { lengthOf } from "../../geometry/length.ts";
import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { AssignPieces } from "./AssignPieces.tsx";
import { BlockTable } from "./BlockTable.tsx";
import { DrawingTable } from "./DrawingTable.tsx";
import { shapeInHand, sortedOf } from "./drawing.ts";
import { changeDrawing } from "./drawingChanges.ts";
import { edgeWord } from "./edgeWord.ts";
import { LengthSlot } from "./LengthSlot.tsx";
import { NextStep } from "./NextStep.tsx";
import { OpenDrawing } from "./OpenDrawing.tsx";
import { OwnPage } from "./OwnShell.tsx";
import { type Drawing, OWN_PIECES } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { PagesClause } from "./PagesClause.tsx";
import { PagesTable } from "./PagesTable.tsx";
import { useOwn } from "./state.ts";
import { ToldFault } from "./ToldFault.tsx";

/** A drawing is scaled to this much of its size at most and least: beyond it a slip was typed. */
const MOST_SCALED = 50;

type Known = { readonly length: number; readonly name: string };

/** The line by which the size is told: the one in hand, else the longest, else a named edge. */
const useKnownLine = (drawing: Drawing): Known | null => {
  const say = useOwnSay();
  const studioSay = useSay();
  const lit = useOwn((s) => s.lit);
  const { shapes, edges } = sortedOf(drawing);
  const at = shapeInHand(lit);
  const shape = shapes[at] ?? shapes[0];
  if (shape) {
    const line = shapes[at] ? at + 1 : 1;
    return { length: shape.length, name: say("own.size.line", { line }) };
  }
  const [first] = edges;
  if (!first) return null;
  const [piece = "", edge = ""] = first[0].split(".");
  const known = OWN_PIECES.find((name) => name === piece) ?? "front";
  const name = `${say(`own.piece.${known}`)}, ${edgeWord(edge, studioSay, say)},`;
  return { length: lengthOf(first[1]), name };
};

/** One known length tells whether the file's unit is what it says. */
function SizeClause({ drawing }: { readonly drawing: Drawing }) {
  const say = useOwnSay();
  const p = usePrint();
  const known = useKnownLine(drawing);
  if (!known) return null;
  const { length, name } = known;
  const resize = (to: number | null, gesture: string) => {
    if (to === null || Math.abs(to - length) < 1e-9) return;
    const scale = (drawing.scale * to) / length;
    changeDrawing({ ...drawing, scale, isSized: true }, say("own.step.size"), gesture);
  };
  return (
    <Clause
      text={say("own.size", { name })}
      given={{
        length: (
          <LengthSlot
            label={say("own.size.label", { name })}
            value={length}
            least={length / MOST_SCALED}
            most={length * MOST_SCALED}
            take={resize}
          />
        ),
      }}
      note={say(drawing.scale === 1 ? "own.size.note" : "own.size.changed", {
        scale: p.percent(drawing.scale),
      })}
    >
      {drawing.isSized ? (
        <p className="note">{say("own.size.right")}</p>
      ) : (
        <div className="row">
          <button
            type="button"
            className="go quiet"
            onClick={() => changeDrawing({ ...drawing, isSized: true }, say("own.step.sized"))}
          >
            {say("own.size.confirm")}
          </button>
        </div>
      )}
    </Clause>
  );
}

function Opened({ drawing }: { readonly drawing: Drawing }) {
  const say = useOwnSay();
  const [arranging, setArranging] = useState(false);
  const many = drawing.pages.length > 1;
  return (
    <>
      <OwnPage step="pieces">
        <Told />
        <div className="clauses">
          <Clause
            text={say("own.drawing.open", { file: drawing.name })}
            note={say(`own.drawing.${drawing.kind}`)}
          >
            <OpenDrawing className="plainLink" text={say("own.drawing.other")} />
          </Clause>
          {many ? (
            <PagesClause drawing={drawing} arranging={arranging} setArranging={setArranging} />
          ) : null}
          {arranging ? null : (
            <>
              <SizeClause drawing={drawing} />
              <AssignPieces drawing={drawing} />
            </>
          )}
        </div>
        {arranging ? null : <NextStep to="edges" why={drawing.isSized ? null : "own.next.size"} />}
      </OwnPage>
      {arranging ? <PagesTable drawing={drawing} /> : <DrawingTable drawing={drawing} />}
    </>
  );
}

/** What was refused last, and what is being read. */
function Told() {
  const say = useOwnSay();
  const told = useOwn((s) => s.told);
  const busy = useOwn((s) => s.busy);
  return (
    <>
      {busy === null ? null : (
        <p className="note" role="status">
          {say("own.busy", { file: busy })}
        </p>
      )}
      {told ? <ToldFault fault={told} /> : null}
    </>
  );
}

/** The way in by a drawing file: opened, its size confirmed, its lines said to be pieces. */
export function DrawingStep() {
  const say = useOwnSay();
  const drawing = useOwn((s) => s.history.present.drawing);
  if (drawing) return <Opened drawing={drawing} />;
  return (
    <>
      <OwnPage step="pieces">
        <Told />
        <p className="note">{say("own.drawing.note")}</p>
        <div className="row">
          <OpenDrawing className="go" text={say("own.drawing.go")} />
        </div>
      </OwnPage>
      <BlockTable />
    </>
  );
}
