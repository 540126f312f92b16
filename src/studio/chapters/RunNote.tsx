import { type FileKind, stopFile, useRun } from "../files/exporting.ts";
import { useSay } from "../words/say.ts";

/** Printed to be cut by: its test square is measured first. */
const isSheets = (kind: FileKind): boolean =>
  kind === "pdf" || kind === "nested" || kind === "copyShop";

/** What became of the file that was asked for. */
export function RunNote() {
  const say = useSay();
  const run = useRun();
  if (run.state === "idle") return null;
  if (run.state === "working") {
    const { file, phase, share } = run;
    return (
      <div className="refuse" role="status">
        {say("paper.working", { file, phase: say(`paper.phase.${phase}`) })}
        <progress value={share} max={1} aria-label={file} />
        <button type="button" className="plainLink" onClick={stopFile}>
          {say("paper.cancel")}
        </button>
      </div>
    );
  }
  const text = {
    made: () =>
      run.state === "made"
        ? say(isSheets(run.kind) ? "paper.after" : "paper.made", { file: run.file })
        : "",
    stopped: () => say("paper.cancelled"),
    failed: () => (run.state === "failed" ? say("paper.failed", { why: run.why }) : ""),
  }[run.state]();
  return (
    <p className="refuse" role="status" data-run={run.state}>
      {text}
    </p>
  );
}
