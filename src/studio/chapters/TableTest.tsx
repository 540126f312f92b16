import { type ReactNode, useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import { CHOICE_RANGES } from "../../drafting/data/ranges.ts";
import type { RibFound } from "../../guide/readings.ts";
import { withRib } from "../fields/clothFields.ts";
import {
  layRadius,
  loadFor,
  MARKED,
  minuteRead,
  type Readings,
  recoveryRead,
  scrapWidth,
  slackRead,
  stretchedInUse,
  stretchRead,
} from "../fields/tableTest.ts";
import { makeFile, useRun } from "../files/exporting.ts";
import { Late, late } from "../guide/Late.tsx";
import { Sentence } from "../page/Sentence.tsx";
import { change } from "../state/changes.ts";
import { useMade } from "../state/made.ts";
import { type Print, usePrint } from "../state/print.ts";
import { work } from "../state/store.ts";
import { readLength } from "../units/readLength.ts";
import type { WordKey } from "../words/en.ts";
import { useSay } from "../words/say.ts";
import { RunNote } from "./RunNote.tsx";

type ReadingProps = {
  readonly label: string;
  readonly set: (mm: number | null) => void;
};

/** A reading of the test: not part of the work, only what its two numbers come from. */
function Reading({ label, set }: ReadingProps) {
  const { unit } = usePrint();
  const [text, setText] = useState("");
  return (
    <span className={`n${text === "" ? " none" : ""}`}>
      <input
        inputMode="decimal"
        aria-label={`${label}, ${unit}`}
        placeholder="…"
        autoComplete="off"
        value={text}
        size={Math.max(1, text.length)}
        onChange={(event) => {
          setText(event.target.value);
          const read = readLength(event.target.value, unit);
          set(read.ok ? read.value : null);
        }}
      />
    </span>
  );
}

const inRange = (value: number, { least, most }: { least: number; most: number }) =>
  value >= least && value <= most;

const RibChanges = late(() =>
  import("../guide/RibChanges.tsx").then(({ RibChanges: changes }) => ({ default: changes })),
);

type ResultProps = { readonly readings: Readings; readonly garment: Garment };

function Result({ readings, garment }: ResultProps) {
  const say = useSay();
  const p = usePrint();
  const stretched = stretchedInUse(garment);
  const stretch = stretchRead(readings);
  const recovery = recoveryRead(readings, stretched);
  if (stretch === null || recovery === null) return <p className="note">{say("test.waits")}</p>;
  const slots = { stretch: p.percent(stretch), recovery: p.percent(recovery) };
  const good = inRange(stretch, CHOICE_RANGES.stretch) && inRange(recovery, CHOICE_RANGES.recovery);
  if (!good)
    return (
      <p className="refuse" role="alert">
        {say("test.outside", slots)}
      </p>
    );
  const { finishedDepth } = garment.bands.neckband;
  const rib: RibFound = {
    stretch,
    recovery,
    recoveryAfterMinute: minuteRead(readings, stretched),
    slack: slackRead(readings, finishedDepth, layRadius(garment)),
  };
  const use = () => {
    const now = work();
    const rounded = {
      stretch: Math.round(stretch * 1000) / 1000,
      recovery: Math.round(recovery * 1000) / 1000,
    };
    change({ ...now, choices: withRib(now.choices, rounded) }, () =>
      say("step.word", { what: say("test.title"), to: `${slots.stretch}, ${slots.recovery}` }),
    );
  };
  return (
    <>
      <Late>
        <RibChanges garment={garment} rib={rib} />
      </Late>
      <div className="row">
        <button type="button" className="go quiet" onClick={use}>
          {say("test.use", slots)}
        </button>
      </div>
    </>
  );
}

const NONE: Readings = { loaded: null, minute: null, hour: null, arc: null };

type Field = { readonly key: keyof Readings; readonly label: WordKey };
const FIELDS: Readonly<Record<string, Field>> = {
  reading: { key: "loaded", label: "test.reading" },
  minute: { key: "minute", label: "test.minute" },
  hour: { key: "hour", label: "test.hour" },
  arc: { key: "arc", label: "test.arc" },
};

const fixedSlots = (garment: Garment, p: Print): Readonly<Record<string, string>> => {
  return {
    mark: p.full(MARKED),
    load: `${loadFor(scrapWidth(garment))}\u00a0g`,
    length: p.full(180),
    stretched: p.full(stretchedInUse(garment)),
    radius: p.full(layRadius(garment)),
  };
};

/** Three readings on a table, and the rib's two numbers from them. */
export function TableTest() {
  const say = useSay();
  const p = usePrint();
  const made = useMade();
  const [readings, setReadings] = useState<Readings>(NONE);
  const working = useRun((run) => run.state === "working");
  if (!made) return null;
  const fixed = fixedSlots(made.garment, p);
  const given: Record<string, ReactNode> = { ...fixed };
  for (const [slot, { key, label }] of Object.entries(FIELDS)) {
    given[slot] = (
      <Reading label={say(label)} set={(mm) => setReadings((was) => ({ ...was, [key]: mm }))} />
    );
  }
  return (
    <details className="fold" data-table-test>
      <summary>{say("test.title")}</summary>
      <p className="note">{say("test.lead", { length: p.full(180) })}</p>
      {(["test.one", "test.two", "test.three"] as const).map((key, i) => (
        <p key={key}>
          <b className="sn">{i + 1}</b>
          <Sentence text={say(key)} given={given} />
        </p>
      ))}
      <div className="row">
        <button
          type="button"
          className="go quiet"
          disabled={working}
          onClick={() => makeFile("test")}
        >
          {say("test.print")}
        </button>
      </div>
      <RunNote />
      <Result readings={readings} garment={made.garment} />
    </details>
  );
}
