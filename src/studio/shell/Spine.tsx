import { type KeyboardEvent, useEffect, useRef } from "react";
import { CHAPTERS } from "../chapters/chapters.ts";
import { bodyName, change } from "../state/changes.ts";
import { goTo } from "../state/going.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { Foot } from "./Foot.tsx";

const MOVES: Readonly<Record<string, (at: number, all: number) => number>> = {
  ArrowDown: (at) => at + 1,
  ArrowRight: (at) => at + 1,
  ArrowUp: (at) => at - 1,
  ArrowLeft: (at) => at - 1,
  Home: () => 0,
  End: (_, all) => all - 1,
};

function Chapters() {
  const say = useSay();
  const open = useStudio((s) => s.chapter);
  const list = useRef<HTMLOListElement>(null);
  // On one leaf the thumb-cuts stand in a row that scrolls: the open one comes into sight.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the open chapter is the reason to scroll
  useEffect(() => {
    const cut = list.current?.querySelector("[aria-current]");
    cut?.scrollIntoView({ block: "nearest", inline: "center" });
  }, [open]);
  const onKeyDown = (event: KeyboardEvent) => {
    const buttons = [...(list.current?.querySelectorAll("button") ?? [])];
    const at = buttons.findIndex((button) => button.matches(":focus"));
    const move = MOVES[event.key];
    if (!move || at < 0) return;
    event.preventDefault();
    buttons[Math.min(buttons.length - 1, Math.max(0, move(at, buttons.length)))]?.focus();
  };
  return (
    <ol ref={list} onKeyDown={onKeyDown}>
      {CHAPTERS.map((chapter, i) => (
        <li key={chapter}>
          <button
            type="button"
            className="chapter"
            aria-current={chapter === open ? "page" : undefined}
            aria-label={say(`chapter.${chapter}`)}
            onClick={() => goTo(chapter)}
          >
            <span>{say(`chapter.${chapter}`)}</span>
            <i data-numeral={i + 1} />
          </button>
        </li>
      ))}
    </ol>
  );
}

function Title() {
  const say = useSay();
  const title = useStudio((s) => s.history.present.title);
  return (
    <input
      className="brandSub"
      value={title}
      placeholder={say("work.untitled")}
      aria-label={say("work.title")}
      maxLength={60}
      onChange={(event) =>
        change(
          { ...work(), title: event.target.value },
          () => say("step.word", { what: say("work.title"), to: event.target.value }),
          "title",
        )
      }
    />
  );
}

/** Book cloth with a thumb-cut for each chapter. */
export function Spine() {
  const say = useSay();
  const who = useStudio((s) => bodyName(s.history.present));
  return (
    <nav className="spine cloth" aria-label={say("spine.name")} data-region>
      <div className="brand">
        Ribwright
        <small className="onlyNarrow" translate="no">
          {who}
        </small>
      </div>
      <Title />
      <div className="bands" />
      <Chapters />
      <Foot />
    </nav>
  );
}
