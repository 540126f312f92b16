import { useEye } from "./eye.ts";
import { stopPictures } from "./photoClient.ts";
import { usePhotoSay } from "./photoSay.ts";

/** Work on a picture in hand: what, how far, and a way to stop it. */
export function BusyNote() {
  const say = usePhotoSay();
  const busy = useEye((s) => s.busy);
  if (!busy) return null;
  const name = say(`photo.busy.${busy.what}`);
  return (
    <div className="busy" role="status">
      <p className="note">{name}</p>
      <progress aria-label={name} max={1} value={busy.share} />
      <button type="button" className="plainLink" onClick={stopPictures}>
        {say("photo.stop")}
      </button>
    </div>
  );
}
