import { useEffect, useRef } from "react";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";

const KEYS = [
  "keys.digits",
  "keys.fit",
  "keys.pieces",
  "keys.pins",
  "keys.old",
  "keys.read",
] as const;

/** The list of keys, in a window of its own. */
export function KeyList() {
  const say = useSay();
  const shown = useStudio((s) => s.keysShown);
  const window = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (shown) window.current?.showModal();
    else window.current?.close();
  }, [shown]);
  return (
    <dialog ref={window} aria-labelledby="keysTitle" onClose={() => put({ keysShown: false })}>
      {shown ? (
        <>
          <h2 id="keysTitle">{say("keys.title")}</h2>
          <p>{say("keys.everywhere")}</p>
          <p>{say("keys.number")}</p>
          <h3>{say("keys.table")}</h3>
          <ul>
            {KEYS.map((key) => (
              <li key={key}>{say(key)}</li>
            ))}
          </ul>
          <div className="row">
            <button type="button" className="go quiet" onClick={() => put({ keysShown: false })}>
              {say("note.close")}
            </button>
          </div>
        </>
      ) : null}
    </dialog>
  );
}
