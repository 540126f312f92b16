import { OWN_PIECES } from "../ownBlock/ownBlock.ts";
import { useOwn } from "../ownBlock/state.ts";
import { Choice } from "../page/Choice.tsx";
import { Sentence } from "../page/Sentence.tsx";
import { useEye } from "./eye.ts";
import { MmInput } from "./MmInput.tsx";
import {
  dropLength,
  dropMark,
  photoIn,
  placeBy,
  setDistance,
  setDistances,
  setLength,
  setSheet,
} from "./markActions.ts";
import { distancesLacking, pairsAsked } from "./marks.ts";
import { usePhotoSay } from "./photoSay.ts";
import { usePiece, usePieceName } from "./piece.ts";

/** Distances between marks on a table: from a sleeve's cuff to two tables' length. Ours. */
const LEAST_DISTANCE = 50;
const MOST_DISTANCE = 5000;

/** Distances that another piece's marks were measured at, where they are the same marks. */
function SameDistances() {
  const say = usePhotoSay();
  const name = usePieceName();
  const mine = pairsAsked(usePiece());
  const pieces = useOwn((s) => s.history.present.photo);
  if (mine.length === 0 || mine.some(({ length }) => length !== null)) return null;
  const other = OWN_PIECES.find(
    (own) => own !== name && mine.every(({ key }) => pieces[own].distances[key] !== undefined),
  );
  if (!other) return null;
  return (
    <p className="note">
      <button
        type="button"
        className="plainLink"
        onClick={() => setDistances(pieces[other].distances)}
      >
        {say("photo.distances.same", { piece: say(`photo.piece.${other}`) })}
      </button>
    </p>
  );
}

function Distances() {
  const say = usePhotoSay();
  const piece = usePiece();
  const pairs = pairsAsked(piece);
  const lacking = distancesLacking(piece);
  if (pairs.length === 0) return null;
  return (
    <div className="clause plain">
      <p className="said">{say("photo.distances")}</p>
      <ul className="distances">
        {pairs.map(({ key, from, to, length }) => (
          <li key={key}>
            <span>{say("photo.distance", { from, to })}</span>
            <MmInput
              id={key}
              label={say("photo.distance.label", { from, to })}
              value={length}
              least={LEAST_DISTANCE}
              most={MOST_DISTANCE}
              onTake={(value) => setDistance(key, value)}
            />
          </li>
        ))}
      </ul>
      {lacking > 0 ? <p className="note">{say("photo.distances.lack", { n: lacking })}</p> : null}
      <SameDistances />
    </div>
  );
}

function Sheet() {
  const say = usePhotoSay();
  const { sheet } = usePiece();
  const side = (which: "width" | "height") => (
    <MmInput
      id={`sheet.${which}`}
      label={say(`photo.bySheet.${which}`)}
      value={sheet[which]}
      least={LEAST_DISTANCE}
      most={MOST_DISTANCE}
      onTake={(value) => {
        if (value !== null) setSheet({ ...sheet, [which]: value });
      }}
    />
  );
  return (
    <p className="note wide">
      <Sentence
        text={say("photo.bySheet")}
        given={{ width: side("width"), height: side("height") }}
      />
    </p>
  );
}

/** Known lengths: a card's short side is 54 mm, a long table's rule two metres. Ours. */
const LEAST_LENGTH = 20;
const MOST_LENGTH = 3000;

function Lengths() {
  const say = usePhotoSay();
  const piece = usePiece();
  const photo = useEye((s) => photoIn(piece, s.photo));
  return (
    <>
      <p className="note">{say("photo.byScale")}</p>
      <p className="caution">{say("photo.byScale.warn")}</p>
      <ul className="distances">
        {photo?.lengths.map(({ from, to, length }, i) => (
          <li key={`${from.x},${from.y},${to.x},${to.y}`}>
            <Sentence
              text={say("photo.length", { n: i + 1 })}
              given={{
                length: (
                  <MmInput
                    id={`length.${i}`}
                    label={say("photo.length.label", { n: i + 1 })}
                    value={length}
                    least={LEAST_LENGTH}
                    most={MOST_LENGTH}
                    onTake={(value) => setLength(photo.id, i, value)}
                  />
                ),
              }}
            />
            <button
              type="button"
              className="plainLink"
              aria-label={say("photo.length.drop", { n: i + 1 })}
              onClick={() => dropLength(photo.id, i)}
            >
              {say("photo.mark.drop")}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}

/** A mark in hand can be taken away without a key. */
function HeldMark() {
  const say = usePhotoSay();
  const piece = usePiece();
  const photo = useEye((s) => photoIn(piece, s.photo));
  const held = useEye((s) => s.held);
  const mark = photo?.marks.find(({ name }) => held === `mark.${name}`);
  if (!photo || !mark) return null;
  return (
    <p className="note links">
      <span>{say("photo.mark.held", { name: mark.name })}</span>
      <button type="button" className="plainLink" onClick={() => dropMark(photo.id, mark.name)}>
        {say("photo.mark.drop")}
      </button>
    </p>
  );
}

function Marks() {
  const say = usePhotoSay();
  const piece = usePiece();
  const photo = useEye((s) => photoIn(piece, s.photo));
  const names = photo?.marks.map(({ name }) => name).join(", ") ?? "";
  return (
    <p className="note">
      {names === "" ? say("photo.byMarks.none") : say("photo.byMarks.found", { names })}
    </p>
  );
}

/** By what the picture is laid flat: its marks and their distances. */
export function MarkClauses() {
  const say = usePhotoSay();
  const { by } = usePiece();
  const options = (["marks", "sheet", "scale"] as const).map((value) => ({
    value,
    text: say(`photo.by.${value}`),
  }));
  const choice = (
    <Choice id="by" label={say("photo.by.label")} value={by} options={options} onChoose={placeBy} />
  );
  return (
    <>
      <div className="clause plain">
        <p className="said">
          <Sentence text={say("photo.by")} given={{ by: choice }} />
        </p>
        {by === "marks" ? <Marks /> : null}
        {by === "sheet" ? <Sheet /> : null}
        {by === "scale" ? <Lengths /> : <HeldMark />}
      </div>
      {by === "marks" ? <Distances /> : null}
    </>
  );
}
