import type { Choices } from "../drafting/choices.ts";
import type { Kilopascal, Mm } from "../geometry/units.ts";
import { BAND } from "./data/bandConstants.ts";

export type Rib = Choices["cloth"]["rib"];

/** The length to which a band comes back at rest after a girth has passed through it. In mm. */
export const wornLength = (finished: Mm, passed: Mm, { recovery }: Rib): Mm =>
  recovery * finished + (1 - recovery) * passed;

/**
 * What a band presses with at rest on a girth (method 5.3; model with the firmest published rib, so
 * softer ribs press less). 0 where the band is as long as the girth.
 */
export const pressureOn = (girth: Mm, worn: Mm, { stretch }: Rib): Kilopascal =>
  (BAND.pressFactor * Math.max(0, girth / worn - 1)) / (stretch * girth);
