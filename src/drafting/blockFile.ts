import type { Mm } from "../geometry/units.ts";
import type { BodyEdges, SleeveEdges } from "./piece.ts";

/** The edges that a maker's own block must draw; a V is cut by us and is never one of them. */
type OwnBodyEdge = Exclude<keyof BodyEdges, "v">;
type OwnSleeveEdge = keyof SleeveEdges;

/** Lengths of a block file are in this unit, allowances too. */
export type LengthUnit = "mm" | "cm" | "in";

/** Given where the lines of the block are cut lines (method 2.7). The wrist takes `hem`. */
export type OwnAllowances = {
  readonly raglan: Mm;
  readonly side: Mm;
  readonly underarm: Mm;
  readonly hem: Mm;
  readonly neckline: Mm;
};

/**
 * A maker's own block as its file has it: the path data of every edge, not yet read. The shape of
 * the file is checked when it is opened; the lines are read and checked by `ownBlock.ts`.
 */
export type BlockFile = {
  readonly unit: LengthUnit;
  readonly pieces: {
    readonly front: Readonly<Record<OwnBodyEdge, string>>;
    readonly back: Readonly<Record<OwnBodyEdge, string>>;
    readonly sleeve: Readonly<Record<OwnSleeveEdge, string>>;
  };
  readonly allowances?: OwnAllowances;
};
