import { performance } from "node:perf_hooks";
import { printFont } from "../../src/cli/assets.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import { classPdf, handoutPdf } from "../../src/export/handout.ts";
import type { PrintOptions } from "../../src/export/printPage.ts";
import { MOST_PUPILS } from "../../src/project/classFile.ts";
import { make } from "../../src/project/make.ts";
import { bodiesOf } from "./bodies.ts";
import { type Row, short } from "./row.ts";
import { keep } from "./timing.ts";

/** Goal of the issue, in seconds: the handouts of a whole class. */
const WITHIN = 20;

const secondsOf = async (work: () => Promise<unknown>): Promise<number> => {
  const start = performance.now();
  keep(await work());
  return (performance.now() - start) / 1000;
};

const row = (what: string, seconds: number): Row => ({
  what,
  measured: `${short(seconds)} s`,
  goal: `under ${WITHIN} s`,
  isMet: seconds < WITHIN,
});

/** A class of forty: a handout each, and the class's sheets; drafting included. */
export const benchHandouts = async (): Promise<readonly Row[]> => {
  const bodies = bodiesOf(MOST_PUPILS);
  const options: PrintOptions = { font: printFont(), paper: "a4", language: "en" };
  const handouts = await secondsOf(async () => {
    for (const body of bodies) {
      const made = make(body, DEFAULT_CHOICES, null);
      keep(await handoutPdf(made, { ...options, answers: true }));
    }
  });
  const sheets = await secondsOf(() =>
    classPdf(
      "class",
      bodies.map((body) => make(body, DEFAULT_CHOICES, null)),
      options,
    ),
  );
  return [row("40 handouts with answers", handouts), row("40 pupils' sheets in one file", sheets)];
};
