import * as z from "zod/mini";
import type { Fault } from "../../drafting/fault.ts";
import { faultsOf } from "../faultWords.ts";
import { faultOfFile } from "../textFile.ts";

const NUMBER = { error: "a number" };
const TEXT = { error: "text in quotation marks" };
const GROUP = { error: "a group in braces" };
const LIST = { error: "a list in square brackets" };

const number = z.number(NUMBER);
const text = z.string(TEXT);
const lists = z.array(z.tuple([text, text], { error: "a piece and an edge" }), LIST);

const pieceSchema = z.looseObject(
  {
    edges: z.record(text, z.looseObject({ path: text, length: number }, GROUP), GROUP),
    cutLine: text,
    onFold: z.nullable(text),
    notches: z.array(z.looseObject({ edge: text, at: number, seam: text }, GROUP), LIST),
  },
  GROUP,
);

const bandSchema = z.looseObject(
  {
    opening: number,
    finishedLength: number,
    cutLength: number,
    cutHeight: number,
    finishedDepth: number,
    ratio: number,
    stretchToSew: number,
    quarterMarks: z.array(number, LIST),
  },
  GROUP,
);
const marks = z.array(z.looseObject({ at: number, to: text }, GROUP), LIST);

const blockPieces = { front: pieceSchema, back: pieceSchema, sleeve: pieceSchema };

/** What `check` needs of a report; the rest of it is left as it is. */
const reportSchema = z.looseObject(
  {
    format: z.literal("ribwright-report", { error: '"ribwright-report"' }),
    version: z.literal(1, { error: "1, the only version there is" }),
    unit: z.literal("mm", { error: '"mm"' }),
    choices: z.looseObject(
      {
        alterations: z.looseObject({ vInsert: z.looseObject({ allowance: number }, GROUP) }, GROUP),
        cloth: z.looseObject(
          {
            body: z.looseObject(
              { shrinkLength: number, shrinkWidth: number, turned: z.boolean(GROUP) },
              GROUP,
            ),
          },
          GROUP,
        ),
        allowances: z.looseObject(
          { raglan: number, side: number, underarm: number, bands: number },
          GROUP,
        ),
      },
      GROUP,
    ),
    block: z.looseObject(blockPieces, GROUP),
    pieces: z.looseObject(
      {
        ...blockPieces,
        vInsert: z.optional(pieceSchema),
        neckband: pieceSchema,
        cuff: pieceSchema,
        hemBand: pieceSchema,
      },
      GROUP,
    ),
    seams: z.array(
      z.looseObject(
        {
          id: text,
          a: lists,
          b: lists,
          lengthA: number,
          lengthB: number,
          difference: number,
          ease: number,
        },
        GROUP,
      ),
      LIST,
    ),
    bands: z.looseObject(
      {
        neckband: z.extend(bandSchema, { marks }),
        cuff: bandSchema,
        hemBand: bandSchema,
      },
      GROUP,
    ),
    checks: z.array(z.looseObject({ id: text, limit: number }, GROUP), LIST),
  },
  { error: "a report in braces" },
);

export type ReportFile = z.infer<typeof reportSchema>;
export type ReportPiece = z.infer<typeof pieceSchema>;
export type ReportBand = z.infer<typeof bandSchema>;
export type ReportSeam = ReportFile["seams"][number];

/** The report in a parsed file, or the first reason why it is none. */
export const readReport = (
  json: unknown,
  file: string,
): { readonly report: ReportFile } | { readonly fault: Fault } => {
  const shape = reportSchema.safeParse(json, { reportInput: true });
  if (shape.success) return { report: shape.data };
  const [first] = faultsOf(shape.error.issues, {});
  const reason = `is not a report that this program wrote: ${first?.reason ?? ""}`;
  return { fault: faultOfFile(file, reason, "Give the report.json of a draft.") };
};
