import { lengthOf } from "../geometry/length.ts";
import { endOf, startOf } from "../geometry/path.ts";
import { apart, dot, minus, type Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import { AT_JOINT } from "../geometry/tolerance.ts";
import type { Fault } from "./fault.ts";
import { faultAt, type Ring, SHORTEST } from "./ring.ts";
import { asMm } from "./words.ts";

const wayOf = (path: Path): Point => minus(endOf(path), startOf(path));

/** An edge that its neighbours' allowances ate up comes out the other way round, or as a crumb. */
const isGone = (sewn: Path, cut: Path): boolean =>
  lengthOf(sewn) < SHORTEST || dot(wayOf(sewn), wayOf(cut)) <= 0;

/**
 * What is wrong with a piece whose cut lines were brought back to sew lines: edges that no longer meet,
 * or of which nothing is left. Null: it can be sewn. `cut` and `sewn` go round the same edges.
 */
export const insetFault = (piece: string, cut: Ring<string>, sewn: Ring<string>): Fault | null => {
  for (const [i, [name, path]] of sewn.entries()) {
    const [, was] = cut[i] ?? [name, path];
    const [beforeName, before] = sewn[(i + sewn.length - 1) % sewn.length] ?? [name, path];
    const field = `${piece}.${name}`;
    const gap = apart(endOf(before), startOf(path));
    if (!(gap <= AT_JOINT)) {
      return faultAt(
        field,
        asMm(gap),
        `With the allowances taken away ${field} and ${piece}.${beforeName} do not meet; they end ${asMm(gap)} apart.`,
        "Give the two edges allowances that are more alike, or draw the corner between them less sharp.",
      );
    }
    if (isGone(path, was)) {
      return faultAt(
        field,
        asMm(lengthOf(was)),
        `${field} is ${asMm(lengthOf(was))} long, and with the allowances taken away nothing is left of it; the least is ${asMm(SHORTEST)}.`,
        "Make the allowances smaller, and check the unit of the block.",
      );
    }
  }
  return null;
};
