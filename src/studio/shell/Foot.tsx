import { ShowInClass } from "../classroom/ShowInClass.tsx";
import { copyLink } from "../files/linking.ts";
import { saveCopy } from "../files/saving.ts";
import { put } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { OpenFile } from "./OpenFile.tsx";
import { UndoRedo } from "./UndoRedo.tsx";
import { LooksSentence, ViewSentence } from "./ViewWords.tsx";

/** What is done with the whole work: open, save, send, begin anew. */
export function Foot() {
  const say = useSay();
  return (
    <div className="foot">
      <ShowInClass />
      <OpenFile text={say("spine.open")} />
      <button type="button" onClick={saveCopy}>
        {say("spine.save")}
      </button>
      <button type="button" onClick={copyLink}>
        {say("spine.link")}
      </button>
      <button type="button" onClick={() => put({ atDoors: true })}>
        {say("spine.first")}
      </button>
      <button type="button" onClick={() => put({ keysShown: true })}>
        {say("spine.help")}
      </button>
      <LooksSentence />
    </div>
  );
}

/** Where the spine has no room for it, the same stands under the page. */
export function PageFoot() {
  return (
    <div className="pageFoot onlyLeaves">
      <p className="onlyNarrow">
        <UndoRedo />
      </p>
      <p className="viewLine">
        <ViewSentence />
      </p>
      <Foot />
    </div>
  );
}
