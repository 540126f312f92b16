import type { FileRead } from "../../project/projectFile.ts";
import { heldBody } from "../../project/work.ts";
import { leaveBringing } from "../ownBlock/bringing.ts";
import { change } from "../state/changes.ts";
import { goTo, tell } from "../state/going.ts";
import { put, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { read, refusalSentence } from "./reading.ts";

/** Puts on the table what was read. Opening is a step like any other: undo takes it back. */
const take = (name: string, found: FileRead): void => {
  if ("refusal" in found) {
    tell(refusalSentence(name, found.refusal), { urgent: true });
    return;
  }
  leaveBringing();
  put({ refused: {}, atDoors: false, view: null, heldPiece: null, openCheck: null });
  if ("work" in found) {
    change(found.work, () => say("step.open", { file: name }));
  } else {
    const block = { ...found.block, body: heldBody(work()).id };
    change({ ...work(), block, useBlock: true }, () => say("step.block"));
    goTo("block");
  }
  tell(say("file.opened", { file: name }));
};

/** A drawing goes to the door for a block of one's own; its reader loads with it. */
const openAsDrawing = (file: File): void => {
  import("../ownBlock/openDrawing.ts").then(
    ({ openDrawing }) => openDrawing(file),
    () => tell(say("late.failed"), { urgent: true }),
  );
};

/** Opens a handbook, a block or a drawing. What cannot be read changes nothing. */
export const openFile = (file: File): void => {
  if (/\.(?:svg|pdf)$/iu.test(file.name)) {
    openAsDrawing(file);
    return;
  }
  file
    .text()
    .then((text) => read(file.name, text))
    .then(
      (found) => take(file.name, found),
      () => tell(refusalSentence(file.name, { why: "broken" }), { urgent: true }),
    );
};
