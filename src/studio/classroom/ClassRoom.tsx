import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import { lesson } from "../../guide/lesson.ts";
import { useWakeLock } from "../guide/useWakeLock.ts";
import { useSize } from "../table/useSize.ts";
import { useSay } from "../words/say.ts";
import { ClassFoot, ClassHead } from "./ClassBars.tsx";
import { ClassDrawing } from "./ClassDrawing.tsx";
import { ClassWords } from "./ClassWords.tsx";
import { CLASS_START, type ClassState, changeOfKey } from "./classKeys.ts";
import { KeepThese } from "./KeepThese.tsx";
import { PointerRing } from "./PointerRing.tsx";
import { asksToKeep, leaveClass, stayInClass, turnFullScreen } from "./teaching.ts";

type Change = (state: ClassState, last: number) => ClassState;

/** More questions than this take more of the page. */
const MUCH = 2;

/** Space on a button presses the button, and nothing else. */
const isForButton = ({ key, target }: KeyboardEvent): boolean =>
  (key === " " || key === "Enter") && target instanceof HTMLButtonElement;

/** To the first number of the sentence: "C" as in change. */
const toNumber = (): void => document.querySelector<HTMLElement>("[data-class-field]")?.focus();

const PRESSES: Readonly<Record<string, () => void>> = {
  escape: leaveClass,
  c: toNumber,
  f: turnFullScreen,
};

/** The whole page is the class's: the teacher's keys work wherever the focus is. */
const useClassKeys = (turn: (change: Change) => void): void => {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.ctrlKey || event.metaKey || event.altKey || isForButton(event)) return;
      const press = PRESSES[event.key.toLowerCase()];
      const change = changeOfKey(event.key);
      if (asksToKeep()) {
        if (event.key !== "Escape") return;
        stayInClass();
        event.preventDefault();
        return;
      }
      if (press) press();
      else if (change) turn(change);
      else return;
      event.preventDefault();
    };
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, [turn]);
};

/** Left again, the focus goes back to what opened the class. */
const useFocusBack = (): void => {
  useEffect(
    () => () => {
      requestAnimationFrame(() => {
        const openers = [...document.querySelectorAll<HTMLElement>("[data-opens-class]")];
        openers.find((opener) => opener.offsetParent !== null)?.focus();
      });
    },
    [],
  );
};

/** The step-through for a projector: one alteration at a time. */
export function ClassRoom({ garment }: { readonly garment: Garment }) {
  const say = useSay();
  const steps = useMemo(() => lesson(garment), [garment]);
  const [state, setState] = useState(CLASS_START);
  const last = steps.length - 1;
  const turn = useCallback((change: Change) => setState((was) => change(was, last)), [last]);
  const room = useRef<HTMLDivElement>(null);
  const size = useSize(room);
  useClassKeys(turn);
  useFocusBack();
  useWakeLock();
  const step = steps[state.at];
  if (!step) return null;
  return (
    <main
      className={`classRoom${step.questions.length > MUCH ? " asksMuch" : ""}`}
      data-theme="projector"
      data-ground={state.black ? "black" : "white"}
      aria-label={say("class.name")}
    >
      <ClassHead steps={steps} state={state} turn={turn} toNumber={toNumber} />
      <ClassWords step={step} state={state} />
      <div ref={room} className="classTable">
        {size.width > 0 ? (
          <ClassDrawing step={step} plays={state.plays} numbers={state.numbers} size={size} />
        ) : null}
      </div>
      <ClassFoot steps={steps} state={state} turn={turn} />
      {state.blank ? (
        <p className="classBlank" role="status">
          <span className="vh">{say("class.blank")}</span>
        </p>
      ) : null}
      <KeepThese />
      <PointerRing />
    </main>
  );
}
