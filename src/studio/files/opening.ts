import type { FileRead } from "../../project/projectFile.ts";
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
    change({ ...work(), block: found.block, useBlock: true }, () => say("step.block"));
    goTo("block");
  }
  tell(say("file.opened", { file: name }));
};

/** Opens a handbook or a block from the device. What cannot be read changes nothing. */
export const openFile = (file: File): void => {
  file
    .text()
    .then((text) => read(file.name, text))
    .then(
      (found) => take(file.name, found),
      () => tell(refusalSentence(file.name, { why: "broken" }), { urgent: true }),
    );
};
