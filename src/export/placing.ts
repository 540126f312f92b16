import type { PieceName } from "../drafting/piece.ts";
import { mapPath } from "../geometry/path.ts";
import type { Point } from "../geometry/point.ts";
import type { Path } from "../geometry/segment.ts";
import { type Degrees, radians } from "../geometry/units.ts";
import type { Placement } from "./placement.ts";
import type { Sheets } from "./sheets.ts";

const QUARTERS: Readonly<Record<number, readonly [cos: number, sin: number]>> = {
  0: [1, 0],
  90: [0, 1],
  [-90]: [0, -1],
};

/** Cosine and sine of a turn; exact for the turns that a layout uses. */
export const cosSin = (turn: Degrees): readonly [cos: number, sin: number] =>
  QUARTERS[turn] ?? [Math.cos(radians(turn)), Math.sin(radians(turn))];

/** A point of a piece where it stands in the layout (contract, "sheets"): turned, then moved. */
export const placedPoint = ({ x, y, turn }: Placement, p: Point): Point => {
  const [cos, sin] = cosSin(turn);
  return { x: x + p.x * cos - p.y * sin, y: y + p.x * sin + p.y * cos };
};

export const placedPath = ({ x, y, turn }: Placement, path: Path): Path => {
  const [cos, sin] = cosSin(turn);
  return mapPath(path, (p) => ({ x: x + p.x * cos - p.y * sin, y: y + p.x * sin + p.y * cos }));
};

/** Where a piece stands. Every piece of a layout has a place. */
export const placementOf = (
  { placements }: Pick<Sheets, "placements">,
  name: PieceName,
): Placement =>
  placements.find(({ piece }) => piece === name) ?? { piece: name, x: 0, y: 0, turn: 0 };
