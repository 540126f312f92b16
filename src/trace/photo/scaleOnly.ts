import { asMm } from "../../drafting/words.ts";
import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { faulty, found, type Told } from "../told.ts";
import { SAME } from "./homography.ts";
import { straightLens } from "./lens.ts";
import type { Pixel } from "./picture.ts";
import { type Plane, planeOf } from "./plane.ts";

/** A scan, or a picture taken squarely from above, whose scale alone is to be found. */
export type ScaleAsked = {
  readonly width: number;
  readonly height: number;
  /** Lengths that are known: a card's sides, a ruler. */
  readonly lengths: readonly { readonly from: Pixel; readonly to: Pixel; readonly length: Mm }[];
};

export type Scaled = {
  readonly plane: Plane;
  /** What the maker must know before they trust it. */
  readonly warning: string;
};

/** Lengths that give scales this far apart show a slant. Ours: 5 mm over a block of 600. */
const SLANTED = 0.008;

const scaleOf = ({ from, to, length }: ScaleAsked["lengths"][number]): number =>
  Math.hypot(to.x - from.x, to.y - from.y) / length;

/**
 * The scale of a scan or a square picture from known lengths. It never takes a slant away: half a
 * pixel at a card's corner would be 28 mm at the block, so a card is asked for scale alone, and
 * lengths that disagree are refused as a slant.
 */
export const scaleOnly = ({ width, height, lengths }: ScaleAsked): Told<Scaled> => {
  const scales = lengths.map(scaleOf).filter((scale) => scale > 0 && Number.isFinite(scale));
  if (scales.length === 0) {
    return faulty(
      "scale",
      "none",
      "No known length stands in the picture, so it has no scale.",
      "Mark both ends of a ruler or of a card's side, and give its length.",
    );
  }
  const mean = scales.reduce((sum, v) => sum + v, 0) / scales.length;
  const apart = (Math.max(...scales) - Math.min(...scales)) / mean;
  if (apart > SLANTED) {
    return faulty(
      "scale",
      `${(apart * 100).toFixed(1)} %`,
      `The known lengths give scales ${(apart * 100).toFixed(1)} % apart; over ${(SLANTED * 100).toFixed(1)} % the picture is slanted, ${asMm(600 * apart)} on 600 mm.`,
      "Lay four marker sheets round the piece instead: they take the slant away.",
    );
  }
  const origin: Point = { x: width / 2, y: height / 2 };
  const toPicture = { ...SAME, a: mean, c: origin.x, e: mean, f: origin.y };
  return found({
    plane: planeOf(toPicture, straightLens(width, height)),
    warning:
      "Scale alone: right for a scan or a picture taken squarely from above. A slant stays in it, and nothing here can show how much.",
  });
};
