import { TAPE_RANGES } from "../../trace/tape/tapeMeasures.ts";
import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { blockNow, tapeOf } from "./blockNow.ts";
import { inWords } from "./inWords.ts";
import { LengthSlot } from "./LengthSlot.tsx";
import { NextStep } from "./NextStep.tsx";
import { OwnPage } from "./OwnShell.tsx";
import type { TapeGiven } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { changeOwn, own, putOwn, useOwn } from "./state.ts";
import { TapeTable } from "./TapeTable.tsx";
import { ToldFault } from "./ToldFault.tsx";
import { TAPE_FIELDS, type TapeField } from "./tapeLines.ts";

/** A raglan strays from its straight way by no more than this, mm. Ours: a guard against slips. */
const MOST_OFFSET = 80;

type Length = Exclude<TapeField, "frontOffsets" | "backOffsets">;
type Offsets = "frontOffsets" | "backOffsets";

const change = (tape: TapeGiven, name: string, gesture: string): void =>
  changeOwn({ ...own(), tape, remedies: [] }, name, gesture);

function LengthClause({ field, number }: { readonly field: Length; readonly number: number }) {
  const say = useOwnSay();
  const tape = useOwn((s) => s.history.present.tape);
  const [least, most] = TAPE_RANGES[field];
  return (
    <Clause
      number={number}
      text={say(`own.tape.${field}`)}
      given={{
        length: (
          <LengthSlot
            label={say(`own.tape.label.${field}`)}
            value={tape[field]}
            least={least}
            most={most}
            mayBeEmpty
            focus={() => putOwn({ lit: field })}
            take={(to, gesture) => {
              if (to !== tape[field]) {
                change({ ...tape, [field]: to }, say("own.step.tape"), gesture);
              }
            }}
          />
        ),
      }}
    />
  );
}

const PLACES = [0, 1, 2] as const;

function OffsetsClause({ field, number }: { readonly field: Offsets; readonly number: number }) {
  const say = useOwnSay();
  const tape = useOwn((s) => s.history.present.tape);
  const given = tape[field];
  const slot = (at: (typeof PLACES)[number]) => (
    <LengthSlot
      label={say(`own.tape.label.${field}`, { quarter: at + 1 })}
      value={given[at]}
      least={-MOST_OFFSET}
      most={MOST_OFFSET}
      mayBeEmpty
      focus={() => putOwn({ lit: field })}
      take={(to, gesture) => {
        if (to === given[at]) return;
        const [a, b, c] = given.map((value, i) => (i === at ? to : value));
        change(
          { ...tape, [field]: [a ?? null, b ?? null, c ?? null] },
          say("own.step.tape"),
          gesture,
        );
      }}
    />
  );
  return (
    <Clause
      number={number}
      text={say(`own.tape.${field}`)}
      given={{ first: slot(0), second: slot(1), third: slot(2) }}
      note={say("own.tape.offsetsNote")}
    />
  );
}

/** What had to be assumed for the block that was solved, or what cannot stand together. */
function Outcome() {
  const say = useOwnSay();
  const print = usePrint();
  const now = useOwn((s) => s.history.present);
  const told = blockNow(now);
  if (!told) return null;
  if ("fault" in told) return <ToldFault fault={told.fault} />;
  return (
    <>
      <h2>{say("own.assumed")}</h2>
      <ul className="soundList">
        {told.found.assumed.map((sentence) => (
          <li key={sentence}>{inWords(sentence, print)}</li>
        ))}
      </ul>
    </>
  );
}

/** The way in by tape: lengths and depths, and the block that they come to, drawn live. */
export function TapeStep() {
  const say = useOwnSay();
  const now = useOwn((s) => s.history.present);
  const told = blockNow(now);
  const missing = tapeOf(now.tape) === null;
  const isSolved = told !== null && "found" in told;
  return (
    <>
      <OwnPage step="pieces">
        <p className="note">{say("own.tape.how")}</p>
        <div className="clauses tight">
          {TAPE_FIELDS.map((field, i) =>
            field === "frontOffsets" || field === "backOffsets" ? (
              <OffsetsClause key={field} field={field} number={i + 1} />
            ) : (
              <LengthClause key={field} field={field} number={i + 1} />
            ),
          )}
        </div>
        <Outcome />
        <NextStep
          to="doctor"
          why={missing ? "own.tape.missing" : isSolved ? null : "own.tape.unsolved"}
        />
      </OwnPage>
      <TapeTable now={now} />
    </>
  );
}
