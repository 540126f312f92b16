import type { PieceName } from "../drafting/piece.ts";
import { areaOf } from "../geometry/outline.ts";
import type { Mm, Ratio } from "../geometry/units.ts";
import { bodyCuts, type Cut, type Laid, ribCuts, type Sewn } from "./cutList.ts";
import { BODY_WIDTHS, BOUGHT_BY, GAP, RIB_WIDTHS } from "./data/clothWidths.ts";
import { type Placement, placeRows } from "./placed.ts";
import { packRows } from "./rows.ts";

/** Cloth of one width, laid one way: how much is needed, or which piece is too wide for it. */
export type Needed =
  | {
      readonly kind: "fits";
      readonly width: Mm;
      readonly laid: Laid;
      /** From end to end, gaps included. */
      readonly length: Mm;
      /** Rounded up to what is bought. */
      readonly buy: Mm;
      /** The area of the pieces over that of the cloth. */
      readonly used: Ratio;
      readonly placements: readonly Placement[];
    }
  | {
      readonly kind: "too-narrow";
      readonly width: Mm;
      readonly laid: Laid;
      readonly piece: PieceName;
      readonly needs: Mm;
    };

/** What a sum of cloth takes for granted, as data; `clothSentences` of the guide says it. */
export type Assumption =
  | { readonly id: "rows" | "one-way" | "rib-across" | "rib-washed" | "washed-first" }
  | { readonly id: "gap"; readonly gap: Mm }
  | { readonly id: "rounded"; readonly by: Mm }
  | { readonly id: "enlarged"; readonly length: Ratio; readonly width: Ratio }
  | {
      readonly id: "in-parts";
      readonly piece: PieceName;
      readonly width: Mm;
      readonly parts: number;
    };

/** What a garment needs at each width, and what was taken for granted. */
export type ClothNeeded = {
  readonly body: readonly Needed[];
  readonly rib: readonly Needed[];
  readonly assumed: readonly Assumption[];
};

/** Rounding must not make a maker buy more. */
const ROUNDING: Mm = 1e-6;

type Areas = (cuts: readonly Cut[]) => number;

/** Pieces by their cut lines, halves and pairs counted as often as they are cut; in mm². */
const clothArea =
  ({ pieces }: Sewn): Areas =>
  (cuts) =>
    pieces
      .filter(({ name }) => cuts.some(({ piece }) => piece === name))
      .reduce(
        (sum, { cutLine, cut, onFold }) => sum + areaOf(cutLine) * cut * (onFold === null ? 1 : 2),
        0,
      );

const ribArea: Areas = (cuts) => cuts.reduce((sum, { across, along }) => sum + across * along, 0);

const lay = (cuts: readonly Cut[], width: Mm, laid: Laid, area: Areas): Needed => {
  const room = { width: laid === "folded" ? width / 2 : width, gap: GAP };
  const rows = packRows(cuts, room);
  if (!rows) {
    const widest = cuts.reduce((a, b) => (b.across > a.across ? b : a));
    const needs = widest.across * (laid === "folded" ? 2 : 1);
    return { kind: "too-narrow", width, laid, piece: widest.piece, needs };
  }
  const placements = placeRows(rows, room);
  const length = rows.reduce((sum, { along }) => sum + along + GAP, GAP);
  return {
    kind: "fits",
    width,
    laid,
    length,
    buy: Math.ceil((length - ROUNDING) / BOUGHT_BY) * BOUGHT_BY,
    used: area(cuts) / (width * length),
    placements,
  };
};

/** Bands that come in parts at some width, told once at the widest at which they do. */
const parted = (rib: readonly Needed[], garment: Sewn): readonly Assumption[] =>
  rib.flatMap((needed): readonly Assumption[] => {
    if (needed.kind !== "fits") return [];
    return (["neckband", "cuff", "hemBand"] as const).flatMap((piece) => {
      const count = garment.pieces.find(({ name }) => name === piece)?.cut ?? 1;
      const parts = needed.placements.filter((p) => p.piece === piece).length / count;
      return parts > 1 ? [{ id: "in-parts" as const, piece, width: needed.width, parts }] : [];
    });
  });

const assumptions = (garment: Sewn, rib: readonly Needed[]): readonly Assumption[] => {
  const { shrinkLength, shrinkWidth } = garment.choices.cloth.body;
  const isEnlarged = shrinkLength !== 0 || shrinkWidth !== 0;
  return [
    { id: "rows" },
    { id: "gap", gap: GAP },
    { id: "one-way" },
    isEnlarged
      ? { id: "enlarged", length: shrinkLength, width: shrinkWidth }
      : { id: "washed-first" },
    { id: "rib-across" },
    { id: "rib-washed" },
    ...parted(rib, garment),
    { id: "rounded", by: BOUGHT_BY },
  ];
};

/** The widths for which cloth is reckoned; the common ones unless told otherwise. In mm. */
export type ClothWidths = { readonly body: readonly Mm[]; readonly rib: readonly Mm[] };

const COMMON: ClothWidths = {
  body: BODY_WIDTHS.map(({ width }) => width),
  rib: RIB_WIDTHS.map(({ width }) => width),
};

/**
 * Length of body cloth and of rib at some widths, pieces laid in rows by their outermost points,
 * grain along the length. Exact for rows: no other sharing out is shorter. Lengths in mm.
 */
export const clothNeeded = (garment: Sewn, widths: ClothWidths = COMMON): ClothNeeded => {
  const body = (["opened", "folded"] as const).flatMap((laid) => {
    const cuts = bodyCuts(garment, laid);
    return cuts ? widths.body.map((width) => lay(cuts, width, laid, clothArea(garment))) : [];
  });
  const rib = widths.rib.map((width) => lay(ribCuts(garment, width), width, "opened", ribArea));
  return { body, rib, assumed: assumptions(garment, rib) };
};
