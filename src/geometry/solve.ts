import { SOLVED } from "./tolerance.ts";

const STEPS = 200;

/** The function of one unknown, and the bracket that holds its one root. */
export type Equation = {
  readonly of: (x: number) => number;
  readonly low: number;
  readonly high: number;
};

/**
 * The root of an equation in its bracket, or null where both ends have the same sign. False
 * position with the Illinois guard, and halves where that is slow; ends at |f| ≤ 1e-10 (method 1.7).
 */
export const solve = ({ of, low, high }: Equation): number | null => {
  let [a, b] = [low, high];
  let [fa, fb] = [of(a), of(b)];
  if (Math.abs(fa) <= SOLVED) return a;
  if (Math.abs(fb) <= SOLVED) return b;
  if (fa < 0 === fb < 0) return null;
  for (let step = 0; step < STEPS; step++) {
    const x = step % 12 === 11 ? (a + b) / 2 : b - (fb * (b - a)) / (fb - fa);
    const fx = of(x);
    if (Math.abs(fx) <= SOLVED || x === a || x === b) return x;
    if (fx < 0 === fb < 0) fa /= 2;
    else [a, fa] = [b, fb];
    [b, fb] = [x, fx];
  }
  return b;
};

/** Secant steps before the bracket is asked. */
const SECANTS = 12;

/**
 * The root of an equation whose answer is nearly known: secant steps from `near`, and the bracket
 * where they leave it or do not settle. The same root as `solve` where the bracket holds one, found
 * sooner; null where the steps find none and the ends of the bracket have the same sign.
 */
export const solveNear = (equation: Equation, near: number): number | null => {
  const { of, low, high } = equation;
  let a = Math.min(high, Math.max(low, near));
  let fa = of(a);
  if (Math.abs(fa) <= SOLVED) return a;
  let b = Math.min(high, Math.max(low, a - fa));
  for (let step = 0; step < SECANTS && b !== a; step++) {
    const fb = of(b);
    if (Math.abs(fb) <= SOLVED) return b;
    const next = b - (fb * (b - a)) / (fb - fa);
    if (!(next >= low && next <= high)) break;
    a = b;
    fa = fb;
    b = next;
  }
  return solve(equation);
};
