import { useEffect, useRef } from "react";
import { useSay } from "../words/say.ts";
import { keepAndLeave, leaveAsBefore, stayInClass, useTeaching } from "./teaching.ts";

/** Asked on leaving where the teacher changed a number; Escape stays in class. */
export function KeepThese() {
  const say = useSay();
  const asks = useTeaching((state) => state.asksToKeep);
  const window = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    if (asks) window.current?.showModal();
    else window.current?.close();
  }, [asks]);
  // The browser tells late that it closed the window: it may have been asked again by then.
  const closed = () => {
    if (!window.current?.open) stayInClass();
  };
  return (
    <dialog ref={window} className="keepThese" aria-labelledby="keepTitle" onClose={closed}>
      {asks ? (
        <>
          <h2 id="keepTitle">{say("class.keepTitle")}</h2>
          <div className="row">
            <button type="button" className="go quiet" onClick={leaveAsBefore}>
              {say("class.keepNot")}
            </button>
            <button type="button" className="go" onClick={keepAndLeave}>
              {say("class.keep")}
            </button>
            <button type="button" className="go quiet" onClick={stayInClass}>
              {say("class.stay")}
            </button>
          </div>
        </>
      ) : null}
    </dialog>
  );
}
