import type { ReactNode } from "react";
import type { Body } from "../../drafting/measures.ts";
import { sentence } from "../../project/refusal.ts";
import { openClassFile, teachOnPupil, useClassFile } from "../classroom/classFile.ts";
import { ShowInClass } from "../classroom/ShowInClass.tsx";
import { useTeaching } from "../classroom/teaching.ts";
import { makeClassSheets, makeFile, useRun } from "../files/exporting.ts";
import { Choice } from "../page/Choice.tsx";
import { Clause } from "../page/Clause.tsx";
import { ChooseFile } from "../shell/ChooseFile.tsx";
import { useSay } from "../words/say.ts";

const NONE: readonly Body[] = [];

/** A table of pupils, as the command line's class takes it. */
function BringClass() {
  const say = useSay();
  return (
    <ChooseFile
      className="go quiet"
      text={say("class.bring")}
      kind="class"
      accept=".csv,text/csv"
      onFile={openClassFile}
    />
  );
}

/** Whose measures the lesson is worked on. Only the id is told: measures are private. */
function PupilSlot({ pupils }: { readonly pupils: readonly Body[] }) {
  const say = useSay();
  const id = useTeaching(({ pupil }) => pupil?.id ?? "");
  return (
    <Choice
      id="pupil"
      label={say("class.whose")}
      value={id}
      options={[
        { value: "", text: say("class.onTable") },
        ...pupils.map((pupil) => ({ value: pupil.id, text: pupil.id })),
      ]}
      onChoose={teachOnPupil}
    />
  );
}

/** What became of the class file: a sentence for all that was read, one for each row that was not. */
function ReadNote() {
  const say = useSay();
  const held = useClassFile();
  if (held.state === "none") return null;
  if (held.state === "refused")
    return (
      <p className="refuse" role="alert" data-class-refused>
        {sentence(held.fault)}
      </p>
    );
  const { file, pupils, refused, notices } = held;
  return (
    <>
      <p className="note" role="status" data-class-read>
        {say("class.read", { file, count: pupils.length, refused: refused.length })}
      </p>
      {notices.map((notice) => (
        <p key={notice} className="note">
          {notice}
        </p>
      ))}
      {refused.map((refusal) => (
        <p key={`${refusal.row}`} className="refuse" role="alert" data-class-refused>
          {say("class.row", { row: refusal.row ?? 0, id: refusal.id || say("class.noId") })}{" "}
          {sentence(refusal)}
        </p>
      ))}
    </>
  );
}

type ButtonProps = { readonly press: () => void; readonly children: ReactNode };

function MakeButton({ press, children }: ButtonProps) {
  const working = useRun((run) => run.state === "working");
  return (
    <button type="button" className="go quiet" disabled={working} onClick={press}>
      {children}
    </button>
  );
}

/** The lesson: shown, handed out, and drawn small for every pupil. */
export function ForClass() {
  const say = useSay();
  const pupils = useClassFile((held) => (held.state === "read" ? held.pupils : NONE));
  return (
    <section className="forClass">
      <h2>{say("class.name")}</h2>
      <div className="clauses">
        <Clause text={say("class.lesson")} given={{ whose: <PupilSlot pupils={pupils} /> }}>
          <div className="row">
            <ShowInClass className="go quiet" />
            <MakeButton press={() => makeFile("handout")}>{say("making.handout")}</MakeButton>
            <MakeButton press={() => makeFile("answers")}>{say("making.answers")}</MakeButton>
          </div>
        </Clause>
        <Clause text={say("class.pupils")} note={say("class.pupilsNote")}>
          <ReadNote />
          <div className="row">
            <BringClass />
            {pupils.length === 0 ? null : (
              <MakeButton press={makeClassSheets}>
                {say("class.sheets", { count: pupils.length })}
              </MakeButton>
            )}
          </div>
        </Clause>
      </div>
    </section>
  );
}
