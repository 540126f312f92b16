import { FIT_TOLERANCE } from "../../trace/follow/fitRun.ts";
import { canLosePoint } from "../../trace/pen/mendPen.ts";
import { OWN_PIECES } from "../ownBlock/ownBlock.ts";
import { putOwn, useOwn } from "../ownBlock/state.ts";
import { Choice } from "../page/Choice.tsx";
import { Sentence } from "../page/Sentence.tsx";
import { usePrint } from "../state/print.ts";
import { takeUp, useEye } from "./eye.ts";
import { turnToPiece } from "./PiecePick.tsx";
import { usePhotoSay } from "./photoSay.ts";
import { usePiece, usePieceName } from "./piece.ts";
import {
  addAfter,
  closeLine,
  dropPoint,
  findOutline,
  handOver,
  setFollowed,
  startAnew,
  turnBend,
  turnCorner,
} from "./traceActions.ts";

/** The line is looked for by itself, round a place inside the piece. */
function FindClause() {
  const say = usePhotoSay();
  const { followed, pen } = usePiece();
  const isBusy = useEye((s) => s.busy !== null);
  const choice = (
    <Choice
      id="followed"
      label={say("photo.followed.label")}
      value={followed}
      options={(["line", "edge"] as const).map((value) => ({
        value,
        text: say(`photo.followed.${value}`),
      }))}
      onChoose={setFollowed}
    />
  );
  return (
    <div className="clause plain">
      <p className="said">
        <Sentence text={say("photo.followed")} given={{ followed: choice }} />
      </p>
      <p className="note">{say("photo.inside")}</p>
      <div className="row">
        <button
          type="button"
          className={pen.isClosed ? "go quiet" : "go"}
          disabled={isBusy}
          onClick={() => findOutline()}
        >
          {say(pen.isClosed ? "photo.findAgain" : "photo.find")}
        </button>
      </div>
    </div>
  );
}

function ToolPick() {
  const say = usePhotoSay();
  const tool = useEye((s) => s.tool);
  const { isClosed, points } = usePiece().pen;
  const tools = isClosed
    ? (["mend", "inside"] as const)
    : (["inside", "follow", "draw", ...(points.length > 0 ? (["mend"] as const) : [])] as const);
  return (
    <fieldset className="tabs tools" aria-label={say("photo.tools")}>
      {tools.map((name) => (
        <button
          key={name}
          type="button"
          className="tab"
          aria-pressed={tool === name}
          data-tool={name}
          onClick={() => takeUp(name)}
        >
          {say(`photo.tool.${name}`)}
        </button>
      ))}
    </fieldset>
  );
}

/** How the line stands: points, corners, how well it fits what was seen. */
function LineNote() {
  const say = usePhotoSay();
  const p = usePrint();
  const { pen, fit } = usePiece();
  const n = pen.points.length;
  const corners = pen.points.filter(({ isCorner }) => isCorner).length;
  if (n === 0) return null;
  if (!pen.isClosed) return <p className="note">{say("photo.open", { n })}</p>;
  if (fit === null) return <p className="note">{say("photo.byHand", { n, corners })}</p>;
  return (
    <p className="note" data-fit={fit}>
      {say("photo.fit", { n, corners, fit: p.full(Math.max(0.1, fit)) })}{" "}
      {fit > FIT_TOLERANCE ? say("photo.fitLoose") : ""}
    </p>
  );
}

/** What can be done with the point in hand, without a key. */
function HeldPoint() {
  const say = usePhotoSay();
  const { pen } = usePiece();
  const held = useEye((s) => s.held);
  const i = Number(/^point\.(\d+)/u.exec(held ?? "")?.[1] ?? Number.NaN);
  const point = pen.points[i];
  if (!point) return null;
  return (
    <p className="note links" data-held-point>
      <span>{say("photo.point.held", { n: i + 1 })}</span>
      <button type="button" className="plainLink" onClick={() => turnCorner(i)}>
        {say(point.isCorner ? "photo.point.smooth" : "photo.point.corner")}
      </button>
      <button type="button" className="plainLink" onClick={() => turnBend(i)}>
        {say("photo.point.bend")}
      </button>
      <button type="button" className="plainLink" onClick={() => addAfter(i)}>
        {say("photo.point.add")}
      </button>
      {canLosePoint(pen) ? (
        <button type="button" className="plainLink" onClick={() => dropPoint(i)}>
          {say("photo.point.drop")}
        </button>
      ) : null}
    </p>
  );
}

function MendClause() {
  const say = usePhotoSay();
  const { pen } = usePiece();
  const count = pen.points.length;
  return (
    <div className="clause plain">
      <ToolPick />
      <LineNote />
      <HeldPoint />
      {count === 0 ? null : (
        <p className="note links">
          {!pen.isClosed && count >= 3 ? (
            <button type="button" className="plainLink" onClick={closeLine}>
              {say("photo.close")}
            </button>
          ) : null}
          <button type="button" className="plainLink" onClick={startAnew}>
            {say("photo.anew")}
          </button>
        </p>
      )}
    </div>
  );
}

/** The outline handed on, and what comes next. */
function TakeClause() {
  const say = usePhotoSay();
  const name = usePieceName();
  const { pen } = usePiece();
  const isBusy = useEye((s) => s.busy !== null);
  const pieces = useOwn((s) => s.history.present.pieces);
  const next = OWN_PIECES.find((piece) => piece !== name && pieces[piece] === null);
  const isTaken = pieces[name] !== null;
  return (
    <div className="clause plain">
      <div className="row first">
        <button
          type="button"
          className={isTaken ? "go quiet" : "go"}
          disabled={!pen.isClosed || isBusy}
          onClick={() => handOver()}
        >
          {say("photo.take")}
        </button>
      </div>
      {isTaken ? (
        <>
          <p className="note" role="status">
            {say("photo.taken", { piece: say(`photo.piece.${name}`) })}
          </p>
          <p className="note links">
            {next ? (
              <button type="button" className="plainLink" onClick={() => turnToPiece(next)}>
                {say("photo.next", { piece: say(`photo.piece.${next}`) })}
              </button>
            ) : null}
            <button
              type="button"
              className="plainLink"
              onClick={() => putOwn({ step: "edges", piece: name })}
            >
              {say("photo.names")}
            </button>
          </p>
        </>
      ) : null}
    </div>
  );
}

/** The line: found, followed or drawn, mended, handed on. */
export function TraceClauses() {
  return (
    <div className="clauses">
      <FindClause />
      <MendClause />
      <TakeClause />
    </div>
  );
}
