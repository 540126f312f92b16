import fontUrl from "../../../assets/fonts/NotoSans-subset.ttf?url";
import { toDxf } from "../../export/dxf.ts";
import { layOut } from "../../export/layout.ts";
import { toPdf } from "../../export/pdf.ts";
import { reportText } from "../../export/report.ts";
import type { Sheets } from "../../export/sheets.ts";
import { toSvg } from "../../export/svg.ts";
import { type Made, make } from "../../project/make.ts";
import type { ExportAnswer, ExportJob } from "./exportJob.ts";

const say = (answer: ExportAnswer): void => postMessage(answer);

const font = async (): Promise<Uint8Array> =>
  new Uint8Array(await (await fetch(fontUrl)).arrayBuffer());

/** The file's bytes, by the same calls as the command line's `draft`. */
const written = async (job: ExportJob, made: Made, sheets: Sheets): Promise<BlobPart> => {
  if (job.kind === "report") return reportText(made, sheets);
  if (job.kind === "svg") return toSvg(made, sheets);
  if (job.kind === "dxf") return toDxf(made, sheets);
  const date = job.date === null ? {} : { date: job.date };
  const bytes = await toPdf(made, sheets, { font: await font(), ...date });
  return new Uint8Array(bytes);
};

const run = async (job: ExportJob): Promise<void> => {
  const made = make(job.body, job.choices, job.block);
  say({ kind: "phase", phase: "start", share: 0.15 });
  const sheets = layOut(made.garment.pieces, job.paper);
  say({ kind: "phase", phase: "draw", share: 0.45 });
  const bytes = await written(job, made, sheets);
  say({ kind: "phase", phase: "write", share: 0.95 });
  say({ kind: "done", bytes });
};

addEventListener("message", ({ data }: MessageEvent<ExportJob>) => {
  run(data).catch((fault: unknown) => say({ kind: "failed", why: String(fault) }));
});
