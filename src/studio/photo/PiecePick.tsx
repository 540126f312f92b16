import { OWN_PIECES, type OwnPiece } from "../ownBlock/ownBlock.ts";
import { putOwn, useOwn } from "../ownBlock/state.ts";
import { look, useEye } from "./eye.ts";
import { usePhotoSay } from "./photoSay.ts";
import { usePiece, usePieceName } from "./piece.ts";
import { toPicture, toTable } from "./traceActions.ts";

export const turnToPiece = (piece: OwnPiece): void => {
  putOwn({ piece });
  look({ photo: null, fault: null });
  toPicture();
};

function OnePiece({ name }: { readonly name: OwnPiece }) {
  const say = usePhotoSay();
  const isHeld = useOwn((s) => s.piece === name);
  const isTaken = useOwn((s) => s.history.present.pieces[name] !== null);
  const isBegun = useOwn((s) => s.history.present.photo[name].photos.length > 0);
  const state = isTaken ? say("photo.done") : isBegun ? say("photo.begun") : "";
  return (
    <button
      type="button"
      className="tab"
      aria-pressed={isHeld}
      data-piece-tab={name}
      onClick={() => turnToPiece(name)}
    >
      {say(`photo.which.${name}`)}
      {state === "" ? null : <small>{state}</small>}
    </button>
  );
}

/** Which piece is on the table, and how far each has come. */
export function PiecePick() {
  const say = usePhotoSay();
  return (
    <fieldset className="tabs" aria-label={say("photo.pieces")}>
      {OWN_PIECES.map((name) => (
        <OnePiece key={name} name={name} />
      ))}
    </fieldset>
  );
}

/** The two halves of the work on a piece. */
export function StagePick({ canTrace }: { readonly canTrace: boolean }) {
  const say = usePhotoSay();
  const stage = useEye((s) => s.stage);
  const name = usePieceName();
  const hasPicture = usePiece().photos.length > 0;
  if (!hasPicture) return null;
  return (
    <fieldset className="tabs stages" aria-label={say("photo.stages")} key={name}>
      <button
        type="button"
        className="tab"
        aria-pressed={stage === "picture"}
        data-stage="picture"
        onClick={toPicture}
      >
        {say("photo.stage.picture")}
      </button>
      <button
        type="button"
        className="tab"
        aria-pressed={stage === "trace"}
        data-stage="trace"
        disabled={!canTrace}
        onClick={() => toTable()}
      >
        {say("photo.stage.trace")}
      </button>
    </fieldset>
  );
}
