import { type FormEvent, useState } from "react";
import type { Check } from "../../checks/check.ts";
import type { Sheets } from "../../export/sheets.ts";
import { wantedPages } from "../../export/wanted.ts";
import type { Made } from "../../project/make.ts";
import { makeFile, openStops, useRun } from "../files/exporting.ts";
import { change } from "../state/changes.ts";
import { useStudio, work } from "../state/store.ts";
import { checkName } from "../tape/checkWords.ts";
import { useSentence } from "../tape/sentences.ts";
import { useSay } from "../words/say.ts";
import { LargeFiles } from "./LargeFiles.tsx";
import { NestedClause } from "./NestedClause.tsx";
import { RunNote } from "./RunNote.tsx";

const LEAST_REASON = 3;

/** A stop may be signed for: it still prints on the first sheet. */
function Signing({ check }: { readonly check: Check }) {
  const say = useSay();
  const words = useStudio((s) => s.words);
  const sentence = useSentence();
  const [reason, setReason] = useState("");
  const [short, setShort] = useState(false);
  const sign = (event: FormEvent) => {
    event.preventDefault();
    const said = reason.trim();
    setShort(said.length < LEAST_REASON);
    if (said.length < LEAST_REASON) return;
    const now = work();
    change({ ...now, signed: { ...now.signed, [check.id]: said } }, () => say("step.signed"));
  };
  return (
    <form className="refuse sign" onSubmit={sign} data-stop={check.id}>
      <b>{say("paper.stops", { name: checkName(check.id, words, say) })}</b>{" "}
      <span>{sentence(check)}</span>
      <p>
        <label>
          {say("paper.sign")}
          <textarea rows={2} value={reason} onChange={(event) => setReason(event.target.value)} />
        </label>
      </p>
      {short ? <p role="alert">{say("paper.signEmpty")}</p> : null}
      <div className="row">
        <button type="submit" className="go quiet">
          {say("paper.signDo")}
        </button>
      </div>
    </form>
  );
}

const OTHERS = ["svg", "dxf", "report"] as const;

type Props = { readonly made: Made; readonly sheets: Sheets };

/** The files that can be made, and what stands in their way. */
export function PaperFiles({ made, sheets }: Props) {
  const say = useSay();
  const signed = useStudio((s) => s.history.present.signed);
  const working = useRun((run) => run.state === "working");
  const stops = openStops(made.checks, signed);
  const blocked = stops.length > 0 || working;
  const { count } = sheets;
  const none = wantedPages(sheets).length === 0;
  return (
    <>
      {stops.map((check) => (
        <Signing key={check.id} check={check} />
      ))}
      {made.checks
        .filter(({ id, verdict }) => verdict === "stop" && signed[id] !== undefined)
        .map(({ id }) => (
          <p key={id} className="refuse">
            {say("paper.signed", { reason: signed[id] ?? "" })}
          </p>
        ))}
      <p className="caution">{say("paper.before")}</p>
      <div className="row">
        <button
          type="button"
          className="go"
          disabled={blocked || none}
          onClick={() => makeFile("pdf")}
        >
          {say("paper.make", { count })}
        </button>
      </div>
      <p className="note">{say("paper.also")}</p>
      <div className="row" style={{ marginTop: 8 }}>
        {OTHERS.map((kind) => (
          <button
            key={kind}
            type="button"
            className="go quiet"
            disabled={blocked}
            onClick={() => makeFile(kind)}
          >
            {say(`paper.${kind}`)}
          </button>
        ))}
      </div>
      <div className="clauses apart">
        <LargeFiles blocked={blocked} />
        <NestedClause />
      </div>
      <RunNote />
    </>
  );
}
