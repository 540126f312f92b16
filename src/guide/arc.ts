import type { Garment } from "../bands/garment.ts";
import { pathOf, straight } from "../geometry/path.ts";
import { dir, type Point, point, stepped, times } from "../geometry/point.ts";
import { cubic, type Path, type Segment } from "../geometry/segment.ts";
import type { Mm, Radians } from "../geometry/units.ts";
import { TEST } from "./data/tableTest.ts";

/** The arc to pin the scrap along, at full size, in mm; it hangs from its start at (0, 0). */
export type PrintedArc = {
  /** null: a straight line, where the opening does not turn inward. */
  readonly radius: Mm | null;
  /** Where the raw edges are pinned. */
  readonly edge: Path;
  /** Where the fold then lies, the band's depth further in. */
  readonly fold: Path;
  /** From 0 on: along the arc, with the line that marks it and where its number stands. */
  readonly ticks: readonly { readonly at: Mm; readonly path: Path; readonly word: Point }[];
};

/** A cubic that follows an arc of at most a quarter turn within 0.03 % of its radius. */
const arcPart = (centre: Point, radius: Mm, from: Radians, to: Radians): Segment => {
  const pull = (4 / 3) * Math.tan((to - from) / 4) * radius;
  const [a, b] = [dir(from), dir(to)];
  const [start, end] = [stepped(centre, a, radius), stepped(centre, b, radius)];
  return cubic(
    start,
    stepped(start, point(-a.y, a.x), pull),
    stepped(end, point(-b.y, b.x), -pull),
    end,
  );
};

/** Eighths of a turn at most, so that the arc strays by less than a thousandth of a millimetre. */
const arcOf = (centre: Point, radius: Mm, from: Radians, to: Radians): Path => {
  const parts = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 4)));
  const step = (to - from) / parts;
  return pathOf(
    Array.from({ length: parts }, (_, i) =>
      arcPart(centre, radius, from + i * step, from + (i + 1) * step),
    ),
  );
};

const tickPlaces = (): readonly Mm[] => {
  const { least, most, step } = TEST.ticks;
  const count = Math.round((most - least) / step) + 1;
  return [0, ...Array.from({ length: count }, (_, i) => least + i * step)];
};

const tickAt = (at: Mm, on: Point, outward: Point): PrintedArc["ticks"][number] => ({
  at,
  path: straight(on, stepped(on, outward, TEST.tick)),
  // Numbers stand close: every other one further out.
  word: stepped(on, outward, (at % 10 === 0 ? 1.8 : 2.8) * TEST.tick),
});

const straightLine = (long: Mm, depth: Mm): PrintedArc => ({
  radius: null,
  edge: straight(point(0, 0), point(long, 0)),
  fold: straight(point(0, depth), point(long, depth)),
  ticks: tickPlaces().map((at) => tickAt(at, point(at, 0), point(0, -1))),
});

/**
 * The arc of the table test, radius O/Θ of this garment's neck opening, its ticks 110 to 140 along
 * it. The arc bulges upward; the fold lies below it, towards its middle.
 */
export const printedArc = ({ ring, bands }: Pick<Garment, "ring" | "bands">): PrintedArc => {
  const long = TEST.ticks.most + TEST.beyond;
  const depth = bands.neckband.finishedDepth;
  const radius = ring.opening / ring.turning;
  // A fold deeper than the radius, or an arc that closes on itself, cannot be laid out.
  if (!(ring.turning > 0) || radius <= depth || long >= Math.PI * radius) {
    return straightLine(long, depth);
  }
  const from = -Math.PI / 2 - long / (2 * radius);
  const start = times(dir(from), -radius);
  const turned = (at: Mm): Radians => from + at / radius;
  return {
    radius,
    edge: arcOf(start, radius, from, turned(long)),
    fold: arcOf(start, radius - depth, from, turned(long)),
    ticks: tickPlaces().map((at) =>
      tickAt(at, stepped(start, dir(turned(at)), radius), dir(turned(at))),
    ),
  };
};
