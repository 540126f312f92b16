import { withCentre } from "../../drafting/alterations/altered.ts";
import type { BodyEdges } from "../../drafting/piece.ts";
import { asCubic } from "../../geometry/curve.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, lastOf, mapPath, pathOf, reversed, startOf } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import { solve } from "../../geometry/solve.ts";
import { take } from "../../geometry/split.ts";
import type { Mm, Radians } from "../../geometry/units.ts";

/** A raglan may be made this much taller or lower; beyond it is another block. */
const LEAST_SCALE = 0.7;
const MOST_SCALE = 1.4;

/** A path made taller or lower about a level until it is as long as asked; null beyond a third. */
export const toLength = (path: Path, level: Mm, wanted: Mm): Path | null => {
  const scaled = (by: number): Path =>
    mapPath(path, ({ x, y }) => ({ x, y: level + (y - level) * by }));
  const by = solve({
    of: (scale) => lengthOf(scaled(scale)) - wanted,
    low: LEAST_SCALE,
    high: MOST_SCALE,
  });
  return by === null ? null : scaled(by);
};

/** How far along the chord of a path a point lies, 0 to 1, slow at both ends: 3s² - 2s³. */
const eased = (path: Path, p: Point): number => {
  const [a, b] = [startOf(path), endOf(path)];
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const s = ((p.x - a.x) * dx + (p.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const t = Math.min(1, Math.max(0, s));
  return t * t * (3 - 2 * t);
};

/** A path whose ends are moved, what lies between going with them by its place along the chord. */
export const withEnds = (path: Path, start: Point, end: Point): Path => {
  const [a, b] = [startOf(path), endOf(path)];
  const moved = mapPath(path, (p) => {
    const t = eased(path, p);
    return {
      x: p.x + (start.x - a.x) * (1 - t) + (end.x - b.x) * t,
      y: p.y + (start.y - a.y) * (1 - t) + (end.y - b.y) * t,
    };
  });
  return moved;
};

/** A hem brought to a new side end: the outer two thirds go with it, so the fold stays square. */
const hemTo = (hem: Path, end: Point): Path => {
  const old = startOf(hem);
  const down = end.y - old.y;
  return mapPath(pathOf(hem.map(asCubic)), ({ x, y }) => ({
    x: (x * end.x) / old.x,
    y: y + down * Math.max(0, ((3 * x) / old.x - 1) / 2),
  }));
};

/** A front or back whose side is as long as asked, cut or run on at the hem. */
export const withSide = (body: BodyEdges, length: Mm): BodyEdges => {
  const side = take(body.side, length);
  return withCentre({ ...body, side, hem: hemTo(body.hem, endOf(side)) });
};

/** A front or back whose raglan is another one from the same corner; side and hem go with it. */
export const withRaglan = (body: BodyEdges, raglan: Path): BodyEdges => {
  const [from, to] = [endOf(body.raglan), endOf(raglan)];
  const side = mapPath(body.side, ({ x, y }) => ({ x: x + to.x - from.x, y: y + to.y - from.y }));
  return withCentre({ ...body, raglan, side, hem: hemTo(body.hem, endOf(side)) });
};

/** A path that ends in a direction turned by an angle, clockwise on the page; its ends stay. */
export const endTurned = (path: Path, by: Radians): Path => {
  const last = asCubic(lastOf(path));
  const [c, s] = [Math.cos(by), Math.sin(by)];
  const [x, y] = [last.endHandle.x - last.end.x, last.endHandle.y - last.end.y];
  const endHandle = { x: last.end.x + c * x - s * y, y: last.end.y + s * x + c * y };
  return pathOf([...path.slice(0, -1), { ...last, endHandle }]);
};

/** The same at its start. */
export const startTurned = (path: Path, by: Radians): Path =>
  reversed(endTurned(reversed(path), by));
