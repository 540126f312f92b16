import { performance } from "node:perf_hooks";
import { filesOf, type Job } from "../../src/cli/bodyFiles.ts";
import { DEFAULT_CHOICES } from "../../src/drafting/data/defaults.ts";
import type { Body } from "../../src/drafting/measures.ts";
import { DEFAULT_PRINT } from "../../src/export/printChoices.ts";
import { make } from "../../src/project/make.ts";
import { bodiesOf } from "./bodies.ts";
import { type Row, short } from "./row.ts";
import { keep, median } from "./timing.ts";

const BODIES = bodiesOf(400);
const WARM_ROUNDS = 6;
const ROUNDS = 8;

/** Goals of the issue, in ms. */
const TO_CHECKS = 0.25;
const TO_REPORT = 0.6;

const JOB: Job = {
  choices: DEFAULT_CHOICES,
  block: null,
  paper: "a4",
  print: DEFAULT_PRINT,
  date: null,
  font: null,
};

/** Median time a body, in ms, once the engine has seen the work. */
const eachTakes = async (job: (body: Body) => unknown): Promise<number> => {
  for (let i = 0; i < WARM_ROUNDS; i++) for (const body of BODIES) keep(await job(body));
  const times: number[] = [];
  for (let i = 0; i < ROUNDS; i++) {
    for (const body of BODIES) {
      const began = performance.now();
      const result = job(body);
      keep(result instanceof Promise ? await result : result);
      times.push(performance.now() - began);
    }
  }
  return median(times);
};

const row = (what: string, measured: number, goal: number): Row => ({
  what,
  measured: `${short(measured)} ms`,
  goal: `${goal} ms`,
  isMet: measured <= goal,
});

/** One body from its measures to its checks, and to the text of its whole report. */
export const benchDrafts = async (): Promise<readonly Row[]> => [
  row(
    "a body, measures to checks, warm, median",
    await eachTakes((body) => make(body, DEFAULT_CHOICES, null)),
    TO_CHECKS,
  ),
  row(
    "a body, measures to the whole report, warm, median",
    await eachTakes((body) => filesOf(body, JOB)),
    TO_REPORT,
  ),
];
