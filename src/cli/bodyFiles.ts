import type { Choices } from "../drafting/choices.ts";
import type { Body } from "../drafting/measures.ts";
import type { Block } from "../drafting/piece.ts";
import { toDxf } from "../export/dxf.ts";
import { layOut } from "../export/layout.ts";
import type { PaperChoice } from "../export/paperSize.ts";
import { toPdf } from "../export/pdf.ts";
import type { PrintChoices } from "../export/printChoices.ts";
import { reportBytes } from "../export/report.ts";
import type { Sheets } from "../export/sheets.ts";
import { toSvg } from "../export/svg.ts";
import { type Made, make } from "../project/make.ts";
import { summaryLine, summaryOf } from "../project/summaryCsv.ts";
import type { Files } from "./writeWhole.ts";

/** What every body of a run is drafted by. Plain data: it is handed to each thread. */
export type Job = {
  readonly choices: Choices;
  /** The maker's own block; null where it is drafted from the measures. */
  readonly block: Block | null;
  readonly paper: PaperChoice;
  readonly print: PrintChoices;
  readonly date: string | null;
  /** The print font; null where no sheets are wanted. */
  readonly font: Uint8Array | null;
};

export type BodyFiles = {
  readonly made: Made;
  readonly files: Files;
  /** Its line in `summary.csv`. */
  readonly summary: string;
};

/** A body made and laid out, before anything is written. */
export type LaidBody = { readonly made: Made; readonly sheets: Sheets };

export const laidBody = (body: Body, job: Job): LaidBody => {
  const made = make(body, job.choices, job.block);
  return { made, sheets: layOut(made.garment.pieces, job.paper, job.print) };
};

/** The files of a body that is laid out, or of a standard size in its place. */
export const filesFrom = async (
  { made, sheets }: LaidBody,
  { font, date }: Job,
  size?: string,
): Promise<BodyFiles> => {
  const summary = summaryLine(summaryOf(made, sheets.count));
  const report = { "report.json": reportBytes(made, sheets) };
  if (font === null) return { made, summary, files: report };
  const subject = size === undefined ? made : { ...made, body: { ...made.body, size } };
  const pdf = await toPdf(subject, sheets, { font, ...(date === null ? {} : { date }) });
  return {
    made,
    summary,
    files: {
      ...report,
      "pattern.pdf": pdf,
      "pattern.svg": toSvg(subject, sheets),
      "pattern.dxf": toDxf(subject, sheets),
    },
  };
};

/** Everything that leaves the program for one body. The same body and job give the same bytes. */
export const filesOf = (body: Body, job: Job): Promise<BodyFiles> =>
  filesFrom(laidBody(body, job), job);
