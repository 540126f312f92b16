import type { Chapter } from "../chapters/chapters.ts";
import { CHAPTERS } from "../chapters/chapters.ts";
import { type FieldId, fieldOf, isField } from "../fields/fields.ts";
import { say } from "../words/say.ts";
import { labelOf } from "./changes.ts";
import { print, printField } from "./print.ts";
import { type Notice, put, studio, work } from "./store.ts";

export const tell = (text: string, more: Partial<Notice> = {}): void =>
  put({ notice: { text, urgent: false, ...more } });

/** A refused number goes back to its last good value when its chapter is left, and is told once. */
const putBack = (): string => {
  const { refused } = studio();
  const left: readonly FieldId[] = Object.keys(refused).filter(isField);
  return left
    .map((id) => {
      const kept = fieldOf(id).read(work());
      const shown = kept === null ? say("notGiven") : printField(id, kept, print());
      return say("refuse.leaving", {
        label: labelOf(id),
        kept: shown,
        typed: refused[id]?.typed ?? "",
      });
    })
    .join(" ");
};

export const goTo = (chapter: Chapter): void => {
  const said = putBack();
  put({
    chapter,
    refused: {},
    lit: null,
    heldPiece: null,
    measuring: false,
    atDoors: false,
    pageFolded: false,
  });
  if (said !== "") tell(said);
};

export const goToNumber = (place: number): void => {
  const chapter = CHAPTERS[place - 1];
  if (chapter) goTo(chapter);
};
