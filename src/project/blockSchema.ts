import * as z from "zod/mini";
import type { BlockFile, LengthUnit, OwnAllowances } from "../drafting/blockFile.ts";
import { CHOICE_RANGES } from "../drafting/data/ranges.ts";
import type { Fault } from "../drafting/fault.ts";
import { LENGTH_UNITS, MM_PER } from "./cells.ts";
import { faultsOf, shown } from "./faultWords.ts";

const path = z.string({
  error: 'path data in quotation marks, such as "M0 16 C64 16 85 6 92 -12"',
});
const allowance = z.number({ error: "a number" });
const IN_BRACES = { error: "a group in braces" };

/** The piece's edges, all of them and no others. */
const pieceOf = <Shape extends Readonly<Record<string, typeof path>>>(edges: Shape) =>
  z.strictObject({ edges: z.strictObject(edges, IN_BRACES) }, IN_BRACES);

const bodyPiece = pieceOf({ neckline: path, raglan: path, side: path, hem: path, centre: path });
const sleevePiece = pieceOf({
  neckline: path,
  raglanFront: path,
  underarmFront: path,
  wrist: path,
  underarmBack: path,
  raglanBack: path,
});
export const allowancesSchema = z.strictObject(
  {
    raglan: allowance,
    side: allowance,
    underarm: allowance,
    hem: allowance,
    neckline: allowance,
  },
  IN_BRACES,
);

const blockSchema = z.strictObject(
  {
    format: z.literal("ribwright-block", { error: '"ribwright-block"' }),
    version: z.literal(1, { error: "1, the only version there is" }),
    unit: z.enum(LENGTH_UNITS, { error: '"mm", "cm" or "in"' }),
    pieces: z.strictObject({ front: bodyPiece, back: bodyPiece, sleeve: sleevePiece }, IN_BRACES),
    allowances: z.nullish(allowancesSchema),
  },
  { error: "a block in braces: format, version, unit and pieces" },
);

export type BlockFileRead = { readonly file: BlockFile } | { readonly faults: readonly Fault[] };

/** Known keys of each group, from which a misspelt one is told what it may have been meant for. */
const edgesOf = (names: readonly string[]) => ({
  edges: Object.fromEntries(names.map((name) => [name, undefined])),
});
const BODY_EDGES = edgesOf(["neckline", "raglan", "side", "hem", "centre"]);
const SAMPLE = {
  format: undefined,
  version: undefined,
  unit: undefined,
  pieces: {
    front: BODY_EDGES,
    back: BODY_EDGES,
    sleeve: edgesOf(Object.keys(sleevePiece.shape.edges.shape)),
  },
  allowances: Object.fromEntries(Object.keys(allowancesSchema.shape).map((k) => [k, undefined])),
};

/** `pieces.front.edges.side` is the edge `front.side` everywhere else, so it is here. */
const byEdge = (fault: Fault): Fault => {
  const named = (text: string) => text.replace(/pieces\.(\w+)\.edges\b/gu, "$1");
  return { ...fault, field: named(fault.field), reason: named(fault.reason) };
};

const { least, most } = CHOICE_RANGES.allowance;

const wideAllowances = (allowances: OwnAllowances, unit: LengthUnit): readonly Fault[] =>
  Object.entries(allowances)
    .filter(([, width]) => width * MM_PER[unit] < least || width * MM_PER[unit] > most)
    .map(([name, width]) => ({
      field: `allowances.${name}`,
      value: shown(width),
      reason: `allowances.${name} is ${shown(width)} ${unit}; it must be a number from ${least} to ${most} mm.`,
      do: "Change it; where the lines are seam lines already, leave allowances out.",
    }));

/** The block in a parsed file, its lines not yet read: `readOwnBlock` does that. */
export const readBlockFile = (json: unknown): BlockFileRead => {
  const shape = blockSchema.safeParse(json, { reportInput: true });
  if (!shape.success) return { faults: faultsOf(shape.error.issues, SAMPLE).map(byEdge) };
  const { unit, pieces, allowances } = shape.data;
  const faults = allowances ? wideAllowances(allowances, unit) : [];
  if (faults.length > 0) return { faults };
  return {
    file: {
      unit,
      pieces: {
        front: pieces.front.edges,
        back: pieces.back.edges,
        sleeve: pieces.sleeve.edges,
      },
      ...(allowances ? { allowances } : {}),
    },
  };
};
