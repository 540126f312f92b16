import { useEffect, useRef, useState } from "react";
import { CARD, PER_MM } from "../data/card.ts";
import { closeSetting, firstPerMm, keepPerMm, useScreen } from "../state/trueSize.ts";
import { useSay } from "../words/say.ts";

/** A card drawn on the screen, made as large as the one that is held against it. */
function Card({ perMm }: { readonly perMm: number }) {
  const [width, height] = [CARD.width * perMm, CARD.height * perMm];
  return (
    <svg className="screenCard" width={width} height={height} aria-hidden="true">
      <rect x="0.5" y="0.5" width={width - 1} height={height - 1} rx={3.18 * perMm} />
    </svg>
  );
}

/** True size needs one look at the screen: how long a millimetre is on it. */
export function SetScreen() {
  const say = useSay();
  const open = useScreen(({ setting }) => setting);
  const [perMm, setPerMm] = useState(PER_MM.least as number);
  const window = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (open) {
      setPerMm(firstPerMm());
      window.current?.showModal();
    } else window.current?.close();
  }, [open]);
  return (
    <dialog ref={window} aria-labelledby="screenTitle" onClose={closeSetting}>
      {open ? (
        <>
          <h2 id="screenTitle">{say("screen.title")}</h2>
          <p>{say("screen.how")}</p>
          <div className="screenRoom">
            <Card perMm={perMm} />
          </div>
          <input
            type="range"
            aria-label={say("screen.size")}
            min={PER_MM.least}
            max={PER_MM.most}
            step={PER_MM.step}
            value={perMm}
            onChange={(event) => setPerMm(Number(event.target.value))}
          />
          <div className="row">
            <button type="button" className="go" onClick={() => keepPerMm(perMm)}>
              {say("screen.done")}
            </button>
            <button type="button" className="go quiet" onClick={closeSetting}>
              {say("note.close")}
            </button>
          </div>
        </>
      ) : null}
    </dialog>
  );
}
