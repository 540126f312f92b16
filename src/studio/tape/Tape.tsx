import { type KeyboardEvent, memo, useCallback, useState } from "react";
import type { Check } from "../../checks/check.ts";
import { drawnOf } from "../state/made.ts";
import { usePrint } from "../state/print.ts";
import { useRested } from "../state/rested.ts";
import { put, studio, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { Card } from "./Card.tsx";
import { Cell } from "./Cell.tsx";
import { checkFigure, checkName } from "./checkWords.ts";
import type { State } from "./Mark.tsx";
import { Tip } from "./Tip.tsx";
import { Worst } from "./Worst.tsx";
import { WAITING } from "./waiting.ts";

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

type CellsProps = {
  readonly checks: readonly Check[];
  readonly press: (at: HTMLElement) => void;
};

function Cells({ checks, press }: CellsProps) {
  const say = useSay();
  const p = usePrint();
  const words = useStudio((s) => s.words);
  return checks.map((check) => (
    <Cell
      key={check.id}
      id={check.id}
      state={check.verdict}
      name={checkName(check.id, words, say)}
      figure={checkFigure(check, p, say)}
      press={press}
    />
  ));
}

/** Before there is a body: the checks that every garment has, dotted. */
function WaitingCells() {
  const say = useSay();
  const words = useStudio((s) => s.words);
  const figure = say("tape.waitFor");
  return WAITING.map((id) => (
    <Cell
      key={id}
      id={id}
      state="waits"
      name={checkName(id, words, say)}
      figure={figure}
      press={null}
    />
  ));
}

const TapeOf = memo(function TapeOf({ checks }: { readonly checks: readonly Check[] | null }) {
  const say = useSay();
  const open = useStudio((s) => s.openCheck);
  const [left, setLeft] = useState(0);
  const [spread, setSpread] = useState(false);
  const press = useCallback((cell: HTMLElement) => {
    const id = cell.dataset["check"] ?? null;
    setLeft(cardLeft(cell));
    put({ openCheck: studio().openCheck === id ? null : id });
  }, []);
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
      <ol>{checks ? <Cells checks={checks} press={press} /> : <WaitingCells />}</ol>
      {worst ? <Worst check={worst} /> : null}
    </section>
  );
});

/** A ruled tape along the foot of every chapter: one cell a check, in working order. */
export function Tape() {
  const { present } = useRested(({ history }) => history);
  return <TapeOf checks={drawnOf(present).made?.checks ?? null} />;
}
