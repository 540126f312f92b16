import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Choices } from "../../src/drafting/choices.ts";
import { choirWork } from "../../src/studio/data/choir.ts";
import { setNumber } from "../../src/studio/state/changes.ts";
import { letPinGo, pullTo, takeHold } from "../../src/studio/state/dragging.ts";
import { begun } from "../../src/studio/state/history.ts";
import { useRested } from "../../src/studio/state/rested.ts";
import { put, work } from "../../src/studio/state/store.ts";

const moved = ({ choices }: { readonly choices: Choices }): number =>
  choices.alterations.moveSideSeams.by;
const rested = (): number => moved(useRested.getState().history.present);

beforeEach(() => {
  vi.useFakeTimers();
  put({ history: begun(choirWork()), dragging: false });
});
afterEach(() => {
  vi.useRealTimers();
});

test("what is typed is read at once", () => {
  setNumber("moveSideSeams.by", 20);
  expect(rested()).toBe(20);
});

test("while a pin is pulled the tape and the undo word are left alone until the hand rests", () => {
  const from = moved(work());
  let told = 0;
  const stop = useRested.subscribe(() => told++);
  const pull = takeHold("moveSideSeams.by");
  if (!pull) throw new Error("There is no number to pull.");
  for (const by of [2, 4, 6, 8]) {
    pullTo(pull, by, false);
    vi.advanceTimersByTime(79);
    expect([rested(), told]).toEqual([from, 0]);
  }
  vi.advanceTimersByTime(1);
  expect([rested(), told]).toEqual([moved(work()), 1]);
  expect(rested()).toBeGreaterThan(from);
  stop();
});

test("a pin let go is read at once", () => {
  const pull = takeHold("moveSideSeams.by");
  if (!pull) throw new Error("There is no number to pull.");
  pullTo(pull, 6, false);
  letPinGo();
  expect(rested()).toBe(moved(work()));
});
