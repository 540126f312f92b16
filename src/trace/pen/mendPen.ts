import { splitSegment } from "../../geometry/curve.ts";
import { lengthOf, parameterAtLength } from "../../geometry/length.ts";
import { nearestOnPath } from "../../geometry/nearest.ts";
import { along, apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { type PenLine, type PenPoint, segmentAfter } from "./pen.ts";

/** A place on a line: after which point, and how far along the segment that leaves it, 0 to 1. */
export type PenPlace = { readonly after: number; readonly t: number };

/** The place of a line nearest to `q`; null where it has no segment within `reach`. */
export const nearestPlace = (pen: PenLine, q: Point, reach: Mm): PenPlace | null => {
  let best: PenPlace | null = null;
  let least: Mm = reach;
  for (let i = 0; i < pen.points.length; i++) {
    const segment = segmentAfter(pen, i);
    if (!segment) continue;
    const { away, along: on } = nearestOnPath([segment], q);
    if (away > least) continue;
    const whole = lengthOf([segment]);
    const t = segment.kind === "line" ? on / (whole || 1) : parameterAtLength(segment, on, whole);
    [best, least] = [{ after: i, t }, away];
  }
  return best;
};

/** A point added on the line; the line itself stays as it is. */
export const withPoint = (pen: PenLine, { after, t }: PenPlace): PenLine => {
  const segment = segmentAfter(pen, after);
  if (!segment) return pen;
  const { points } = pen;
  const next = (after + 1) % points.length;
  const [one, two] = splitSegment(segment, t);
  const added: PenPoint = {
    at: one.end,
    before: one.kind === "cubic" ? one.endHandle : null,
    after: two.kind === "cubic" ? two.startHandle : null,
    isCorner: false,
  };
  const cut = points.map((p, i): PenPoint => {
    if (i === after && one.kind === "cubic") return { ...p, after: one.startHandle };
    if (i === next && two.kind === "cubic") return { ...p, before: two.endHandle };
    return p;
  });
  return { ...pen, points: [...cut.slice(0, after + 1), added, ...cut.slice(after + 1)] };
};

/** A closed line keeps three points at least. */
const FEWEST = 3;

export const canLosePoint = ({ points, isClosed }: PenLine): boolean =>
  points.length > (isClosed ? FEWEST : 0);

/** A handle made longer, for it now reaches over two segments. */
const lengthened = (p: PenPoint, side: "before" | "after", by: number): PenPoint => {
  const handle = p[side];
  return handle ? { ...p, [side]: along(p.at, handle, by) } : p;
};

/** A point taken away; its neighbours' handles reach over both its segments. */
export const withoutPoint = (pen: PenLine, i: number): PenLine => {
  const { points, isClosed } = pen;
  const gone = points[i];
  if (!gone || !canLosePoint(pen)) return pen;
  const count = points.length;
  const [last, next] = [i - 1, i + 1].map((k) => (isClosed ? (k + count) % count : k));
  const [from, to] = [points[last ?? -1], points[next ?? -1]];
  const chords = (from ? apart(from.at, gone.at) : 0) + (to ? apart(gone.at, to.at) : 0);
  const by = (p: PenPoint | undefined) => (p ? chords / (apart(p.at, gone.at) || chords || 1) : 1);
  return {
    ...pen,
    points: points.flatMap((p, k) => {
      if (k === i) return [];
      if (k === last) return [lengthened(p, "after", by(p))];
      return k === next ? [lengthened(p, "before", by(p))] : [p];
    }),
  };
};

/** The segment after a point made straight, or given handles a third along it. */
export const straightened = (pen: PenLine, i: number): PenLine => {
  const next = (i + 1) % pen.points.length;
  return {
    ...pen,
    points: pen.points.map((p, k) => {
      if (k === i) return { ...p, after: null };
      return k === next ? { ...p, before: null } : p;
    }),
  };
};

export const curved = (pen: PenLine, i: number): PenLine => {
  const segment = segmentAfter(pen, i);
  if (segment?.kind !== "line") return pen;
  const next = (i + 1) % pen.points.length;
  return {
    ...pen,
    points: pen.points.map((p, k) => {
      if (k === i) return { ...p, after: along(segment.start, segment.end, 1 / 3) };
      return k === next ? { ...p, before: along(segment.start, segment.end, 2 / 3) } : p;
    }),
  };
};
