import { performance } from "node:perf_hooks";

export const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
};

/** Keeps what a timed call gave, so that the engine cannot leave the call out. */
const kept: { last: unknown } = { last: null };
export const keep = (value: unknown): void => {
  kept.last = value;
};

export type Contender = { readonly name: string; readonly run: () => void };

export type Timed = {
  readonly name: string;
  /** Median of the rounds, in µs a pass. */
  readonly micros: number;
  /** Median over the rounds of this pass over the first contender's, in the same round. */
  readonly ratio: number;
};

const once = (run: () => void): number => {
  const began = performance.now();
  run();
  return (performance.now() - began) * 1000;
};

/**
 * All contenders in turn, round after round: whatever else the machine does falls on all of them,
 * so that the ratios hold where the times themselves do not.
 */
export const race = (
  contenders: readonly Contender[],
  rounds: number,
  warm = 3,
): readonly Timed[] => {
  for (let i = 0; i < warm; i++) for (const { run } of contenders) run();
  const times = contenders.map((): number[] => []);
  for (let i = 0; i < rounds; i++) {
    for (const [k, { run }] of contenders.entries()) times[k]?.push(once(run));
  }
  return contenders.map(({ name }, k) => {
    const mine = times[k] ?? [];
    return {
      name,
      micros: median(mine),
      ratio: median(mine.map((time, i) => time / (times[0]?.[i] ?? Number.NaN))),
    };
  });
};
