import type { BlockFile } from "../drafting/blockFile.ts";
import { KEPT_IDS, MEASURE_IDS } from "../drafting/measures.ts";
import type { BroughtBlock, Work, WorkBody } from "./work.ts";

/** The version that is written. Older ones are brought up to it when they are read. */
export const PROJECT_VERSION = 3;
export const PROJECT_FORMAT = "ribwright-project";

const bodyForFile = ({ id, name, part, sex, measures }: WorkBody) => ({
  id,
  name,
  part,
  sex,
  // In one order, however they came to be known.
  measures: Object.fromEntries(
    [...MEASURE_IDS, ...KEPT_IDS].flatMap((measure) => {
      const value = measures[measure];
      return value === undefined ? [] : [[measure, value]];
    }),
  ),
});

/** A block in the file format of its own, so that it can be taken out and used alone. */
const ownFormat = ({ unit, pieces, allowances }: BlockFile) => ({
  format: "ribwright-block",
  version: 1,
  unit,
  pieces: {
    front: { edges: pieces.front },
    back: { edges: pieces.back },
    sleeve: { edges: pieces.sleeve },
  },
  ...(allowances ? { allowances } : {}),
});

const blockForFile = ({ name, file, body }: BroughtBlock) => ({
  name,
  ...(body === null ? {} : { body }),
  file: ownFormat(file),
});

/** A block as the text of its file. */
export const writeBlockFile = (file: BlockFile): string =>
  `${JSON.stringify(ownFormat(file), null, 2)}\n`;

/** The work as the text of its file. The same work gives the same text. Lengths in mm. */
export const writeProject = (work: Work, indent = 2): string =>
  `${JSON.stringify(
    {
      format: PROJECT_FORMAT,
      version: PROJECT_VERSION,
      unit: "mm",
      title: work.title,
      bodies: work.bodies.map(bodyForFile),
      held: work.held,
      choices: work.choices,
      block: work.block ? blockForFile(work.block) : null,
      useBlock: work.useBlock,
      paper: work.paper,
      print: work.print,
      date: work.date,
      signed: work.signed,
      sewn: work.sewn,
    },
    null,
    indent,
  )}\n`;
