import core from "paper/dist/paper-core.js";
import type { Cubic } from "../../src/geometry/segment.ts";

/** The eight numbers of a curve, as paper's own arithmetic takes them. */
export type Values = readonly number[];

type Statics = {
  readonly getLength: (values: Values, from?: number, to?: number) => number;
  readonly getTimeAt: (values: Values, offset: number) => number;
  readonly getPoint: (values: Values, t: number) => { readonly x: number; readonly y: number };
};

// Not in paper's types: the same arithmetic as its curve objects, without making one, so quicker.
export const { Curve: paperCurve } = core as unknown as { readonly Curve: Statics };

export const valuesOf = ({ start: a, startHandle: b, endHandle: c, end: d }: Cubic): Values => [
  a.x,
  a.y,
  b.x,
  b.y,
  c.x,
  c.y,
  d.x,
  d.y,
];
