import { redo, undo } from "../state/changes.ts";
import { useRested } from "../state/rested.ts";
import { useSay } from "../words/say.ts";

type Props = {
  /** The step that would be undone, and the one that would be done again. */
  readonly back: string | undefined;
  readonly on: string | undefined;
  readonly undo: () => void;
  readonly redo: () => void;
};

/** Undo and redo as words; each names its step. */
export function BackAndOn({ back, on, undo: goBack, redo: goOn }: Props) {
  const say = useSay();
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
        onClick={goBack}
      >
        {say("head.undo")}
      </button>
      <button
        type="button"
        className="plainLink"
        title={redoName}
        aria-label={redoName}
        disabled={on === undefined}
        onClick={goOn}
      >
        {say("head.redo")}
      </button>
    </span>
  );
}

/** The same for the work. */
export function UndoRedo() {
  const back = useRested(({ history }) => history.past.at(-1)?.name);
  const on = useRested(({ history }) => history.future.at(-1)?.name);
  return <BackAndOn back={back} on={on} undo={undo} redo={redo} />;
}
