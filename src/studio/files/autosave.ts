import type { Work } from "../../project/work.ts";
import { writeProject } from "../../project/writeProject.ts";
import { change } from "../state/changes.ts";
import { tell } from "../state/going.ts";
import { begun } from "../state/history.ts";
import { put, studio, useStudio, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { type Kept, keep, keptNow } from "./keeping.ts";
import { putAtDoor, takeFromDoor } from "./leaving.ts";
import { read } from "./reading.ts";

/** Written this long after the last change, so that a drag is one writing; in ms. */
const PAUSE = 250;

/** What this window last read or wrote. */
let revision = 0;
let writing: Promise<void> = Promise.resolve();
let waiting: ReturnType<typeof setTimeout> | undefined;
const others = "BroadcastChannel" in globalThis ? new BroadcastChannel("ribwright") : null;

const workIn = async ({ text }: Kept): Promise<Work | null> => {
  const found = await read("kept", text);
  return "work" in found ? found.work : null;
};

/**
 * What the page was left with before the database had it. Where the database was written since, it
 * had it after all, or another window wrote: then nothing is lost there, and this is dropped.
 */
const leftBehind = async (kept: Kept | null): Promise<Work | null> => {
  const left = takeFromDoor();
  if (!left || left.revision !== (kept?.revision ?? 0)) return null;
  return workIn(left);
};

/** Brings back what was kept. What cannot be read is put aside, never written over unseen. */
const restore = async (): Promise<void> => {
  const kept = await keptNow();
  revision = kept?.revision ?? 0;
  const left = await leftBehind(kept);
  const found = left ?? (kept ? await workIn(kept) : null);
  if (found) put({ history: begun(found), atDoors: false });
  else if (kept) tell(say("file.lostSave"), { urgent: true, aside: kept.text });
  if (left) writeNow();
};

/** Another window wrote: what it wrote is set beside what is here, and the maker chooses. */
const meet = async (theirs: Kept): Promise<void> => {
  const found = await workIn(theirs);
  if (!found) return;
  if (writeProject(found) === writeProject(work())) {
    revision = theirs.revision;
    put({ conflict: null });
  } else {
    put({ conflict: { theirs: found, revision: theirs.revision } });
  }
};

const write = async (): Promise<void> => {
  if (studio().conflict) return;
  const outcome = await keep(writeProject(work()), revision);
  if ("theirs" in outcome) {
    await meet(outcome.theirs);
    return;
  }
  revision = outcome.kept.revision;
  takeFromDoor();
  others?.postMessage(revision);
};

const noRoom = (): void => tell(say("file.noRoom"), { urgent: true });

const writeNow = (): void => {
  clearTimeout(waiting);
  waiting = undefined;
  writing = writing.then(write).catch(noRoom);
};

/** A hand that rests on a pin goes on: what it does is written when it lets go. */
const writeRested = (): void => {
  if (studio().dragging) waiting = setTimeout(writeRested, PAUSE);
  else writeNow();
};

/** The page is put away: what is not kept yet is put where it is written at once, then kept. */
const writeLeaving = (): void => {
  if (waiting === undefined || studio().conflict) return;
  putAtDoor(writeProject(work()), revision);
  writeNow();
};

/** The other window's work, shown here; undo brings back what was here. */
export const takeTheirs = (): void => {
  const { conflict } = studio();
  if (!conflict) return;
  revision = conflict.revision;
  put({ conflict: null, refused: {} });
  change(conflict.theirs, () => say("tabs.theirs"));
};

/** What is here is kept, over what the other window wrote. */
export const keepMine = (): void => {
  put({ conflict: null });
  writing = writing
    .then(async () => {
      const outcome = await keep(writeProject(work()), null);
      if ("kept" in outcome) {
        revision = outcome.kept.revision;
        others?.postMessage(revision);
      }
    })
    .catch(noRoom);
};

const onOthersWrote = (): void => {
  keptNow()
    .then((kept) => (kept && kept.revision !== revision ? meet(kept) : undefined))
    .catch(() => undefined);
};

/** Restores the work, then keeps each change on the device. */
export const startAutosave = async (): Promise<void> => {
  await restore().catch(() => undefined);
  useStudio.subscribe((now, before) => {
    if (now.history.present === before.history.present) return;
    clearTimeout(waiting);
    waiting = setTimeout(writeRested, PAUSE);
  });
  // The page may be put away or closed before the pause is over.
  addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") writeLeaving();
  });
  addEventListener("pagehide", writeLeaving);
  if (others) others.onmessage = onOthersWrote;
};
