import { readFileSync } from "node:fs";
import type { Choices } from "../../src/drafting/choices.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Body, Measures } from "../../src/drafting/measures.ts";
import type { PaperName } from "../../src/export/data/paper.ts";
import { layOut } from "../../src/export/layout.ts";
import type { Sheets } from "../../src/export/sheets.ts";
import type { SheetSubject } from "../../src/export/subject.ts";
import { make } from "../../src/project/make.ts";
import { exampleBody } from "../drafting/bodies.ts";

/** The print font, as the command line reads it. */
export const FONT = new Uint8Array(
  readFileSync(new URL("../../assets/fonts/NotoSans-subset.ttf", import.meta.url)),
);

/** A name with letters from all over the font: Latin with accents, Greek, Cyrillic. */
export const ACCENTED = "Zoë Łukasz Șerban Žižka Ångström Ωμέγα Жук";

/** The worked example's body as sheets are made from it, some of its measures or choices changed. */
export const subjectOf = (
  changed: Partial<Measures> = {},
  choices: Choices = DEFAULT_CHOICES,
): SheetSubject => {
  const body: Body = { ...exampleBody(changed), id: "odile", name: ACCENTED };
  return make(body, choices, null);
};

export type Laid = { readonly subject: SheetSubject; readonly sheets: Sheets };

const laid = new WeakMap<SheetSubject, Map<PaperName, Laid>>();
const EXAMPLE = subjectOf();

/** A subject laid out on a paper; the same layout each time it is asked for. */
export const laidOn = (paper: PaperName, subject: SheetSubject = EXAMPLE): Laid => {
  const known = laid.get(subject) ?? new Map<PaperName, Laid>();
  laid.set(subject, known);
  const found = known.get(paper) ?? { subject, sheets: layOut(subject.garment.pieces, paper) };
  known.set(paper, found);
  return found;
};

/** Small, middling and large bodies, and the choices that change pieces most. */
export const SUBJECTS: readonly (readonly [string, SheetSubject])[] = [
  ["the worked example", subjectOf()],
  ["a small body", subjectOf({ chest: 700, hip: 760, height: 1450, upperArm: 215, wrist: 130 })],
  ["a large body", subjectOf({ chest: 1500, hip: 1460, height: 1950, upperArm: 460, wrist: 200 })],
  [
    "cloth that shrinks and is turned",
    subjectOf(
      {},
      {
        ...DEFAULT_CHOICES,
        cloth: {
          ...DEFAULT_CHOICES.cloth,
          body: { stretch: 0.25, shrinkLength: 0.08, shrinkWidth: 0.04, turned: true },
        },
      },
    ),
  ],
  [
    "no V and a shallow neckband",
    subjectOf(
      {},
      {
        ...DEFAULT_CHOICES,
        alterations: {
          ...DEFAULT_CHOICES.alterations,
          vInsert: { ...DEFAULT_CHOICES.alterations.vInsert, on: false },
        },
        bands: {
          ...DEFAULT_CHOICES.bands,
          neckband: { ...DEFAULT_CHOICES.bands.neckband, finishedDepth: 12 },
        },
      },
    ),
  ],
  [
    "a deep V and low bands",
    subjectOf(
      {},
      {
        ...DEFAULT_CHOICES,
        alterations: {
          ...DEFAULT_CHOICES.alterations,
          vInsert: { ...DEFAULT_CHOICES.alterations.vInsert, halfWidth: 10, depth: 200 },
        },
        bands: {
          ...DEFAULT_CHOICES.bands,
          cuff: { cutHeight: 60, ease: 0 },
          hemBand: { cutHeight: 60, ease: 0 },
        },
      },
    ),
  ],
];
