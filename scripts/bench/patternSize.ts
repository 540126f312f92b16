import { printFont } from "../../src/cli/assets.ts";
import { filesOf } from "../../src/cli/bodyFiles.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { layOutNest, type Nest } from "../../src/export/nest.ts";
import { nestPdf } from "../../src/export/nestPdf.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import { make } from "../../src/project/make.ts";
import { bodiesOf } from "./bodies.ts";
import { type Row, short } from "./row.ts";

const KB = 1000;
const MOST = 300; // kB
const BODIES = 24;

const NESTED = 16;
const MOST_NESTED = 2000; // kB

/** Sixteen bodies in one file, each in its layer. */
const nestedRow = async (): Promise<Row> => {
  const [first, ...others] = bodiesOf(NESTED).map((body) => make(body, DEFAULT_CHOICES, null));
  if (!first) throw new Error("There are no bodies.");
  const nest: Nest = [first, ...others];
  const sheets = layOutNest(nest, "a4", DEFAULT_PRINT);
  const size = (await nestPdf(nest, sheets, { font: printFont() })).length / KB;
  return {
    what: "sixteen bodies nested on A4",
    measured: `${short(size)} kB`,
    goal: `${MOST_NESTED} kB`,
    isMet: size < MOST_NESTED,
    note: `${sheets.pages.length} sheets`,
  };
};

/** The A4 pattern of one body, the largest of some; and several in one. */
export const benchPatternSize = async (): Promise<readonly Row[]> => {
  const job = {
    choices: DEFAULT_CHOICES,
    block: null,
    paper: "a4",
    print: DEFAULT_PRINT,
    date: null,
    font: printFont(),
  };
  const sizes: number[] = [];
  for (const body of bodiesOf(BODIES)) {
    const { files } = await filesOf(body, { ...job, paper: "a4", print: DEFAULT_PRINT });
    sizes.push((files["pattern.pdf"]?.length ?? Number.NaN) / KB);
  }
  const largest = Math.max(...sizes);
  return [
    {
      what: "the A4 pattern of one body",
      measured: `${short(largest)} kB`,
      goal: `${MOST} kB`,
      isMet: largest < MOST,
      note: `the largest of ${BODIES}`,
    },
    await nestedRow(),
  ];
};
