import * as z from "zod/mini";
import type { OwnAllowances } from "../drafting/blockFile.ts";
import type { Fault } from "../drafting/fault.ts";
import { BLOCK_PIECES, edgesOfPiece } from "../trace/edges/assignEdges.ts";
import type { ReadLine } from "../trace/files/drawing.ts";
import type { TapeMeasures } from "../trace/tape/tapeMeasures.ts";
import { allowancesSchema } from "./blockSchema.ts";
import { LENGTH_UNITS, MM_PER } from "./cells.ts";
import { faultsOf } from "./faultWords.ts";

/** Something that a maker wrote for a block of their own, or what is wrong with it. */
export type Given<Thing> = { readonly is: Thing } | { readonly faults: readonly Fault[] };

const length = z.number({ error: "a number" });
const offsets = z.nullish(
  z.tuple([length, length, length], { error: "three numbers in brackets" }),
);

const tapeSchema = z.strictObject(
  {
    unit: z.enum(LENGTH_UNITS, { error: '"mm", "cm" or "in"' }),
    halfWidth: length,
    neckHalfWidth: length,
    frontNeckDepth: length,
    backNeckDepth: length,
    raglanDepth: length,
    frontOffsets: offsets,
    backOffsets: offsets,
    sideLength: length,
    hemHalfWidth: length,
    sleeveWidth: length,
    wristWidth: length,
    underarmLength: length,
  },
  { error: "lengths in braces" },
);

const SAMPLE = Object.fromEntries(Object.keys(tapeSchema.shape).map((key) => [key, undefined]));

/** A block's lengths by tape, in mm. Whether they can stand together is seen when it is drawn. */
export const readTape = (json: unknown): Given<TapeMeasures> => {
  const read = tapeSchema.safeParse(json, { reportInput: true });
  if (!read.success) return { faults: faultsOf(read.error.issues, SAMPLE) };
  const { unit, frontOffsets, backOffsets, ...lengths } = read.data;
  const by = MM_PER[unit];
  const three = (given: typeof frontOffsets) =>
    given ? ([given[0] * by, given[1] * by, given[2] * by] as const) : null;
  return {
    is: {
      halfWidth: lengths.halfWidth * by,
      neckHalfWidth: lengths.neckHalfWidth * by,
      frontNeckDepth: lengths.frontNeckDepth * by,
      backNeckDepth: lengths.backNeckDepth * by,
      raglanDepth: lengths.raglanDepth * by,
      sideLength: lengths.sideLength * by,
      hemHalfWidth: lengths.hemHalfWidth * by,
      sleeveWidth: lengths.sleeveWidth * by,
      wristWidth: lengths.wristWidth * by,
      underarmLength: lengths.underarmLength * by,
      frontOffsets: three(frontOffsets),
      backOffsets: three(backOffsets),
    },
  };
};

/** The turnings that a drawing was drawn with, in mm. */
export const readTurnings = (json: unknown): Given<OwnAllowances> => {
  const read = allowancesSchema.safeParse(json, { reportInput: true });
  const sample = Object.fromEntries(
    Object.keys(allowancesSchema.shape).map((key) => [key, undefined]),
  );
  return read.success ? { is: read.data } : { faults: faultsOf(read.error.issues, sample) };
};

/** What may be named: a piece, or an edge of it. */
const TARGETS: readonly string[] = BLOCK_PIECES.flatMap((piece) => [
  piece,
  ...edgesOfPiece(piece).map((edge) => `${piece}.${edge}`),
]);

const namesSchema = z.record(z.string(), z.string({ error: "a name in quotation marks" }), {
  error: "names in braces",
});

const unknownTarget = (target: string): Fault => ({
  field: target,
  value: target,
  reason: `"${target}" is no piece and no edge of a block; known are ${TARGETS.join(", ")}.`,
  do: "Take one of them.",
});

const unknownName = (target: string, name: string): Fault => ({
  field: target,
  value: name,
  reason: `${target} is to be "${name}", and no line or layer of the drawing is called so.`,
  do: "Look in the drawing for its id or the layer's name.",
});

/** Lines called by the names that the maker gave: `{ "front": "path12", "back.side": "side B" }`. */
export const withNames = (
  lines: readonly ReadLine[],
  json: unknown,
): Given<readonly ReadLine[]> => {
  const read = namesSchema.safeParse(json, { reportInput: true });
  if (!read.success) return { faults: faultsOf(read.error.issues, {}) };
  const pairs = Object.entries(read.data);
  const faults = pairs.flatMap(([target, name]) => {
    if (!TARGETS.includes(target)) return [unknownTarget(target)];
    return lines.some(({ names }) => names.includes(name)) ? [] : [unknownName(target, name)];
  });
  if (faults.length > 0) return { faults };
  const called = ({ names, ...line }: ReadLine): ReadLine => {
    const mine = pairs.filter(([, name]) => names.includes(name)).map(([target]) => target);
    return { ...line, names: [...mine, ...names] };
  };
  return { is: lines.map(called) };
};
