import { Choice } from "../page/Choice.tsx";
import { Sentence } from "../page/Sentence.tsx";
import { takeUp, useEye } from "./eye.ts";
import { MmInput } from "./MmInput.tsx";
import { dropEdges, photoIn, setBends, setWaves } from "./markActions.ts";
import { usePhotoSay } from "./photoSay.ts";
import type { Photo } from "./photoWork.ts";
import { usePiece } from "./piece.ts";

function Edges({ photo }: { readonly photo: Photo }) {
  const say = usePhotoSay();
  const isMarking = useEye((s) => s.tool === "edge");
  const n = photo.edges.length;
  const said =
    n === 0
      ? say("photo.edges.none")
      : n === 1
        ? say("photo.edges.one")
        : say("photo.edges", { n });
  return (
    <p className="note links">
      <span>{said}</span>
      <button
        type="button"
        className="plainLink"
        aria-pressed={isMarking}
        onClick={() => takeUp("edge")}
      >
        {say("photo.tool.edge")}
      </button>
      {n === 0 ? null : (
        <button type="button" className="plainLink" onClick={() => dropEdges(photo.id)}>
          {say("photo.edges.drop")}
        </button>
      )}
    </p>
  );
}

/** Higher waves than this are no paper on a table. Ours. */
const MOST_WAVES = 30;

/** How flat the paper lies: waves are an error that no mark can tell. */
export function WavesClause() {
  const say = usePhotoSay();
  const { waves, by } = usePiece();
  if (by === "scale") return null;
  const height = (
    <MmInput
      id="waves"
      label={say("photo.waves.label")}
      value={waves}
      least={0}
      most={MOST_WAVES}
      onTake={(value) => setWaves(value ?? 0)}
    />
  );
  return (
    <div className="clause plain">
      <p className="said">
        <Sentence text={say("photo.waves")} given={{ waves: height }} />
      </p>
      <p className="note">{say("photo.waves.note")}</p>
    </div>
  );
}

/** Whether the lens's bending is to be taken away, and by what it is told. */
export function LensClause() {
  const say = usePhotoSay();
  const piece = usePiece();
  const photo = useEye((s) => photoIn(piece, s.photo));
  if (piece.by === "scale" || !photo) return null;
  const choice = (
    <Choice
      id="bends"
      label={say("photo.bends.label")}
      value={piece.bends ? "yes" : "no"}
      options={(["no", "yes"] as const).map((value) => ({
        value,
        text: say(`photo.bends.${value}`),
      }))}
      onChoose={(value) => setBends(value === "yes")}
    />
  );
  return (
    <div className="clause plain">
      <p className="said">
        <Sentence text={say("photo.bends")} given={{ bends: choice }} />
      </p>
      {piece.bends ? <Edges photo={photo} /> : <p className="note">{say("photo.bends.note")}</p>}
    </div>
  );
}
