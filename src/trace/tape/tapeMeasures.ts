import type { Mm } from "../../geometry/units.ts";

/** Offsets of a raglan line from its chord at ¼, ½ and ¾ of it from the neck; outward above 0. */
export type RaglanOffsets = readonly [Mm, Mm, Mm];

/** A block as a tape measures it on a piece laid flat. Lengths in mm, front and back halves. */
export type TapeMeasures = {
  /** Across a half at the underarm, from the fold to the side. */
  readonly halfWidth: Mm;
  /** From the fold to the neck point, where shoulder and neckline meet. */
  readonly neckHalfWidth: Mm;
  /** From the level of the neck points down to the neckline at the centre. */
  readonly frontNeckDepth: Mm;
  readonly backNeckDepth: Mm;
  /** From the nape down to the level of the underarm. */
  readonly raglanDepth: Mm;
  /** Null where they were not measured: a drafted raglan is drawn. */
  readonly frontOffsets: RaglanOffsets | null;
  readonly backOffsets: RaglanOffsets | null;
  readonly sideLength: Mm;
  readonly hemHalfWidth: Mm;
  /** Across the sleeve at the underarm and at the wrist, laid open. */
  readonly sleeveWidth: Mm;
  readonly wristWidth: Mm;
  readonly underarmLength: Mm;
};

/** What a tape can have measured on a block: guards against slips of unit. Ours. */
export const TAPE_RANGES: Readonly<
  Record<keyof Omit<TapeMeasures, "frontOffsets" | "backOffsets">, readonly [Mm, Mm]>
> = {
  halfWidth: [120, 500],
  neckHalfWidth: [60, 200],
  frontNeckDepth: [30, 300],
  backNeckDepth: [5, 150],
  raglanDepth: [120, 500],
  sideLength: [80, 900],
  hemHalfWidth: [120, 600],
  sleeveWidth: [150, 800],
  wristWidth: [80, 600],
  underarmLength: [60, 800],
};

/** As the screens and messages call them. */
export const TAPE_WORDS: Readonly<Record<keyof typeof TAPE_RANGES, string>> = {
  halfWidth: "half width at the underarm",
  neckHalfWidth: "half width of the neck",
  frontNeckDepth: "front neck depth",
  backNeckDepth: "back neck depth",
  raglanDepth: "depth from the nape to the underarm",
  sideLength: "side length",
  hemHalfWidth: "half width of the hem",
  sleeveWidth: "sleeve's width at the underarm",
  wristWidth: "sleeve's width at the wrist",
  underarmLength: "sleeve's underarm length",
};

/** The single lengths, in the order in which a tape takes them. */
export const TAPE_LENGTHS = [
  "halfWidth",
  "neckHalfWidth",
  "frontNeckDepth",
  "backNeckDepth",
  "raglanDepth",
  "sideLength",
  "hemHalfWidth",
  "sleeveWidth",
  "wristWidth",
  "underarmLength",
] as const satisfies readonly (keyof typeof TAPE_RANGES)[];
