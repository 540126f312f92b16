import type { BlockFile } from "../drafting/blockFile.ts";
import type { Choices } from "../drafting/choices.ts";
import { DEFAULT_CHOICES } from "../drafting/data/defaults.ts";
import type { Body, KeptId, MeasureId, Sex } from "../drafting/measures.ts";
import type { Block } from "../drafting/piece.ts";
import type { PaperChoice } from "../export/paperSize.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../export/printChoices.ts";
import type { Mm } from "../geometry/units.ts";

/** A body as far as it has been measured: without chest and height nothing is drafted yet. */
export type WorkBody = {
  readonly id: string;
  readonly name: string;
  /** What the maker calls it by: a voice, a class, nothing. */
  readonly part: string;
  readonly sex: Sex | null;
  readonly measures: { readonly [K in MeasureId | KeptId]?: Mm };
};

/** A block that the maker brought: the file's lines as given, and the block read from them. */
export type BroughtBlock = {
  readonly name: string;
  readonly file: BlockFile;
  readonly block: Block;
  /** The id of the body it was brought for: others are drafted. null: it is used for every body. */
  readonly body: string | null;
};

/** Everything that one piece of work is. One value, replaced whole; it is what a file keeps. */
export type Work = {
  readonly title: string;
  /** Never empty. */
  readonly bodies: readonly [WorkBody, ...WorkBody[]];
  /** Which body is on the table. */
  readonly held: number;
  readonly choices: Choices;
  readonly block: BroughtBlock | null;
  /** False: the block lies by and the measures are drafted. */
  readonly useBlock: boolean;
  readonly paper: PaperChoice;
  /** How it is printed on that paper. */
  readonly print: PrintChoices;
  /** YYYY-MM-DD, printed on the sheets; null prints none. */
  readonly date: string | null;
  /** Stops that the maker signed for: the check's id and why. */
  readonly signed: Readonly<Record<string, string>>;
  /** Steps of making up that are sewn, by body id. */
  readonly sewn: Readonly<Record<string, readonly string[]>>;
};

export const newBody = (id: string): WorkBody => ({
  id,
  name: "",
  part: "",
  sex: null,
  measures: {},
});

export const NEW_WORK: Work = {
  title: "",
  bodies: [newBody("body-1")],
  held: 0,
  choices: DEFAULT_CHOICES,
  block: null,
  useBlock: true,
  paper: "a4",
  print: DEFAULT_PRINT,
  date: null,
  signed: {},
  sewn: {},
};

export const heldBody = (work: Work): WorkBody => work.bodies[work.held] ?? work.bodies[0];

/** Whether the block that was brought is for the body on the table. */
export const isBlockOfBody = (work: Work): boolean =>
  work.block !== null && (work.block.body === null || work.block.body === heldBody(work).id);

/** The body as the core takes it, or null while chest or height is missing. */
export const bodyOf = ({ id, name, sex, measures }: WorkBody): Body | null => {
  const { chest, height } = measures;
  if (chest === undefined || height === undefined) return null;
  return {
    id,
    ...(name === "" ? {} : { name }),
    ...(sex === null ? {} : { sex }),
    measures: { ...measures, chest, height },
  };
};

/** The work with the held body replaced. */
export const withBody = (work: Work, change: (body: WorkBody) => WorkBody): Work => {
  const [first, ...rest] = work.bodies;
  const at = Math.min(work.held, rest.length);
  const bodies: Work["bodies"] = [
    at === 0 ? change(first) : first,
    ...rest.map((body, i) => (i + 1 === at ? change(body) : body)),
  ];
  return { ...work, bodies };
};
