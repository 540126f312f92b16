import { createStore, get, set } from "idb-keyval";
import { begun } from "../state/history.ts";
import { NEW_OWN, type OwnBlock } from "./ownBlock.ts";
import { putOwn, STEPS, type Step, useOwn } from "./state.ts";

/** Apart from the handbook's room: what is half done belongs to the device, not to one work. */
const room = createStore("ribwright-own", "block");
const KEY = "begun";
/** Raised when what is kept takes another shape: what an older page kept is then left alone. */
const VERSION = 3;
/** Written this long after the last change, so that a drag is one writing; in ms. */
const PAUSE = 250;

type KeptOwn = { readonly version: typeof VERSION; readonly block: OwnBlock; readonly step: Step };

const isKept = (value: unknown): value is KeptOwn =>
  typeof value === "object" &&
  value !== null &&
  "version" in value &&
  value.version === VERSION &&
  "block" in value &&
  typeof value.block === "object" &&
  "step" in value &&
  STEPS.some((step) => step === value.step);

const write = (): void => {
  const { history, step } = useOwn.getState();
  const kept: KeptOwn = { version: VERSION, block: history.present, step };
  // Without room for it, what is begun lasts until the page is closed.
  set(KEY, kept, room).catch(() => undefined);
};

let waiting: ReturnType<typeof setTimeout> | undefined;

const writeNow = (): void => {
  if (waiting === undefined) return;
  clearTimeout(waiting);
  waiting = undefined;
  write();
};

let started: Promise<void> | null = null;

const start = async (): Promise<void> => {
  const found: unknown = await get(KEY, room).catch(() => null);
  if (isKept(found) && useOwn.getState().history.present === NEW_OWN) {
    putOwn({ history: begun(found.block), step: found.step });
  }
  useOwn.subscribe((now, before) => {
    if (now.history.present === before.history.present && now.step === before.step) return;
    clearTimeout(waiting);
    waiting = setTimeout(writeNow, PAUSE);
  });
  addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") writeNow();
  });
  addEventListener("pagehide", writeNow);
};

/** Brings back what was begun, once, then keeps each change on the device. */
export const ownKept = (): Promise<void> => {
  started ??= start();
  return started;
};
