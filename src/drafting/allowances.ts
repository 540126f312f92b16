import { foldsAt } from "../geometry/offset.ts";
import type { Path } from "../geometry/segment.ts";
import type { Mm } from "../geometry/units.ts";
import type { Choices } from "./choices.ts";
import type { BandEdges, BodyEdges, EdgeName, InsertEdges, SleeveEdges } from "./piece.ts";

/**
 * How the allowance is shaped at the corner where an edge ends (method 4, table): a mitre, or true
 * to the seam that comes before or after the corner, so that it lies flat when pressed open.
 */
export type CornerStyle = "mitre" | "seam-before" | "seam-follows";

/** One side of a piece with what is added outside it. */
export type Side = {
  readonly name: EdgeName;
  readonly path: Path;
  readonly allowance: Mm;
  readonly corner: CornerStyle;
};

/** What is added outside each seam, the V's as it could be taken. Lengths in mm. */
export type Allowances = Choices["allowances"] & { readonly v: Mm };

const side = (name: EdgeName, path: Path, allowance: Mm, corner: CornerStyle): Side => ({
  name,
  path,
  allowance,
  corner,
});

/** The sides of a front or back that have an allowance: all but the fold. */
export const sidesOfBody = (edges: BodyEdges, a: Allowances): readonly Side[] => [
  ...(edges.v ? [side("v", edges.v, a.v, "seam-before")] : []),
  side("neckline", edges.neckline, a.bands, "seam-follows"),
  side("raglan", edges.raglan, a.raglan, "mitre"),
  side("side", edges.side, a.side, "seam-before"),
  side("hem", edges.hem, a.bands, "mitre"),
];

export const sidesOfSleeve = (edges: SleeveEdges, a: Allowances): readonly Side[] => [
  side("neckline", edges.neckline, a.bands, "seam-follows"),
  side("raglanFront", edges.raglanFront, a.raglan, "mitre"),
  side("underarmFront", edges.underarmFront, a.underarm, "seam-before"),
  side("wrist", edges.wrist, a.bands, "seam-follows"),
  side("underarmBack", edges.underarmBack, a.underarm, "mitre"),
  side("raglanBack", edges.raglanBack, a.raglan, "seam-before"),
];

export const sidesOfInsert = (edges: InsertEdges, a: Allowances): readonly Side[] => [
  side("top", edges.top, a.bands, "seam-follows"),
  side("right", edges.right, a.v, "mitre"),
  side("left", edges.left, a.v, "seam-before"),
];

export const sidesOfBand = (edges: BandEdges, a: Allowances): readonly Side[] => [
  side("top", edges.top, a.bands, "mitre"),
  side("endB", edges.endB, a.bands, "mitre"),
  side("bottom", edges.bottom, a.bands, "mitre"),
  side("endA", edges.endA, a.bands, "mitre"),
];

/** The tightest radius at which an allowance folds on itself, and that allowance. */
export type Fold = { readonly radius: Mm; readonly allowance: Mm };

export const tightestFold = (sides: readonly Side[]): Fold | null => {
  let tightest: Fold | null = null;
  for (const { path, allowance } of sides) {
    const radius = foldsAt(path, allowance);
    if (radius !== null && (!tightest || radius < tightest.radius)) {
      tightest = { radius, allowance };
    }
  }
  return tightest;
};
