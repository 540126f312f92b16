import * as z from "zod/mini";
import type { Fault } from "../drafting/fault.ts";
import { PAPER_NAMES } from "../export/data/paper.ts";
import { MOST_WANTED } from "../export/data/printLimits.ts";
import { isPaperChoice, type PaperChoice } from "../export/paperSize.ts";
import { DEFAULT_PRINT, type PrintChoices } from "../export/printChoices.ts";
import { printFaults } from "../export/printFaults.ts";
import { faultsOf, shown } from "./faultWords.ts";

const GROUP = { error: "a group of choices in braces" };
const LENGTH = { error: "a number of millimetres" };
const length = (otherwise: number) => z._default(z.number(LENGTH), otherwise);

/** How sheets are named: A1, B12, AA3. */
const SHEET_NAME = /^[A-Z]{1,2}[1-9]\d{0,2}$/u;

const WANTED = { error: "a list of sheets, 500 at most" };
const ONE_WANTED = { error: "the name of a sheet, such as A1" };
const PIECES = ["front", "back", "sleeve", "vInsert", "neckband", "cuff", "hemBand"] as const;
const PLACED = { error: "a list of places of pieces" };

/** A place on the drawing: no layout is larger than some metres. */
const place = () =>
  z
    .number(LENGTH)
    .check(z.gte(-20_000, { error: "-20000 or more" }), z.lte(20_000, { error: "20000 or less" }));

const placementSchema = z.strictObject(
  {
    piece: z.enum(PIECES, { error: "the name of a piece" }),
    x: place(),
    y: place(),
    turn: z.literal([0, 90, 180, 270, -90], { error: "0, 90, 180 or 270" }),
  },
  { error: "a place in braces" },
);

const { margins, square } = DEFAULT_PRINT;

/** Whether the choices go together is `printFaults`' to say. */
const printSchema = z.strictObject(
  {
    margins: z.prefault(
      z.strictObject(
        {
          top: length(margins.top),
          right: length(margins.right),
          bottom: length(margins.bottom),
          left: length(margins.left),
        },
        GROUP,
      ),
      {},
    ),
    join: z._default(
      z.enum(["overlap", "butt"], { error: '"overlap" or "butt"' }),
      DEFAULT_PRINT.join,
    ),
    overlap: length(DEFAULT_PRINT.overlap),
    turn: z._default(
      z.enum(["portrait", "landscape", "fewest"], {
        error: '"portrait", "landscape" or "fewest"',
      }),
      DEFAULT_PRINT.turn,
    ),
    square: z.prefault(
      z.strictObject({ along: length(square.along), across: length(square.across) }, GROUP),
      {},
    ),
    only: z._default(
      z
        .array(z.string(ONE_WANTED).check(z.regex(SHEET_NAME, ONE_WANTED)), WANTED)
        .check(z.maxLength(MOST_WANTED, WANTED)),
      [],
    ),
    placed: z._default(
      z.array(placementSchema, PLACED).check(z.maxLength(PIECES.length, PLACED)),
      [],
    ),
  },
  GROUP,
);

/** What --paper, or a file's `paper`, may be. */
export const PAPERS_KNOWN = `${PAPER_NAMES.join(", ")}, or a size in mm such as 210x330`;

type PrintRead =
  | { readonly paper: PaperChoice; readonly print: PrintChoices }
  | { readonly faults: readonly Fault[] };

/** A paper and print choices, each default filled in, or what is wrong with them. */
export const readPrint = (paper: unknown, print: unknown): PrintRead => {
  if (typeof paper !== "string" || !isPaperChoice(paper)) {
    const reason = `The paper is ${shown(paper)}; it must be one of ${PAPERS_KNOWN}.`;
    return { faults: [{ field: "paper", value: shown(paper), reason, do: "Take one of them." }] };
  }
  const { data, error } = printSchema.safeParse(print, { reportInput: true });
  if (error) return { faults: faultsOf(error.issues, DEFAULT_PRINT) };
  const faults = printFaults(paper, data);
  return faults.length > 0 ? { faults } : { paper, print: data };
};
