import { redo, undo } from "../state/changes.ts";
import { useStudio } from "../state/store.ts";
import { useRested } from "../state/useRested.ts";
import { useSay } from "../words/say.ts";

/** Undo and redo as words; each names its step. */
export function UndoRedo() {
  const say = useSay();
  const back = useRested(useStudio((s) => s.history.past.at(-1)?.name));
  const on = useStudio((s) => s.history.future.at(-1)?.name);
  const undoName =
    back === undefined ? say("head.nothingToUndo") : say("head.undoStep", { step: back });
  const redoName =
    on === undefined ? say("head.nothingToRedo") : say("head.redoStep", { step: on });
  return (
    <span>
      <button
        type="button"
        className="plainLink"
        title={undoName}
        aria-label={undoName}
        disabled={back === undefined}
        onClick={undo}
      >
        {say("head.undo")}
      </button>
      <button
        type="button"
        className="plainLink"
        title={redoName}
        aria-label={redoName}
        disabled={on === undefined}
        onClick={redo}
      >
        {say("head.redo")}
      </button>
    </span>
  );
}
