import type { Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";

/** Things by a point each, so that those near to a point are found without looking at all. */
export type PointGrid<Thing> = {
  readonly put: (p: Point, thing: Thing) => void;
  /** All within one cell's size of a point, and some a little beyond. */
  readonly near: (p: Point) => readonly Thing[];
};

const BESIDE = [-1, 0, 1] as const;

export const pointGrid = <Thing>(cell: Mm): PointGrid<Thing> => {
  const cells = new Map<string, Thing[]>();
  const at = (v: number): number => Math.floor(v / cell);
  return {
    put: (p, thing) => {
      const key = `${at(p.x)} ${at(p.y)}`;
      const there = cells.get(key);
      if (there) there.push(thing);
      else cells.set(key, [thing]);
    },
    near: (p) =>
      BESIDE.flatMap((dx) =>
        BESIDE.flatMap((dy) => cells.get(`${at(p.x) + dx} ${at(p.y) + dy}`) ?? []),
      ),
  };
};
