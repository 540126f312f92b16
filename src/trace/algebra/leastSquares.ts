import { solveLinear } from "./linear.ts";

/** What is to be made small: the residuals of some unknowns, and where to begin. */
export type Problem = {
  readonly residuals: (x: readonly number[]) => readonly number[];
  readonly start: readonly number[];
  /** How large a step in each unknown is small; slopes are taken over it. */
  readonly steps: readonly number[];
  /** At most so many rounds; 60 where none is given. */
  readonly rounds?: number;
};

/** Where the residuals are least, and how they hang on the unknowns there. */
export type Least = {
  readonly at: readonly number[];
  readonly residuals: readonly number[];
  /** Sum of squares of the residuals. */
  readonly sum: number;
};

const ROUNDS = 60;
/** A round that gains less than this share of the sum has settled. */
const SETTLED = 1e-14;
/** Damping of Levenberg and Marquardt: where it begins, and where it gives up. */
const DAMPING = 1e-4;
const MOST_DAMPING = 1e12;

const squared = (values: readonly number[]): number => {
  let sum = 0;
  for (const v of values) sum += v * v;
  return sum;
};

/** Slopes of every residual by every unknown: one column an unknown, by central differences. */
export const slopesOf = (
  { residuals, steps }: Problem,
  x: readonly number[],
): readonly (readonly number[])[] =>
  x.map((value, k) => {
    const step = steps[k] ?? 1e-6;
    const at = (moved: number): readonly number[] =>
      residuals(x.map((v, i) => (i === k ? moved : v)));
    const up = at(value + step);
    const down = at(value - step);
    return up.map((v, i) => (v - (down[i] ?? 0)) / (2 * step));
  });

const dotOf = (a: readonly number[], b: readonly number[]): number => {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += (a[i] ?? 0) * (b[i] ?? 0);
  return sum;
};

/** One damped step from `x`, or null where the damped equations have no answer. */
const stepFrom = (
  columns: readonly (readonly number[])[],
  residuals: readonly number[],
  damping: number,
): readonly number[] | null => {
  const normal = columns.map((a, i) =>
    columns.map((b, k) => dotOf(a, b) * (i === k ? 1 + damping : 1) + (i === k ? 1e-30 : 0)),
  );
  return solveLinear(
    normal,
    columns.map((a) => -dotOf(a, residuals)),
  );
};

/**
 * The unknowns that make the sum of squares least near `start`, by Levenberg's and Marquardt's rule
 * (Nocedal and Wright, Numerical Optimization, 10.3, from memory). For a few dozen unknowns.
 */
export const leastSquares = (problem: Problem): Least => {
  let at = problem.start;
  let residuals = problem.residuals(at);
  let sum = squared(residuals);
  let damping = DAMPING;
  for (let round = 0; round < (problem.rounds ?? ROUNDS); round++) {
    const columns = slopesOf(problem, at);
    let gained = 0;
    while (damping < MOST_DAMPING) {
      const step = stepFrom(columns, residuals, damping);
      const next = step && at.map((v, i) => v + (step[i] ?? 0));
      const there = next && problem.residuals(next);
      const less = there ? squared(there) : Infinity;
      if (next && there && less < sum) {
        gained = sum - less;
        at = next;
        residuals = there;
        sum = less;
        damping = Math.max(1e-12, damping / 10);
        break;
      }
      damping *= 10;
    }
    if (gained <= SETTLED * sum) break;
    damping = Math.min(damping, 1e6);
  }
  return { at, residuals, sum };
};
