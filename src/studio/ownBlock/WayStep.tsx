import type { ReactNode } from "react";
import { OpenFile } from "../shell/OpenFile.tsx";
import { BlockTable } from "./BlockTable.tsx";
import { OwnPage } from "./OwnShell.tsx";
import { NEW_OWN, type Way } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { beginOwnBlock, changeOwn, useOwn } from "./state.ts";
import { WAYS } from "./ways.ts";

type EntryProps = {
  readonly title: string;
  readonly text: string;
  readonly children: ReactNode;
};

function Entry({ title, text, children }: EntryProps) {
  return (
    <div className="clause plain wayIn">
      <h2>{title}</h2>
      <p className="note">{text}</p>
      <div className="row">{children}</div>
    </div>
  );
}

function WayIn({ way }: { readonly way: Way }) {
  const say = useOwnSay();
  const begun = useOwn((s) => s.history.present.way === way);
  return (
    <Entry title={say(`own.way.${way}`)} text={say(`own.way.${way}.text`)}>
      <button
        type="button"
        className={begun ? "go" : "go quiet"}
        data-way={way}
        onClick={() => beginOwnBlock(way)}
      >
        {say(begun ? "own.way.on" : `own.way.${way}.go`)}
      </button>
    </Entry>
  );
}

/** The ways in, each with what it needs, and what was begun. */
export function WayStep() {
  const say = useOwnSay();
  const begun = useOwn((s) => s.history.present !== NEW_OWN);
  return (
    <>
      <OwnPage step="way">
        <div className="clauses">
          {WAYS.map((way) => (
            <WayIn key={way} way={way} />
          ))}
          <Entry title={say("own.way.file")} text={say("own.way.file.text")}>
            <OpenFile className="go quiet" text={say("own.way.file.go")} />
          </Entry>
        </div>
        <p className="note">{say("own.kept")}</p>
        {begun ? (
          <p className="note">
            <button
              type="button"
              className="plainLink"
              onClick={() => changeOwn(NEW_OWN, say("own.step.anew"))}
            >
              {say("own.anew")}
            </button>
          </p>
        ) : null}
      </OwnPage>
      <BlockTable />
    </>
  );
}
