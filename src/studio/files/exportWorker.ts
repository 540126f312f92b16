import fontUrl from "../../../assets/fonts/NotoSans-subset.ttf?url";
import { toDxf } from "../../export/dxf.ts";
import { layOut } from "../../export/layout.ts";
import { toPdf } from "../../export/pdf.ts";
import { reportBytes } from "../../export/report.ts";
import type { Sheets } from "../../export/sheets.ts";
import { toSvg } from "../../export/svg.ts";
import { type Made, make } from "../../project/make.ts";
import {
  type ClassJob,
  type ExportAnswer,
  type ExportJob,
  isHome,
  type MarkersJob,
  type NestedJob,
} from "./exportJob.ts";

const say = (answer: ExportAnswer): void => postMessage(answer);

const font = async (): Promise<Uint8Array> =>
  new Uint8Array(await (await fetch(fontUrl)).arrayBuffer());

const printOptions = async ({ home, language, date }: ExportJob | ClassJob) => ({
  font: await font(),
  paper: home,
  language,
  ...(date === null ? {} : { date }),
});

/** Guide and handout bring their own words and drawings, when they are asked for. */
const printed = async (job: ExportJob, made: Made): Promise<BlobPart> => {
  const options = await printOptions(job);
  if (job.kind === "guide" || job.kind === "test") {
    const { guidePdf, tableTestPdf } = await import("../../export/guidePdf.ts");
    const subject = { ...made, isChild: job.isChild };
    const write = job.kind === "guide" ? guidePdf : tableTestPdf;
    return new Uint8Array(await write(subject, options));
  }
  const { handoutPdf } = await import("../../export/handout.ts");
  const answers = job.kind === "answers";
  return new Uint8Array(await handoutPdf(made, { ...options, answers }));
};

/** Large pages are laid out by themselves: the maker's sheets are for a home printer. */
const large = async (job: ExportJob, made: Made): Promise<BlobPart> => {
  const { pieces } = made.garment;
  const options = { font: await font(), ...(job.date === null ? {} : { date: job.date }) };
  say({ kind: "phase", phase: "draw", share: 0.45 });
  if (job.kind === "projector") {
    const { projectorPdf, projectorSheets } = await import("../../export/projector.ts");
    return new Uint8Array(await projectorPdf(made, projectorSheets(pieces), options));
  }
  const { copyShopPdf, copyShopSheets } = await import("../../export/copyShop.ts");
  return new Uint8Array(await copyShopPdf(made, copyShopSheets(pieces, job.large), options));
};

/** The file's bytes, by the same calls as the command line's `draft`. */
const written = async (job: ExportJob, made: Made, sheets: Sheets): Promise<BlobPart> => {
  if (job.kind === "report") return reportBytes(made, sheets);
  if (job.kind === "svg") return toSvg(made, sheets);
  if (job.kind === "dxf") return toDxf(made, sheets);
  const date = job.date === null ? {} : { date: job.date };
  const bytes = await toPdf(made, sheets, { font: await font(), ...date });
  return new Uint8Array(bytes);
};

const laidOut = (job: ExportJob, made: Made): Sheets => {
  const sheets = layOut(made.garment.pieces, job.paper, job.print);
  say({ kind: "phase", phase: "draw", share: 0.45 });
  return sheets;
};

/** Drafting goes pupil by pupil, so that the page can tell how far it is. */
const classSheets = async (job: ClassJob): Promise<BlobPart> => {
  const pupils = job.pupils.map((body, i) => {
    say({ kind: "phase", phase: "pupils", share: (0.8 * i) / job.pupils.length });
    return make(body, job.choices, null);
  });
  say({ kind: "phase", phase: "draw", share: 0.8 });
  const { classPdf } = await import("../../export/handout.ts");
  return new Uint8Array(await classPdf(job.title, pupils, await printOptions(job)));
};

const bodyFile = async (job: ExportJob): Promise<BlobPart> => {
  const made = make(job.body, job.choices, job.block);
  say({ kind: "phase", phase: "start", share: 0.15 });
  if (isHome(job.kind)) return printed(job, made);
  const isLarge = job.kind === "copyShop" || job.kind === "projector";
  return isLarge ? large(job, made) : written(job, made, laidOut(job, made));
};

/** Four marks, one a page. */
const markers = async ({ home, language }: MarkersJob): Promise<BlobPart> => {
  const { FEWEST_MARKS, markersPdf } = await import("../../export/markerPages.ts");
  const options = { font: await font(), paper: home, language };
  return new Uint8Array(await markersPdf(FEWEST_MARKS, options));
};

/** What several sizes share is laid out once for them all; hands lay one body's pieces only. */
const nested = async (job: NestedJob): Promise<BlobPart> => {
  const [first, ...others] = job.bodies.map(({ body, size }, i) => {
    say({ kind: "phase", phase: "bodies", share: (0.4 * i) / job.bodies.length });
    const made = make(body, job.choices, null);
    return size === undefined ? made : { ...made, body: { ...made.body, size } };
  });
  if (!first) throw new Error("There is nothing to nest.");
  const [{ layOutNest }, { nestPdf }] = await Promise.all([
    import("../../export/nest.ts"),
    import("../../export/nestPdf.ts"),
  ]);
  say({ kind: "phase", phase: "start", share: 0.45 });
  const sheets = layOutNest([first, ...others], job.paper, { ...job.print, only: [], placed: [] });
  say({ kind: "phase", phase: "draw", share: 0.6 });
  const date = job.date === null ? {} : { date: job.date };
  return new Uint8Array(await nestPdf([first, ...others], sheets, { font: await font(), ...date }));
};

type Job = ExportJob | ClassJob | MarkersJob | NestedJob;

const bytesOf = (job: Job): Promise<BlobPart> => {
  if (job.kind === "markers") return markers(job);
  if (job.kind === "nested") return nested(job);
  return job.kind === "class" ? classSheets(job) : bodyFile(job);
};

const run = async (job: Job): Promise<void> => {
  const bytes = await bytesOf(job);
  say({ kind: "phase", phase: "write", share: 0.95 });
  say({ kind: "done", bytes });
};

addEventListener("message", ({ data }: MessageEvent<Job>) => {
  run(data).catch((fault: unknown) => say({ kind: "failed", why: String(fault) }));
});
