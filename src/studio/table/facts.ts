import type { DrawnEdge, EdgeName, Piece } from "../../drafting/piece.ts";
import { endTangent, startOf, startTangent } from "../../geometry/path.ts";
import { type Point, turn } from "../../geometry/point.ts";
import { type Degrees, degrees, type Mm } from "../../geometry/units.ts";

/** What a drawing of a piece says, as rows that can be read without seeing it. */
export type Facts = {
  readonly points: readonly { readonly edge: EdgeName; readonly at: Point }[];
  readonly edges: readonly {
    readonly edge: EdgeName;
    readonly length: Mm;
    readonly curved: boolean;
  }[];
  /** Inside angles where one edge ends and the next begins. */
  readonly corners: readonly {
    readonly from: EdgeName;
    readonly to: EdgeName;
    readonly angle: Degrees;
  }[];
};

const HALF_TURN = 180;

const cornersOf = (edges: readonly DrawnEdge[]): Facts["corners"] =>
  edges.flatMap((edge, i) => {
    const next = edges[(i + 1) % edges.length];
    if (!next) return [];
    const bend = degrees(turn(endTangent(edge.path), startTangent(next.path)));
    return [{ from: edge.name, to: next.name, angle: HALF_TURN - bend }];
  });

export const factsOf = ({ edges }: Piece): Facts => ({
  points: edges.map(({ name, path }) => ({ edge: name, at: startOf(path) })),
  edges: edges.map(({ name, length, path }) => ({
    edge: name,
    length,
    curved: path.some((segment) => segment.kind === "cubic"),
  })),
  corners: cornersOf(edges),
});
