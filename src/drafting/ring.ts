import { startingAt } from "../geometry/curve.ts";
import { lengthOf } from "../geometry/length.ts";
import { areaOf, crossesItself } from "../geometry/outline.ts";
import { endOf, mapPath, pathOf, startOf } from "../geometry/path.ts";
import { readPathData } from "../geometry/pathData.ts";
import { apart, type Point, point } from "../geometry/point.ts";
import type { Path, Segment } from "../geometry/segment.ts";
import { EDGE_GAP } from "../geometry/tolerance.ts";
import type { Mm } from "../geometry/units.ts";
import type { Fault } from "./fault.ts";
import { asMm } from "./words.ts";

/** A coordinate beyond this is a slip of unit; sheets end at 5 m. Ours. */
const FARTHEST: Mm = 3000;
/** An edge shorter than this cannot be sewn. Ours. */
export const SHORTEST: Mm = 1;

/** The edges of a piece in order round it, by name. */
export type Ring<Name extends string> = readonly (readonly [Name, Path])[];
export type RingRead<Name extends string> =
  | { readonly ring: Ring<Name> }
  | { readonly fault: Fault };

export const faultAt = (field: string, value: string, reason: string, cure: string): Fault => ({
  field,
  value,
  reason,
  do: cure,
});

/** A point as it is told in a message. */
const told = ({ x, y }: Point): string => `(${x.toFixed(1)}, ${y.toFixed(1)})`;

const longText = (text: string): string => (text.length > 60 ? `${text.slice(0, 57)}…` : text);

/** Every edge read and brought to millimetres. */
const readEdges = <Name extends string>(
  piece: string,
  order: readonly Name[],
  texts: Readonly<Record<Name, string>>,
  scale: number,
): RingRead<Name> => {
  const ring: (readonly [Name, Path])[] = [];
  for (const name of order) {
    const found = readPathData(texts[name]);
    if ("fault" in found) {
      const field = `${piece}.${name}`;
      return {
        fault: faultAt(
          field,
          longText(texts[name]),
          `The line of ${field} cannot be read: ${found.fault}.`,
          "Write it as one run of path data with absolute M, L and C.",
        ),
      };
    }
    ring.push([name, mapPath(found.path, ({ x, y }) => point(x * scale, y * scale))]);
  }
  return { ring };
};

/** Each edge begun where the one before ends; gaps to 0.5 mm closed, larger ones told. */
const joinedUp = <Name extends string>(piece: string, read: Ring<Name>): RingRead<Name> => {
  const ring: (readonly [Name, Path])[] = [];
  for (const [i, [name, path]] of read.entries()) {
    const [beforeName, beforePath] = read[(i + read.length - 1) % read.length] ?? [name, path];
    const end = endOf(beforePath);
    const gap = apart(end, startOf(path));
    if (!(gap <= EDGE_GAP)) {
      const field = `${piece}.${name}`;
      return {
        fault: faultAt(
          field,
          told(startOf(path)),
          `${field} starts at ${told(startOf(path))} and ${piece}.${beforeName} ends at ${told(end)}, ${asMm(gap)} apart; the limit is ${asMm(EDGE_GAP)}.`,
          "Draw the edges so that each starts where the one before ends, clockwise round the piece.",
        ),
      };
    }
    ring.push([name, pathOf([startingAt(path[0], end), ...path.slice(1)])]);
  }
  return { ring };
};

const pointsOf = (s: Segment): readonly Point[] =>
  s.kind === "line" ? [s.start, s.end] : [s.start, s.startHandle, s.endHandle, s.end];

/** Handles count: a curve may follow one that was dragged away as far as it likes. */
const farthestOf = (path: Path): Mm =>
  Math.max(...path.flatMap(pointsOf).flatMap(({ x, y }) => [Math.abs(x), Math.abs(y)]));

/** Every edge can be sewn, and none lies where only a slip of unit would put it. */
const soundSize = (piece: string, ring: Ring<string>): Fault | null => {
  for (const [name, path] of ring) {
    const field = `${piece}.${name}`;
    const far = farthestOf(path);
    if (far > FARTHEST) {
      return faultAt(
        field,
        asMm(far),
        `${field} reaches ${asMm(far)} from the frame's origin; the limit is ${asMm(FARTHEST)}.`,
        "Check the unit of the block.",
      );
    }
    const length = lengthOf(path);
    if (length < SHORTEST) {
      return faultAt(
        field,
        asMm(length),
        `${field} is ${asMm(length)} long; the least is ${asMm(SHORTEST)}.`,
        "Draw the edge, and check the unit of the block.",
      );
    }
  }
  return null;
};

/** The whole outline runs clockwise and does not cross itself. */
const soundOutline = (piece: string, ring: Ring<string>): Fault | null => {
  const outline = pathOf(ring.flatMap(([, path]) => path));
  const area = areaOf(outline);
  if (area <= 0) {
    return faultAt(
      piece,
      "anticlockwise",
      `The ${piece} runs anticlockwise (or holds nothing); its edges must run clockwise on the page, y down.`,
      "Turn the order and the direction of its edges round, or mirror the piece.",
    );
  }
  const crossing = crossesItself(outline);
  if (!crossing) return null;
  const near = ring.find(([, path]) => crossesItself(pathOf([...path])) !== null)?.[0];
  const field = near ? `${piece}.${near}` : piece;
  return faultAt(
    field,
    told(crossing),
    `The line of ${field} crosses itself near ${told(crossing)}.`,
    "Redraw the edge so that the outline does not cross itself.",
  );
};

/** The edges of one piece, read, joined and found sound, in mm (method 2.7). */
export const readRing = <Name extends string>(
  piece: string,
  order: readonly Name[],
  texts: Readonly<Record<Name, string>>,
  scale: number,
): RingRead<Name> => {
  const read = readEdges(piece, order, texts, scale);
  if ("fault" in read) return read;
  const joined = joinedUp(piece, read.ring);
  if ("fault" in joined) return joined;
  const fault = soundSize(piece, joined.ring) ?? soundOutline(piece, joined.ring);
  return fault ? { fault } : joined;
};
