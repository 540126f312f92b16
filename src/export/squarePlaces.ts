import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { clearest, fromLowerRight } from "./clearPlace.ts";
import type { Ink } from "./freeSpace.ts";

/** The side of the test square. */
export const TEST_SQUARE: Mm = 50;

/**
 * Where each sheet's test square stands: where no line crosses it, if any place is free. The squares
 * come first and the words on the pieces keep clear of them, for words have more places to go.
 */
export const squarePlaces = (windows: readonly Box[], ink: Ink): readonly Box[] =>
  windows.map((window) => {
    const places = () => fromLowerRight(window, TEST_SQUARE, TEST_SQUARE);
    return clearest({ ink, boxes: [] }, places)?.box ?? window;
  });
