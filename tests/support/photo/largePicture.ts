import { drafted, halfRing } from "../../trace/edges/shapes.ts";
import { type Photographed, photographed } from "./bringBack.ts";

export type { Photographed } from "./bringBack.ts";

/** A drafted front drawn with a pen, photographed by program at 12 megapixels. */
export const largePicture = (): Photographed =>
  photographed(
    { edges: halfRing(drafted().front), drawnAs: "line" },
    {
      width: 3000,
      height: 4000,
      distance: 1300,
      tilt: 15,
      way: 40,
      roll: 4,
      focal: 0.75,
      k1: 0,
      k2: 0,
      noise: 3,
      shade: 0.3,
      seed: 3,
    },
    100,
  );
