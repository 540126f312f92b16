import type { Mm } from "../../geometry/units.ts";

/** Every kind of line on a pattern piece. */
export const LINE_KINDS = ["cut", "sew", "fold", "crease", "notch", "grain", "bracket"] as const;
export type LineKind = (typeof LINE_KINDS)[number];

type LineStyle = {
  readonly width: Mm;
  /** Dash, gap, dash, gap ...; empty: unbroken. */
  readonly dash: readonly Mm[];
  /** What the key on the first page says of it. */
  readonly means: string;
};

/**
 * Lines are told apart by weight and dash, never by colour, so that any printer will do. The ways
 * to draw them are common practice, no source: no one standard sets pattern marks, which is why
 * the first page carries a key.
 */
export const LINE_STYLES: Readonly<Record<LineKind, LineStyle>> = {
  cut: { width: 0.5, dash: [], means: "Cut here" },
  sew: { width: 0.25, dash: [4, 2], means: "Seam line: sew here. The turning lies outside it" },
  fold: { width: 0.5, dash: [14, 3, 2, 3], means: "Lay this edge on a fold of the cloth" },
  crease: { width: 0.25, dash: [8, 2, 1.5, 2], means: "Fold the band along here" },
  notch: { width: 0.5, dash: [], means: "Notch: meets its partner. Mark it, or snip half as deep" },
  grain: { width: 0.35, dash: [], means: "Grain: lay it along the length of the cloth" },
  bracket: { width: 0.25, dash: [], means: "" },
};
