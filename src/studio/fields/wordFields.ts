import { sizeNames, sizeOf } from "../../drafting/sizes.ts";
import { PAPER_NAMES, PAPERS } from "../../export/data/paper.ts";
import { heldBody, isBlockOfBody, type Work, withBody } from "../../project/work.ts";
import { BODY_CLOTHS, RIBS } from "../data/cloths.ts";
import { blockOf } from "../state/made.ts";
import type { Print } from "../state/print.ts";
import type { WordKey } from "../words/en.ts";
import type { Say } from "../words/say.ts";
import { withVMethod } from "./alterationFields.ts";
import { withBand } from "./bandFields.ts";
import { withBodyCloth, withRib } from "./clothFields.ts";
import { isOwnSize, ownSizeOf, withPaper, withPrint } from "./printFields.ts";

export type Option = {
  readonly value: string;
  readonly text: string;
  /** Options of one kind stand together under its name. */
  readonly group?: string;
};
type Speech = { readonly say: Say; readonly print: Print };

/** A word that the maker may change: its options in words, and what each does to the work. */
export type WordField = {
  readonly label: WordKey;
  readonly options: (speech: Speech, work: Work) => readonly Option[];
  readonly read: (work: Work) => string;
  readonly write: (work: Work, value: string) => Work;
};

const fixed =
  (...pairs: readonly (readonly [string, WordKey])[]): WordField["options"] =>
  ({ say }) =>
    pairs.map(([value, key]) => ({ value, text: say(key) }));

const sex: WordField = {
  label: "measures.sex",
  options: fixed(
    ["all", "measures.sex.all"],
    ["female", "measures.sex.female"],
    ["male", "measures.sex.male"],
  ),
  read: (work) => heldBody(work).sex ?? "all",
  write: (work, value) =>
    withBody(work, (body) => ({
      ...body,
      sex: value === "female" || value === "male" ? value : null,
    })),
};

const heightWord = (id: string): WordKey => {
  if (id.endsWith("short")) return "measures.size.short";
  return id.endsWith("tall") ? "measures.size.tall" : "measures.size.regular";
};

const size: WordField = {
  label: "measures.size.label",
  options: ({ say, print }) => [
    { value: "", text: say("measures.size.none") },
    ...sizeNames().map((id) => {
      const key = id.startsWith("W") ? "measures.size.women" : "measures.size.men";
      const chest = print.length(sizeOf(id)?.body.measures.chest ?? 0);
      return {
        value: id,
        text: say(key, { id: id.split("-")[0] ?? id, height: say(heightWord(id)), chest }),
      };
    }),
  ],
  read: () => "",
  write: (work, value) => {
    const found = sizeOf(value);
    if (!found) return work;
    const { measures, sex: of } = found.body;
    return withBody(work, (body) => ({ ...body, sex: of ?? null, measures }));
  },
};

const bodyCloth: WordField = {
  label: "cloth.preset",
  options: ({ say }) => [
    ...BODY_CLOTHS.map(({ id, name }) => ({
      value: id,
      text: say(name),
      group: say("cloth.preset.practice"),
    })),
    { value: "own", text: say("cloth.preset.own") },
  ],
  read: ({ choices }) =>
    BODY_CLOTHS.find(({ stretch }) => stretch === choices.cloth.body.stretch)?.id ?? "own",
  write: (work, value) => {
    const found = BODY_CLOTHS.find(({ id }) => id === value);
    if (!found) return work;
    return { ...work, choices: withBodyCloth(work.choices, { stretch: found.stretch }) };
  },
};

const rib: WordField = {
  label: "rib.preset",
  options: ({ say }) => [
    ...RIBS.map(({ id, name }) => ({
      value: id,
      text: say(name),
      group: say("cloth.preset.practice"),
    })),
    { value: "own", text: say("rib.preset.own") },
  ],
  read: ({ choices }) =>
    RIBS.find(
      ({ stretch, recovery }) =>
        stretch === choices.cloth.rib.stretch && recovery === choices.cloth.rib.recovery,
    )?.id ?? "own",
  write: (work, value) => {
    const found = RIBS.find(({ id }) => id === value);
    if (!found) return work;
    const { stretch, recovery } = found;
    return { ...work, choices: withRib(work.choices, { stretch, recovery }) };
  },
};

const turned: WordField = {
  label: "cloth.turned.label",
  options: fixed(["along", "cloth.turned.along"], ["across", "cloth.turned.across"]),
  read: ({ choices }) => (choices.cloth.body.turned ? "across" : "along"),
  write: (work, value) => ({
    ...work,
    choices: withBodyCloth(work.choices, { turned: value === "across" }),
  }),
};

const source: WordField = {
  label: "block.source",
  options: ({ say }, work) => [
    { value: "measures", text: say("block.source.measures") },
    ...(isBlockOfBody(work) ? [{ value: "own", text: say("block.source.own") }] : []),
  ],
  read: (work) => (blockOf(work) ? "own" : "measures"),
  write: (work, value) => ({ ...work, useBlock: value === "own" }),
};

const method: WordField = {
  label: "alter.method",
  options: fixed(["true", "alter.method.true"], ["cut-away", "alter.method.cut-away"]),
  read: ({ choices }) => choices.alterations.vInsert.method,
  write: (work, value) => ({
    ...work,
    choices: withVMethod(work.choices, value === "cut-away" ? "cut-away" : "true"),
  }),
};

/** What a ratio of one's own starts from: the middle of the survey's bodies (method, section 9). */
const USUAL_RATIO = 0.8;

const mode: WordField = {
  label: "ribs.mode",
  options: fixed(["found", "ribs.mode.found"], ["own", "ribs.mode.own"]),
  read: ({ choices }) => (choices.bands.neckband.ratio === null ? "found" : "own"),
  write: (work, value) => ({
    ...work,
    choices: withBand(work.choices, "neckband", { ratio: value === "own" ? USUAL_RATIO : null }),
  }),
};

const share: WordField = {
  label: "ribs.share.label",
  options: fixed(["ring", "ribs.share.ring"], ["even", "ribs.share.even"]),
  read: ({ choices }) => choices.bands.neckband.share,
  write: (work, value) => ({
    ...work,
    choices: withBand(work.choices, "neckband", { share: value === "even" ? "even" : "ring" }),
  }),
};

const OWN_SIZE = "own";

const paper: WordField = {
  label: "paper.name",
  options: ({ say }) => [
    ...PAPER_NAMES.map((name) => ({
      value: name,
      text:
        PAPERS[name].height === null
          ? say("paper.roll", { width: PAPERS[name].width })
          : PAPERS[name].title,
    })),
    { value: OWN_SIZE, text: say("paper.own") },
  ],
  read: ({ paper: now }) => (isOwnSize(now) ? OWN_SIZE : now),
  write: (work, value) =>
    withPaper(
      work,
      PAPER_NAMES.find((name) => name === value) ??
        (isOwnSize(work.paper) ? work.paper : ownSizeOf(work.paper)),
    ),
};

const turn: WordField = {
  label: "paper.turn",
  options: fixed(
    ["portrait", "paper.turn.portrait"],
    ["landscape", "paper.turn.landscape"],
    ["fewest", "paper.turn.fewest"],
  ),
  read: (work) => work.print.turn,
  write: (work, value) =>
    withPrint(work, {
      turn: value === "landscape" || value === "fewest" ? value : "portrait",
    }),
};

const join: WordField = {
  label: "paper.join",
  options: fixed(["overlap", "paper.join.overlap"], ["butt", "paper.join.butt"]),
  read: (work) => work.print.join,
  write: (work, value) => withPrint(work, { join: value === "butt" ? "butt" : "overlap" }),
};

const WORD_FIELDS = {
  "body.sex": sex,
  "body.size": size,
  "cloth.preset": bodyCloth,
  "rib.preset": rib,
  "body.turned": turned,
  "block.source": source,
  "vInsert.method": method,
  "neckband.mode": mode,
  "neckband.share": share,
  "paper.name": paper,
  "print.turn": turn,
  "print.join": join,
} as const satisfies Record<string, WordField>;

export type WordFieldId = keyof typeof WORD_FIELDS;
export const isWordField = (id: string): id is WordFieldId => Object.hasOwn(WORD_FIELDS, id);
export const wordField = (id: WordFieldId): WordField => WORD_FIELDS[id];
