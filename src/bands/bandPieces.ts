import { type Allowances, sidesOfBand } from "../drafting/allowances.ts";
import { cutLineOf } from "../drafting/cutLine.ts";
import type { BandEdges, DrawnEdge, Notch, Piece } from "../drafting/piece.ts";
import { straight } from "../geometry/path.ts";
import { point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import type { Band, Bands } from "./band.ts";

type BandName = "neckband" | "cuff" | "hemBand";

/** The ribs run up the band, so that it stretches along its length. */
const GRAIN_FROM = 0.2;
const GRAIN_TO = 0.8;

const bandEdges = (long: Mm, high: Mm): BandEdges => {
  const [a, b, c, d] = [point(0, 0), point(long, 0), point(long, high), point(0, high)];
  return {
    top: straight(a, b),
    endB: straight(b, c),
    bottom: straight(c, d),
    endA: straight(d, a),
  };
};

/** A band opened out: its sewn rectangle, the allowance all round, its marks on `top`. */
const bandPiece = (
  name: BandName,
  band: Band,
  notches: readonly Notch[],
  allowances: Allowances,
): Piece => {
  const [long, high] = [band.finishedLength, 2 * band.finishedDepth];
  const edges = bandEdges(long, high);
  const drawn: readonly DrawnEdge[] = [
    { name: "top", path: edges.top, length: long },
    { name: "endB", path: edges.endB, length: high },
    { name: "bottom", path: edges.bottom, length: long },
    { name: "endA", path: edges.endA, length: high },
  ];
  const middle = long / 2;
  return {
    name,
    edges: drawn,
    cutLine: cutLineOf(sidesOfBand(edges, allowances), false),
    onFold: null,
    cut: name === "cuff" ? 2 : 1,
    grain: { from: point(middle, GRAIN_FROM * high), to: point(middle, GRAIN_TO * high) },
    notches,
  };
};

const marks = (at: readonly Mm[], seam: string): readonly Notch[] =>
  at.map((distance) => ({ edge: "top", at: distance, seam }));

/** The three rib bands as pieces (method 5). Lengths in mm. */
export const bandPieces = (bands: Bands, allowances: Allowances): readonly Piece[] => {
  const { neckband, cuff, hemBand } = bands;
  const eight = neckband.marks.map(({ at }) => at);
  return [
    bandPiece("neckband", neckband, marks(eight, "neckband"), allowances),
    bandPiece("cuff", cuff, marks(cuff.quarterMarks, "cuff"), allowances),
    bandPiece("hemBand", hemBand, marks(hemBand.quarterMarks, "hem-band"), allowances),
  ];
};
