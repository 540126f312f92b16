import type { OwnAllowances } from "../../drafting/blockFile.ts";
import { CHOICE_RANGES } from "../../drafting/data/ranges.ts";
import { Clause } from "../page/Clause.tsx";
import { BeforeAfterTable } from "./BeforeAfterTable.tsx";
import { blockNow } from "./blockNow.ts";
import { ChoiceSlot } from "./ChoiceSlot.tsx";
import { LengthSlot } from "./LengthSlot.tsx";
import { NextStep } from "./NextStep.tsx";
import { OwnPage } from "./OwnShell.tsx";
import { useOwnSay } from "./ownSay.ts";
import { changeOwn, own, useOwn } from "./state.ts";
import { ToldFault } from "./ToldFault.tsx";

const NAMES = [
  "neckline",
  "raglan",
  "side",
  "underarm",
  "hem",
] as const satisfies readonly (keyof OwnAllowances)[];

/** What is proposed where the maker says that turnings are drawn; common practice, no source. */
const USUAL: OwnAllowances = { neckline: 10, raglan: 10, side: 10, underarm: 10, hem: 30 };

const set = (turnings: OwnAllowances | null, name: string, gesture?: string): void =>
  changeOwn({ ...own(), turnings, remedies: [] }, name, gesture);

function Widths({ turnings }: { readonly turnings: OwnAllowances }) {
  const say = useOwnSay();
  const { least, most } = CHOICE_RANGES.allowance;
  return NAMES.map((name) => (
    <Clause
      key={name}
      text={say(`own.turning.${name}`)}
      given={{
        width: (
          <LengthSlot
            label={say(`own.turning.label.${name}`)}
            value={turnings[name]}
            least={least}
            most={most}
            take={(to, gesture) => {
              if (to !== null && to !== turnings[name]) {
                set({ ...turnings, [name]: to }, say("own.step.turning"), gesture);
              }
            }}
          />
        ),
      }}
    />
  ));
}

/** Whether the pieces are drawn with their turnings; if so they are brought back to the seam line. */
export function TurningsStep() {
  const say = useOwnSay();
  const now = useOwn((s) => s.history.present);
  const { turnings } = now;
  const told = blockNow(now);
  return (
    <>
      <OwnPage step="turnings">
        <div className="clauses">
          <Clause
            text={say("own.turnings")}
            given={{
              drawn: (
                <ChoiceSlot
                  label={say("own.turnings.label")}
                  name="turnings"
                  value={turnings ? "with" : "without"}
                  options={[
                    ["without", say("own.turnings.without")],
                    ["with", say("own.turnings.with")],
                  ]}
                  choose={(to) => set(to === "with" ? USUAL : null, say("own.step.turnings"))}
                />
              ),
            }}
            note={say(turnings ? "own.turnings.taken" : "own.turnings.none")}
          />
          {turnings ? <Widths turnings={turnings} /> : null}
        </div>
        {told && "fault" in told ? <ToldFault fault={told.fault} /> : null}
        <NextStep to="doctor" why={null} />
      </OwnPage>
      <BeforeAfterTable now={now} />
    </>
  );
}
