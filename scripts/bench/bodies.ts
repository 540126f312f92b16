import type { Body, MeasureId } from "../../src/drafting/measures.ts";
import { bodyOfSize, sizeNames } from "../../src/drafting/sizes.ts";
import { seeded } from "./curves.ts";

/** People are not sizes: each measure strays from its size's by up to this part. */
const STRAY = 0.03;
/** Every third body has only these, so that the others are estimated. */
const FEW: readonly MeasureId[] = ["height", "chest", "hip", "neckBase", "upperArm", "wrist"];

const strayed = (body: Body, id: string, chance: () => number, isShort: boolean): Body => {
  const stray = (value: number): number => Math.round(value * (1 + STRAY * (2 * chance() - 1)));
  const more = Object.entries(body.measures)
    .filter(([measure]) => !isShort || FEW.some((few) => few === measure))
    .map(([measure, value]) => [measure, stray(value)]);
  const { height, chest } = body.measures;
  return { ...body, id, measures: { height, chest, ...Object.fromEntries(more) } };
};

/** Bodies round the project's own standard sizes, the same ones every time. */
export const bodiesOf = (count: number): readonly Body[] => {
  const chance = seeded(11);
  const sizes = sizeNames().flatMap((name) => bodyOfSize(name) ?? []);
  return Array.from({ length: count }, (_, i) => {
    const size = sizes[Math.floor(chance() * sizes.length)] ?? sizes[0];
    if (!size) throw new Error("There are no standard sizes.");
    return strayed(size, `body-${String(i + 1).padStart(5, "0")}`, chance, i % 3 === 2);
  });
};
