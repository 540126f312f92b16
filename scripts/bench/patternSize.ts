import { printFont } from "../../src/cli/assets.ts";
import { filesOf } from "../../src/cli/bodyFiles.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import { bodiesOf } from "./bodies.ts";
import { type Row, short } from "./row.ts";

const KB = 1000;
const MOST = 300; // kB
const BODIES = 24;

/** The A4 pattern of one body: the largest of some. */
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
  ];
};
