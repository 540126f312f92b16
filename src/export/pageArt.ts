import type { Box } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import type { Mm } from "../geometry/units.ts";
import type { Word } from "./word.ts";

/** Straights from point to point. */
export type Run = { readonly points: readonly Point[]; readonly closed: boolean };

/** Runs drawn alike. */
export type Shape = {
  readonly runs: readonly Run[];
  /** Of the line; 0: none is drawn. */
  readonly width: Mm;
  readonly dash: readonly Mm[];
  /** 0 black to 1 white; null: not filled. */
  readonly fill: number | null;
};

/** What is drawn on a page besides the pattern. Shapes go under words. */
export type PageArt = { readonly shapes: readonly Shape[]; readonly words: readonly Word[] };

export const NO_ART: PageArt = { shapes: [], words: [] };

export const joinArt = (...parts: readonly PageArt[]): PageArt => ({
  shapes: parts.flatMap(({ shapes }) => shapes),
  words: parts.flatMap(({ words }) => words),
});

/** The fine line of everything that helps to print and join the sheets. */
export const FINE: Mm = 0.18;

export const ruled = (runs: readonly Run[], width: Mm = FINE, dash: readonly Mm[] = []): Shape => ({
  runs,
  width,
  dash,
  fill: null,
});

export const straightRun = (from: Point, to: Point): Run => ({ points: [from, to], closed: false });

export const boxRun = ({ left, top, right, bottom }: Box): Run => ({
  points: [
    { x: left, y: top },
    { x: right, y: top },
    { x: right, y: bottom },
    { x: left, y: bottom },
  ],
  closed: true,
});

type WordStyle = Partial<Pick<Word, "turn" | "from" | "strong">>;

/** A word of page furniture: across, from its start, plain, unless told otherwise. */
export const wordOf = (text: string, at: Point, size: Mm, style: WordStyle = {}): Word => ({
  text,
  x: at.x,
  y: at.y,
  size,
  turn: 0,
  from: "start",
  strong: false,
  ...style,
});
