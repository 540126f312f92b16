import { useEffect } from "react";
import { Late, late } from "../guide/Late.tsx";
import { nextRegion } from "../shell/keys.ts";
import { DoctorStep } from "./DoctorStep.tsx";
import { DrawingStep } from "./DrawingStep.tsx";
import { EdgesStep } from "./EdgesStep.tsx";
import { OwnShell } from "./OwnShell.tsx";
import { redoOwn, undoOwn, useOwn } from "./state.ts";
import { TapeStep } from "./TapeStep.tsx";
import { TurningsStep } from "./TurningsStep.tsx";
import { useStepInHand } from "./useOpenSteps.ts";
import { WayStep } from "./WayStep.tsx";

/** Undo belongs to what is typed while it is typed, where that is a text and no number. */
const isText = (target: EventTarget | null): boolean =>
  target instanceof HTMLTextAreaElement ||
  (target instanceof HTMLInputElement &&
    target.type === "text" &&
    target.getAttribute("role") !== "spinbutton");

/** Undo, redo and the way from region to region, as in the studio. */
const onKey = (event: KeyboardEvent): void => {
  if (event.defaultPrevented) return;
  const key = event.key.toLowerCase();
  if (key === "f6") nextRegion(event.shiftKey);
  else if ((event.ctrlKey || event.metaKey) && key === "z" && !isText(event.target)) {
    if (event.shiftKey) redoOwn();
    else undoOwn();
  } else if ((event.ctrlKey || event.metaKey) && key === "y") redoOwn();
  else return;
  event.preventDefault();
};

/** What was done last, for a screen reader. */
function OwnSettled() {
  const step = useOwn((s) => s.history.past.at(-1)?.name);
  return (
    <div className="vh" aria-live="polite" data-settled-own>
      {step ?? ""}
    </div>
  );
}

const PhotoWay = late(() =>
  import("../photo/PhotoWay.tsx").then(({ PhotoWay: photo }) => ({ default: photo })),
);

/** Step and way in hand. */
function OpenStep() {
  const step = useStepInHand();
  const way = useOwn((s) => s.history.present.way);
  if (step === "pieces" && way === "drawing") return <DrawingStep />;
  if (step === "pieces" && way === "tape") return <TapeStep />;
  if (step === "pieces" && way === "photo") {
    return (
      <Late>
        <PhotoWay />
      </Late>
    );
  }
  if (step === "edges") return <EdgesStep />;
  if (step === "doctor") return <DoctorStep />;
  if (step === "turnings") return <TurningsStep />;
  return <WayStep />;
}

/** The door for a block of one's own: way, pieces, edges, turnings, doctor. */
export function OwnBlock() {
  useEffect(() => {
    addEventListener("keydown", onKey);
    return () => removeEventListener("keydown", onKey);
  }, []);
  return (
    <>
      <OwnShell>
        <OpenStep />
      </OwnShell>
      <OwnSettled />
    </>
  );
}
