import { mapPath } from "../geometry/path.ts";
import type { Path } from "../geometry/segment.ts";
import type { Choices } from "./choices.ts";

/** By what a piece of body cloth is enlarged, across and down, from its frame's origin. */
export type Growth = { readonly across: number; readonly down: number };

/**
 * What the wash takes is added before: 1 / (1 - shrinkage) (method 3.6). With turned cloth the
 * factors change places. Rib is never enlarged.
 */
export const growthOf = ({
  shrinkLength,
  shrinkWidth,
  turned,
}: Choices["cloth"]["body"]): Growth => {
  const width = 1 / (1 - shrinkWidth);
  const length = 1 / (1 - shrinkLength);
  return turned ? { across: length, down: width } : { across: width, down: length };
};

const isNone = ({ across, down }: Growth): boolean => across === 1 && down === 1;

/** A path as it is drawn on cloth that will shrink. */
export const grown = (path: Path, growth: Growth): Path =>
  isNone(growth)
    ? path
    : mapPath(path, ({ x, y }) => ({ x: x * growth.across, y: y * growth.down }));
