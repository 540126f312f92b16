import type { Mm } from "../geometry/units.ts";
import { beside, EDGE, type Standing, slidLeft, slidUp } from "./nesting.ts";
import type { Silhouette } from "./silhouette.ts";
import type { Grid } from "./tiles.ts";

/** What a silhouette is to be set down beside, and how far it may reach. */
export type Ground = {
  readonly standing: readonly Standing[];
  readonly grid: Grid;
  readonly right: Mm;
  readonly bottom: Mm;
};

/** Numbers that are filled anew for each silhouette, so that none is made for every place tried. */
type List = { readonly numbers: Mm[]; count: number };

const list = (): List => ({ numbers: [], count: 0 });

const put = (into: List, value: Mm): void => {
  into.numbers[into.count] = value;
  into.count++;
};

/** Puts a number into a list; false where it stands there already. */
const putNew = (into: List, value: Mm): boolean => {
  const { numbers, count } = into;
  for (let i = 0; i < count; i++) if (numbers[i] === value) return false;
  put(into, value);
  return true;
};

/** The places found last: x and y of each in turn. */
const places = list();
/** Heights that were slid along, and distances from the left that were slid down at. Many pieces stand
 * level: what was slid from a place once need not be slid again. */
const levels = list();
const uprights = list();

const putPlace = (x: Mm, y: Mm): void => {
  const { numbers, count } = places;
  for (let i = 0; i < count; i += 2) if (numbers[i] === x && numbers[i + 1] === y) return;
  put(places, x);
  put(places, y);
};

/** The start of the next sheet at or after `at`, or `at` itself where it is on the first. */
const onNextSheet = (at: Mm, step: Mm): Mm =>
  Math.ceil(Math.max(0, at - EDGE) / step) * step + EDGE;

const along = (shape: Silhouette, y: Mm, { standing, grid, bottom }: Ground): void => {
  if (y + shape.height > bottom || !putNew(levels, y)) return;
  const x = slidLeft(shape, y, standing);
  putPlace(x, y);
  putPlace(onNextSheet(x, grid.stepX), y);
};

const down = (shape: Silhouette, x: Mm, { standing, grid, right }: Ground): void => {
  if (x + shape.width > right || !putNew(uprights, x)) return;
  const y = slidUp(shape, x, standing);
  putPlace(x, y);
  putPlace(x, onNextSheet(y, grid.stepY));
};

/**
 * Places worth trying for one silhouette: slid up or left against what stands, or on a new sheet. x and
 * y of each in turn, the first `count` of the numbers; they stand only until the next silhouette's.
 */
export const placesFor = (shape: Silhouette, ground: Ground): Readonly<List> => {
  places.count = 0;
  levels.count = 0;
  uprights.count = 0;
  along(shape, EDGE, ground);
  down(shape, EDGE, ground);
  for (const { x, y, shape: other } of ground.standing) {
    along(shape, y, ground);
    along(shape, beside(y, other.height), ground);
    down(shape, x, ground);
    down(shape, beside(x, other.width), ground);
  }
  return places;
};
