import { completeMeasures } from "../../drafting/estimate.ts";
import type { Block } from "../../drafting/piece.ts";
import { bodyOf, heldBody } from "../../project/work.ts";
import { examine } from "../../trace/doctor/examine.ts";
import { blockGirths } from "../../trace/doctor/girths.ts";
import type { Finding } from "../../trace/doctor/remedy.ts";
import { bodyName } from "../state/changes.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { Mark } from "../tape/Mark.tsx";
import { BlockTable } from "./BlockTable.tsx";
import { blockNow, remedied } from "./blockNow.ts";
import { DoctorTable } from "./DoctorTable.tsx";
import { FindingClause, findingName } from "./FindingClause.tsx";
import { inWords } from "./inWords.ts";
import { OwnPage } from "./OwnShell.tsx";
import type { OwnBlock } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { useOwn } from "./state.ts";
import { ToldFault } from "./ToldFault.tsx";
import { takeBlock } from "./takeBlock.ts";

/** What is sound, told in short. */
function Sound({ findings }: { readonly findings: readonly Finding[] }) {
  const say = useOwnSay();
  const print = usePrint();
  return (
    <details className="fold">
      <summary>{say("own.sound", { count: findings.length })}</summary>
      <ul className="soundList">
        {findings.map((finding) => (
          <li key={finding.id}>
            <b>{findingName(finding.id, say)}.</b> {inWords(finding.message, print)}
          </li>
        ))}
      </ul>
    </details>
  );
}

/** Girths of the block beside those of the body on the table. */
function Girths({ block }: { readonly block: Block }) {
  const say = useOwnSay();
  const p = usePrint();
  const work = useStudio((s) => s.history.present);
  const body = bodyOf(heldBody(work));
  const girths = blockGirths(block, body && completeMeasures(body).measures);
  return (
    <>
      <h2>{say("own.girths")}</h2>
      <table className="girths">
        <thead>
          <tr>
            <th scope="col">{say("own.girths.round")}</th>
            <th scope="col">{say("own.girths.block")}</th>
            <th scope="col" translate="no">
              {body ? bodyName(work) : say("own.girths.body")}
            </th>
            <th scope="col">{say("own.girths.ease")}</th>
          </tr>
        </thead>
        <tbody>
          {girths.map(({ id, girth, body: of, ease, verdict }) => (
            <tr key={id}>
              <th scope="row">{say(`own.girth.${id}`)}</th>
              <td>{p.full(girth)}</td>
              <td>{of === null ? "–" : p.full(of)}</td>
              <td>
                {ease === null || verdict === null ? (
                  "–"
                ) : (
                  <span className={`state ${verdict}`}>
                    <Mark state={verdict} /> {p.full(ease)}
                    <span className="vh">, {say(`own.verdict.${verdict}`)}</span>
                  </span>
                )}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {body ? null : <p className="note">{say("own.girths.none")}</p>}
    </>
  );
}

type ExaminedProps = {
  readonly now: OwnBlock;
  readonly block: Block;
  readonly assumed: readonly string[];
};

function Examined({ now, block, assumed }: ExaminedProps) {
  const say = useOwnSay();
  const print = usePrint();
  const mended = remedied(block, now);
  const findings = examine(mended);
  const unsound = findings.filter(({ verdict }) => verdict !== "sound");
  const sound = findings.filter(({ verdict }) => verdict === "sound");
  return (
    <>
      <OwnPage step="doctor">
        <h2>
          {say(unsound.length === 0 ? "own.findings.none" : "own.findings", {
            count: unsound.length,
          })}
        </h2>
        <div className="clauses">
          {unsound.map((finding) => (
            <FindingClause key={finding.id} finding={finding} block={mended} now={now} />
          ))}
        </div>
        <Sound findings={sound} />
        {assumed.length > 0 ? (
          <details className="fold">
            <summary>{say("own.assumed")}</summary>
            <ul className="soundList">
              {assumed.map((sentence) => (
                <li key={sentence}>{inWords(sentence, print)}</li>
              ))}
            </ul>
          </details>
        ) : null}
        <Girths block={mended} />
        <p className="note">{say("own.use.note")}</p>
        <div className="row">
          <button type="button" className="go" onClick={() => takeBlock(now, mended)}>
            {say("own.use")}
          </button>
        </div>
      </OwnPage>
      <DoctorTable block={mended} before={block} />
    </>
  );
}

/** The block's own seams, each difference with its remedies, tried before they are done. */
export function DoctorStep() {
  const say = useOwnSay();
  const now = useOwn((s) => s.history.present);
  const told = blockNow(now);
  if (told && "found" in told) {
    return <Examined now={now} block={told.found.block} assumed={told.found.assumed} />;
  }
  return (
    <>
      <OwnPage step="doctor">
        {told ? (
          <ToldFault fault={told.fault} />
        ) : (
          <p className="note">{say("own.next.missing")}</p>
        )}
      </OwnPage>
      <BlockTable />
    </>
  );
}
