import { RunNote } from "../chapters/RunNote.tsx";
import { makeMarkers } from "../files/exporting.ts";
import { useHome } from "../files/homePaper.ts";
import { ChoosePicture } from "./ChoosePicture.tsx";
import { look, useEye } from "./eye.ts";
import { photoIn } from "./markActions.ts";
import { usePhotoSay } from "./photoSay.ts";
import type { Photo } from "./photoWork.ts";
import { megapixels, takePicture } from "./picking.ts";
import { usePiece, usePieceName } from "./piece.ts";

/** The printed marks, before there is a picture to put them in. */
function PrintMarks() {
  const say = usePhotoSay();
  const paper = useHome();
  return (
    <div className="clause plain">
      <p className="note">
        {say("photo.marksPdfNote", { paper: paper === "letter" ? "Letter" : "A4" })}
      </p>
      <div className="row">
        <button type="button" className="go quiet" onClick={makeMarkers}>
          {say("photo.marksPdf")}
        </button>
      </div>
      <RunNote />
    </div>
  );
}

function OnePicture({ photo, isOnly }: { readonly photo: Photo; readonly isOnly: boolean }) {
  const say = usePhotoSay();
  const isShown = useEye((s) => (s.photo ?? photo.id) === photo.id);
  const { name, width, height } = photo;
  return (
    <li>
      <span>{say("photo.is", { name, width, height, mp: megapixels(photo) })}</span>
      {isOnly || isShown ? null : (
        <button type="button" className="plainLink" onClick={() => look({ photo: photo.id })}>
          {say("photo.look", { name })}
        </button>
      )}
    </li>
  );
}

/** The pictures of the piece: chosen, exchanged, one more. */
export function PictureClause() {
  const say = usePhotoSay();
  const piece = usePiece();
  const name = usePieceName();
  const shown = useEye((s) => photoIn(piece, s.photo));
  if (!shown) {
    return (
      <div className="clauses">
        <div className="clause plain">
          <div className="row first">
            <ChoosePicture
              className="go"
              text={say("photo.choose")}
              onFile={(file) => takePicture(file, false)}
            />
          </div>
          <p className="note">{say("photo.chooseNote")}</p>
          <p className="note">{say("photo.empty", { piece: say(`photo.piece.${name}`) })}</p>
        </div>
        <PrintMarks />
      </div>
    );
  }
  return (
    <div className="clause plain">
      <ul className="pictures">
        {piece.photos.map((photo) => (
          <OnePicture key={photo.id} photo={photo} isOnly={piece.photos.length === 1} />
        ))}
      </ul>
      <p className="note links">
        <ChoosePicture
          className="plainLink"
          text={say("photo.another")}
          onFile={(file) => takePicture(file, false)}
        />
        {piece.by === "marks" ? (
          <ChoosePicture
            className="plainLink"
            text={say("photo.more")}
            onFile={(file) => takePicture(file, true)}
          />
        ) : null}
      </p>
      {piece.photos.length > 1 ? <p className="note">{say("photo.moreNote")}</p> : null}
    </div>
  );
}
