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
