import { performance } from "node:perf_hooks";
import { filesOf } from "../../src/cli/bodyFiles.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";

/** A program of its own, run afresh each time: prints how long its first body took, in ms. */
const began = performance.now();
await filesOf(
  { id: "first", measures: { height: 1660, chest: 960, hip: 1010, neckBase: 372 } },
  {
    choices: DEFAULT_CHOICES,
    block: null,
    paper: "a4",
    print: DEFAULT_PRINT,
    date: null,
    font: null,
  },
);
console.log(performance.now() - began);
