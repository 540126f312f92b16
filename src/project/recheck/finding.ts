import { apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";

/** Something in a report that does not hold: where, by seam or edge, and what is wrong there. */
export type Finding = { readonly where: string; readonly what: string };

/** Paths carry six decimals, so a length read back may be out by a thousandth (method 1.7). */
export const SAME_LENGTH: Mm = 0.01;
/** Ends that are written twice, with four decimals or more, agree to this. */
const SAME_POINT: Mm = 0.001;
/** Ratios are compared finer: they are near 1 (method, section 10). */
export const SAME_RATIO = 0.0005;
/** Notches that meet, and cut lines at their allowance, may be out by this (method, section 10). */
export const SAME_PLACE: Mm = 0.1;

const DECIMALS = 3; // what tells a hundredth of a millimetre apart, in words
export const words = (length: number): string => `${Number(length.toFixed(DECIMALS))} mm`;

export const isApart = (a: Point, b: Point): boolean => apart(a, b) > SAME_POINT;

/** A finding where two numbers that should be one are not. */
export const unlike = (
  where: string,
  what: string,
  [said, measured]: readonly [number, number],
  within: number,
): readonly Finding[] =>
  Math.abs(said - measured) <= within
    ? []
    : [{ where, what: `${what} is given as ${words(said)}, but measures ${words(measured)}.` }];
