import { heldBody } from "../../project/work.ts";
import { bodyName, turnBody } from "../state/changes.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { UndoRedo } from "./UndoRedo.tsx";
import { ViewSentence } from "./ViewWords.tsx";

function PageHead() {
  const say = useSay();
  const chapter = useStudio((s) => s.chapter);
  return (
    <section className="headL" aria-label={say("head.doing")} data-region>
      <em>{say(`head.${chapter}`)}</em>
      <UndoRedo />
      <button
        type="button"
        className="turn onlyTwoLeaves"
        aria-label={say("page.fold")}
        onClick={() => put({ pageFolded: true })}
      >
        ‹
      </button>
    </section>
  );
}

function Who() {
  const say = useSay();
  const name = useStudio((s) => bodyName(s.history.present));
  const part = useStudio((s) => heldBody(s.history.present).part);
  const held = useStudio((s) => s.history.present.held);
  const all = useStudio((s) => s.history.present.bodies.length);
  const many = all > 1;
  const place = many ? say("head.of", { at: held + 1, all }) : "";
  return (
    <span className="turnBody">
      {many ? (
        <button
          type="button"
          className="turn"
          aria-label={say("head.before")}
          onClick={() => turnBody(-1)}
        >
          ‹
        </button>
      ) : null}
      <span className="who" translate="no">
        {name}
        <small>{[part, place].filter((word) => word !== "").join(", ")}</small>
      </span>
      {many ? (
        <button
          type="button"
          className="turn"
          aria-label={say("head.next")}
          onClick={() => turnBody(1)}
        >
          ›
        </button>
      ) : null}
    </span>
  );
}

export function Heads() {
  const say = useSay();
  const folded = useStudio((s) => s.pageFolded);
  return (
    <>
      <PageHead />
      <section className="headR" aria-label={say("head.viewing")} data-region>
        <Who />
        {folded ? (
          <button
            type="button"
            className="plainLink onlyTwoLeaves"
            onClick={() => put({ pageFolded: false })}
          >
            {say("page.unfold")}
          </button>
        ) : null}
        <span className="viewSaid">
          <ViewSentence />
        </span>
      </section>
    </>
  );
}
