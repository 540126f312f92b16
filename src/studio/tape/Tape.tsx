import { type KeyboardEvent, useState } from "react";
import type { Check } from "../../checks/check.ts";
import { useMade } from "../state/made.ts";
import { usePrint } from "../state/print.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { Card } from "./Card.tsx";
import { checkFigure, checkName } from "./checkWords.ts";
import { Mark, type State } from "./Mark.tsx";
import { useRested } from "./useRested.ts";

type CellProps = {
  readonly id: string;
  readonly state: State;
  readonly name: string;
  readonly figure: string;
  readonly press: ((at: HTMLElement) => void) | null;
};

function Cell({ id, state, name, figure, press }: CellProps) {
  const say = useSay();
  const open = useStudio((s) => s.openCheck === id);
  return (
    <li className={`${state}${open ? " open" : ""}`}>
      <button
        type="button"
        aria-expanded={press ? open : undefined}
        disabled={!press}
        data-check={id}
        onClick={(event) => press?.(event.currentTarget)}
      >
        <span className="v1">
          <Mark state={state} />
          {say(`verdict.${state}`)}
        </span>
        <span className="nm">{name}</span>
        <span className="v">{figure}</span>
      </button>
    </li>
  );
}

const step = (event: KeyboardEvent<HTMLElement>): void => {
  const by = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
  if (by === undefined) return;
  const cells = [...event.currentTarget.querySelectorAll<HTMLElement>("li button")];
  const next = cells[cells.findIndex((cell) => cell.matches(":focus")) + by];
  if (!next) return;
  event.preventDefault();
  next.focus();
};

const WORST: readonly State[] = ["stop", "attend", "sound"];

const worstOf = (checks: readonly Check[]): Check | null =>
  WORST.flatMap((state) => checks.filter((check) => check.verdict === state))[0] ?? null;

/** Checks that wait for a body: the ones every garment has. */
const WAITING = [
  "raglan-front-match",
  "raglan-back-match",
  "side-match",
  "underarm-match",
  "neckline-turn",
  "underarm-turn",
  "chest-ease",
  "head-passes",
  "hand-passes-cuff",
  "hem-band-passes",
  "v-insert-match",
];

type TipProps = {
  readonly checks: readonly Check[] | null;
  readonly spread: () => void;
  readonly openWorst: () => void;
};

function Tip({ checks, spread, openWorst }: TipProps) {
  const say = useSay();
  if (!checks) {
    return (
      <div className="tip">
        <b>{say("tape.count", { all: WAITING.length })}</b>
        {say("tape.wait")}
        <br />
        {say("tape.waitFor")}
      </div>
    );
  }
  const count = (state: State) => checks.filter(({ verdict }) => verdict === state).length;
  const rest = say("tape.rest", { attend: count("attend"), stop: count("stop") });
  return (
    <div className="tip">
      <b>{say("tape.count", { all: checks.length })}</b>
      {say("tape.sound", { n: count("sound") })}
      <br />
      <span className="rest">
        {count("attend") + count("stop") === 0 ? (
          rest
        ) : (
          <button type="button" className="plainLink" onClick={openWorst}>
            {rest}
          </button>
        )}
        <br />
      </span>
      <button type="button" className="plainLink onlyNarrow" onClick={spread}>
        {say("tape.all")}
      </button>
    </div>
  );
}

function Worst({ check }: { readonly check: Check }) {
  const say = useSay();
  const p = usePrint();
  const words = useStudio((s) => s.words);
  return (
    <div className={`narrowTape ${check.verdict}`}>
      <span className="v1">
        <Mark state={check.verdict} />
        {say(`verdict.${check.verdict}`)}
      </span>
      <span>{`${checkName(check.id, words, say)}, ${checkFigure(check, p, say)}`}</span>
    </div>
  );
}

/** The worst check brought into sight and opened, however far along the tape it stands. */
const openWorst = (id: string): void => {
  const cell = document.querySelector<HTMLElement>(`[data-check="${id}"]`);
  cell?.scrollIntoView({ inline: "center", block: "nearest" });
  cell?.click();
};

/** Where a card stands: joined to its cell, and whole on the screen. */
const cardLeft = (cell: HTMLElement): number => {
  const tape = cell.closest(".tape")?.getBoundingClientRect();
  if (!tape) return 0;
  const left = cell.getBoundingClientRect().left - tape.left;
  return Math.max(8, Math.min(left - 1.5, tape.width - 440));
};

/** A ruled tape along the foot of every chapter: one cell a check, in working order. */
export function Tape() {
  const say = useSay();
  const p = usePrint();
  const words = useStudio((s) => s.words);
  const made = useRested(useMade());
  const open = useStudio((s) => s.openCheck);
  const [left, setLeft] = useState(0);
  const [spread, setSpread] = useState(false);
  const checks = made?.checks ?? null;
  const opened = checks?.find(({ id }) => id === open) ?? null;
  const worst = checks && worstOf(checks);
  return (
    <section
      className={`tape${spread ? " spread" : ""}`}
      aria-label={say("tape.name")}
      data-region
      onKeyDown={step}
    >
      {opened ? <Card check={opened} left={left} /> : null}
      <Tip
        checks={checks}
        spread={() => setSpread(!spread)}
        openWorst={() => worst && openWorst(worst.id)}
      />
      <ol>
        {checks
          ? checks.map((check) => (
              <Cell
                key={check.id}
                id={check.id}
                state={check.verdict}
                name={checkName(check.id, words, say)}
                figure={checkFigure(check, p, say)}
                press={(cell) => {
                  setLeft(cardLeft(cell));
                  put({ openCheck: open === check.id ? null : check.id });
                }}
              />
            ))
          : WAITING.map((id) => (
              <Cell
                key={id}
                id={id}
                state="waits"
                name={checkName(id, words, say)}
                figure={say("tape.waitFor")}
                press={null}
              />
            ))}
      </ol>
      {worst ? <Worst check={worst} /> : null}
    </section>
  );
}
