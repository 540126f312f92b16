import type { Point } from "../../geometry/point.ts";
import { line, type Segment } from "../../geometry/segment.ts";
import { arcCubics } from "../arcs.ts";
import { type RunsRead, readSvgPath } from "./svgPath.ts";
import { userLength } from "./svgUnits.ts";
import type { Element } from "./xml.ts";

/** Straights through points, back to the first where closed. */
const through = (points: readonly Point[], isClosed: boolean): RunsRead => {
  const segments: Segment[] = [];
  for (const [i, start] of points.entries()) {
    const end = points[i + 1] ?? (isClosed ? points[0] : undefined);
    if (end && (end.x !== start.x || end.y !== start.y)) segments.push(line(start, end));
  }
  return { runs: segments.length > 0 ? [{ segments, isClosed }] : [] };
};

const pointsOf = (element: Element, isClosed: boolean): RunsRead => {
  const text = element.attributes.get("points") ?? "";
  const numbers = text
    .split(/[\s,]+/u)
    .filter((word) => word !== "")
    .map(Number);
  if (numbers.length % 2 !== 0 || !numbers.every(Number.isFinite))
    return { unread: text.slice(0, 12) };
  const points = numbers.flatMap((x, i) => (i % 2 === 0 ? [{ x, y: numbers[i + 1] ?? 0 }] : []));
  return through(points, isClosed);
};

const ellipse = (middle: Point, rx: number, ry: number, error: number): RunsRead => {
  if (!(rx > 0 && ry > 0)) return { runs: [] };
  const arc = { middle, rx, ry, turn: 0, from: 0, sweep: 2 * Math.PI };
  const cubics = arcCubics(arc, error);
  const start = { x: middle.x + rx, y: middle.y };
  const last = cubics.length - 1;
  const segments = cubics.map((c, i) => ({
    ...c,
    start: i === 0 ? start : c.start,
    end: i === last ? start : c.end,
  }));
  return { runs: [{ segments, isClosed: true }] };
};

/** A rectangle, its corners round where it has radii (SVG 1.1, 9.2), as path data. */
const rectangle = (element: Element, error: number): RunsRead => {
  const of = (name: string): number => userLength(element.attributes.get(name));
  const has = (name: string): boolean => element.attributes.has(name);
  const [x, y, w, h] = [of("x"), of("y"), of("width"), of("height")];
  if (!(w > 0 && h > 0)) return { runs: [] };
  const rx = Math.min(w / 2, has("rx") ? of("rx") : of("ry"));
  const ry = Math.min(h / 2, has("ry") ? of("ry") : of("rx"));
  if (!(rx > 0 && ry > 0)) return readSvgPath(`M${x} ${y}h${w}v${h}h${-w}z`, error);
  const corner = (dx: number, dy: number): string => `a${rx} ${ry} 0 0 1 ${dx} ${dy}`;
  const [dw, dh] = [w - 2 * rx, h - 2 * ry];
  return readSvgPath(
    `M${x + rx} ${y}h${dw}${corner(rx, ry)}v${dh}${corner(-rx, ry)}h${-dw}${corner(-rx, -ry)}v${-dh}${corner(rx, -ry)}z`,
    error,
  );
};

/** The lines that a shape draws in its own units; null where the element is no shape. */
export const linesOfShape = (element: Element, error: number): RunsRead | null => {
  const of = (name: string): number => userLength(element.attributes.get(name));
  switch (element.name) {
    case "path":
      return readSvgPath(element.attributes.get("d") ?? "", error);
    case "line":
      return through(
        [
          { x: of("x1"), y: of("y1") },
          { x: of("x2"), y: of("y2") },
        ],
        false,
      );
    case "polyline":
      return pointsOf(element, false);
    case "polygon":
      return pointsOf(element, true);
    case "rect":
      return rectangle(element, error);
    case "circle":
      return ellipse({ x: of("cx"), y: of("cy") }, of("r"), of("r"), error);
    case "ellipse":
      return ellipse({ x: of("cx"), y: of("cy") }, of("rx"), of("ry"), error);
    default:
      return null;
  }
};
