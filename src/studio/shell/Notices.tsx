import { keepMine, takeTheirs } from "../files/autosave.ts";
import { download } from "../files/download.ts";
import { saveCopy } from "../files/saving.ts";
import { undo } from "../state/changes.ts";
import { useOfDrawn } from "../state/made.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";

function OneNotice() {
  const say = useSay();
  const notice = useStudio((s) => s.notice);
  if (!notice) return null;
  const { aside } = notice;
  return (
    <div className="notice" role={notice.urgent ? "alert" : "status"}>
      {notice.text}
      {notice.link === undefined ? null : (
        <input
          readOnly
          value={notice.link}
          aria-label={say("spine.link")}
          onFocus={(event) => event.currentTarget.select()}
        />
      )}
      <div className="row">
        {aside === undefined ? null : (
          <button
            type="button"
            className="go quiet"
            onClick={() => download("kept.ribwright.json", aside, "application/json")}
          >
            {say("file.saveAside")}
          </button>
        )}
        <button type="button" className="plainLink" onClick={() => put({ notice: null })}>
          {say("note.close")}
        </button>
      </div>
    </div>
  );
}

/** Two windows on one handbook: neither writes over the other unseen. */
function TwoWindows() {
  const say = useSay();
  const conflict = useStudio((s) => s.conflict);
  if (!conflict) return null;
  return (
    <section className="notice" role="alert" aria-label={say("tabs.title")}>
      <h2>{say("tabs.title")}</h2>
      <p>{say("tabs.text")}</p>
      <div className="row">
        <button type="button" className="go quiet" onClick={takeTheirs}>
          {say("tabs.theirs")}
        </button>
        <button type="button" className="go quiet" onClick={keepMine}>
          {say("tabs.mine")}
        </button>
        <button type="button" className="plainLink" onClick={saveCopy}>
          {say("spine.save")}
        </button>
      </div>
    </section>
  );
}

/** A fault of ours: the last drawing stays, and the way back stands here. */
function Fault() {
  const say = useSay();
  const fault = useOfDrawn((drawn) => drawn.fault);
  if (fault === null) return null;
  return (
    <section className="notice" role="alert" aria-label={say("fault.title")}>
      <h2>{say("fault.title")}</h2>
      <p>{say("fault.text")}</p>
      <details>
        <summary>{say("fault.more")}</summary>
        <code>{fault}</code>
      </details>
      <div className="row">
        <button type="button" className="go quiet" onClick={undo}>
          {say("head.undo")}
        </button>
        <button type="button" className="go quiet" onClick={saveCopy}>
          {say("spine.save")}
        </button>
      </div>
    </section>
  );
}

export function Notices() {
  return (
    <div className="notices">
      <TwoWindows />
      <Fault />
      <OneNotice />
    </div>
  );
}
