import fontUrl from "../../../assets/fonts/NotoSans-subset.ttf?url";
import { toDxf } from "../../export/dxf.ts";
import { layOut } from "../../export/layout.ts";
import { toPdf } from "../../export/pdf.ts";
import { reportText } from "../../export/report.ts";
import type { Sheets } from "../../export/sheets.ts";
import { toSvg } from "../../export/svg.ts";
import { type Made, make } from "../../project/make.ts";
import { type ExportAnswer, type ExportJob, homePaper, isHome } from "./exportJob.ts";

const say = (answer: ExportAnswer): void => postMessage(answer);

const font = async (): Promise<Uint8Array> =>
  new Uint8Array(await (await fetch(fontUrl)).arrayBuffer());

/** Guide and handout bring their own words and drawings, when they are asked for. */
const printed = async (job: ExportJob, made: Made): Promise<BlobPart> => {
  const options = {
    font: await font(),
    paper: homePaper(job.paper),
    language: job.language,
    ...(job.date === null ? {} : { date: job.date }),
  };
  if (job.kind === "guide") {
    const { guidePdf } = await import("../../export/guidePdf.ts");
    return new Uint8Array(await guidePdf({ ...made, isChild: job.isChild }, options));
  }
  const { handoutPdf } = await import("../../export/handout.ts");
  const answers = job.kind === "answers";
  return new Uint8Array(await handoutPdf(made, { ...options, answers }));
};

/** The file's bytes, by the same calls as the command line's `draft`. */
const written = async (job: ExportJob, made: Made, sheets: Sheets): Promise<BlobPart> => {
  if (job.kind === "report") return reportText(made, sheets);
  if (job.kind === "svg") return toSvg(made, sheets);
  if (job.kind === "dxf") return toDxf(made, sheets);
  const date = job.date === null ? {} : { date: job.date };
  const bytes = await toPdf(made, sheets, { font: await font(), ...date });
  return new Uint8Array(bytes);
};

const laidOut = (job: ExportJob, made: Made): Sheets => {
  const sheets = layOut(made.garment.pieces, job.paper);
  say({ kind: "phase", phase: "draw", share: 0.45 });
  return sheets;
};

const run = async (job: ExportJob): Promise<void> => {
  const made = make(job.body, job.choices, job.block);
  say({ kind: "phase", phase: "start", share: 0.15 });
  const bytes = isHome(job.kind)
    ? await printed(job, made)
    : await written(job, made, laidOut(job, made));
  say({ kind: "phase", phase: "write", share: 0.95 });
  say({ kind: "done", bytes });
};

addEventListener("message", ({ data }: MessageEvent<ExportJob>) => {
  run(data).catch((fault: unknown) => say({ kind: "failed", why: String(fault) }));
});
