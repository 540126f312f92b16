import { sizeNames, sizeOf } from "../../drafting/sizes.ts";
import { MOST_NESTED } from "../../export/data/layerStyles.ts";
import { bodyOf, type Work } from "../../project/work.ts";
import type { NestedBody } from "./exportJob.ts";

/** What is nested: the bodies of the work, or a run of standard sizes of middling height. */
export const NESTED = ["work", "women", "men"] as const;
export type NestedOf = (typeof NESTED)[number];

const sizesOf = (letter: "W" | "M"): readonly NestedBody[] =>
  sizeNames()
    .filter((id) => id.startsWith(letter) && id.endsWith("-regular"))
    .flatMap((id) => {
      const found = sizeOf(id);
      return found ? [{ body: found.body, size: id }] : [];
    });

/** A body without chest and height is not drafted yet, and is left out. */
export const nestedBodies = (of: NestedOf, { bodies }: Work): readonly NestedBody[] => {
  if (of !== "work") return sizesOf(of === "women" ? "W" : "M");
  return bodies.flatMap((one) => {
    const body = bodyOf(one);
    return body ? [{ body }] : [];
  });
};

/** One alone is no nest, and more than there are kinds of line could not be told apart. */
export const nestedFault = (count: number): "few" | "many" | null => {
  if (count < 2) return "few";
  return count > MOST_NESTED ? "many" : null;
};
