import type { Point } from "../../geometry/point.ts";
import { type Homography, inverse, seen } from "./homography.ts";
import { bent, type Lens, unbent } from "./lens.ts";
import type { Pixel } from "./picture.ts";

/** How the table is seen in one picture: from mm on the table to pixels, through the lens. */
export type Plane = {
  readonly toPicture: Homography;
  readonly toTable: Homography;
  readonly lens: Lens;
};

export const planeOf = (toPicture: Homography, lens: Lens): Plane => ({
  toPicture,
  toTable: inverse(toPicture),
  lens,
});

/** Where a place on the table (mm) stands in the picture. */
export const inPicture = ({ toPicture, lens }: Plane, place: Point): Pixel =>
  bent(lens, seen(toPicture, place));

/** What place on the table (mm) a place in the picture shows. */
export const onTable = ({ toTable, lens }: Plane, at: Pixel): Point =>
  seen(toTable, unbent(lens, at));

/** How many mm of the table one pixel covers at a place, the larger way. */
export const mmPerPixel = (plane: Plane, at: Pixel): number => {
  const here = onTable(plane, at);
  const right = onTable(plane, { x: at.x + 1, y: at.y });
  const down = onTable(plane, { x: at.x, y: at.y + 1 });
  return Math.max(
    Math.hypot(right.x - here.x, right.y - here.y),
    Math.hypot(down.x - here.x, down.y - here.y),
  );
};
