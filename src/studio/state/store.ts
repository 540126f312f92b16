import { create } from "zustand";
import type { PieceName } from "../../drafting/piece.ts";
import { NEW_WORK, type Work } from "../../project/work.ts";
import type { Chapter } from "../chapters/chapters.ts";
import type { FieldId } from "../fields/fields.ts";
import type { View } from "../table/view.ts";
import type { Language } from "../units/printLength.ts";
import type { Unit } from "../units/unit.ts";
import type { CheckSentences } from "../words/checkSentences.ts";
import { en, type Words } from "../words/en.ts";
import { begun, type History } from "./history.ts";

/** A number as typed that was not taken, with the sentence beside it. */
export type Refused = { readonly typed: string; readonly lead: string; readonly cure: string };

export type Theme = "system" | "light" | "dark" | "projector";

/** Something said once over the page; it stays until it is closed or another takes its place. */
export type Notice = {
  readonly text: string;
  readonly urgent: boolean;
  /** A link to be copied by hand. */
  readonly link?: string;
  /** Something to save: what was kept and could not be read. */
  readonly aside?: string;
};

/** Another window wrote the same handbook: its work, and the revision it wrote. */
type Conflict = { readonly theirs: Work; readonly revision: number };

export type Studio = {
  /** The one value that the maker works on, with what was done to it. */
  readonly history: History<Work, string>;
  /** The three doors stand open: nothing is begun, or the maker went back to them. */
  readonly atDoors: boolean;
  readonly chapter: Chapter;
  readonly unit: Unit;
  readonly language: Language;
  readonly words: Words;
  /** What the checks say; null in English, where they speak for themselves, as in the report. */
  readonly sentences: CheckSentences | null;
  readonly theme: Theme;
  readonly oldLines: boolean;
  readonly dimensions: boolean;
  readonly refused: { readonly [K in FieldId]?: Refused };
  /** The number in hand or under the pointer; its lines are drawn heavier. */
  readonly lit: FieldId | null;
  readonly heldPiece: PieceName | null;
  readonly openCheck: string | null;
  readonly readingFacts: boolean;
  readonly measuring: boolean;
  /** On the table of Measures the figure lies in place of the tapes. */
  readonly figureShown: boolean;
  readonly pageFolded: boolean;
  readonly keysShown: boolean;
  readonly dragging: boolean;
  /** null: fitted to the table. */
  readonly view: View | null;
  readonly notice: Notice | null;
  /** Said politely, or at once, to a screen reader. */
  readonly settled: string;
  readonly conflict: Conflict | null;
};

const START: Studio = {
  history: begun(NEW_WORK),
  atDoors: true,
  chapter: "measures",
  unit: "mm",
  language: "en",
  words: en,
  sentences: null,
  theme: "system",
  oldLines: true,
  dimensions: true,
  refused: {},
  lit: null,
  heldPiece: null,
  openCheck: null,
  readingFacts: false,
  measuring: false,
  figureShown: false,
  pageFolded: false,
  keysShown: false,
  dragging: false,
  view: null,
  notice: null,
  settled: "",
  conflict: null,
};

export const useStudio = create<Studio>()(() => START);

export const studio = (): Studio => useStudio.getState();
export const work = (): Work => studio().history.present;
export const put = (change: Partial<Studio>): void => useStudio.setState(change);
