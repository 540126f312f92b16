import { create } from "zustand";
import type { Check } from "../../checks/check.ts";
import { bodyOf, heldBody } from "../../project/work.ts";
import { taughtPupil, useClassFile } from "../classroom/classFile.ts";
import { isForChild } from "../guide/sewn.ts";
import { bodyName } from "../state/changes.ts";
import { blockOf, drawnOf } from "../state/made.ts";
import { studio, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { download, fileName } from "./download.ts";
import {
  type ClassJob,
  type ExportAnswer,
  type ExportJob,
  type ExportKind,
  type ExportPhase,
  isHome,
  type MarkersJob,
  type NestedJob,
} from "./exportJob.ts";
import { homeNow } from "./homePaper.ts";
import { largeNow } from "./largePaper.ts";
import { type NestedOf, nestedBodies, nestedFault } from "./nested.ts";

export type FileKind = ExportKind | (ClassJob | MarkersJob | NestedJob)["kind"];

/** What the page says of a file that is being made. */
export type Run =
  | { readonly state: "idle" }
  | {
      readonly state: "working";
      readonly file: string;
      readonly phase: ExportPhase;
      readonly share: number;
    }
  | { readonly state: "made"; readonly file: string; readonly kind: FileKind }
  | { readonly state: "stopped" }
  | { readonly state: "failed"; readonly why: string };

export const useRun = create<Run>()(() => ({ state: "idle" }));
const show = (run: Run): void => useRun.setState(run, true);

let worker: Worker | null = null;

const TYPES: Readonly<Record<FileKind, { ending: string; type: string }>> = {
  pdf: { ending: ".pdf", type: "application/pdf" },
  svg: { ending: ".svg", type: "image/svg+xml" },
  dxf: { ending: ".dxf", type: "application/dxf" },
  report: { ending: "-report.json", type: "application/json" },
  guide: { ending: "-guide.pdf", type: "application/pdf" },
  handout: { ending: "-handout.pdf", type: "application/pdf" },
  answers: { ending: "-answers.pdf", type: "application/pdf" },
  test: { ending: "-rib-test.pdf", type: "application/pdf" },
  class: { ending: "-class.pdf", type: "application/pdf" },
  copyShop: { ending: "-copy-shop.pdf", type: "application/pdf" },
  projector: { ending: "-projector.pdf", type: "application/pdf" },
  nested: { ending: "-nested.pdf", type: "application/pdf" },
  markers: { ending: "-marks.pdf", type: "application/pdf" },
};

/** Stops that are neither mended nor signed for: no file is made over them. */
export const openStops = (checks: readonly Check[], signed: Readonly<Record<string, string>>) =>
  checks.filter(({ id, verdict }) => verdict === "stop" && signed[id] === undefined);

const end = (): void => {
  worker?.terminate();
  worker = null;
};

const onAnswer = (kind: FileKind, file: string, answer: ExportAnswer): void => {
  if (answer.kind === "phase") {
    show({ state: "working", file, phase: answer.phase, share: answer.share });
    return;
  }
  end();
  if (answer.kind === "failed") {
    show({ state: "failed", why: answer.why });
    return;
  }
  download(file, answer.bytes, TYPES[kind].type);
  show({ state: "made", file, kind });
};

/** Off the page's own thread; one at a time. */
const begin = (job: ExportJob | ClassJob | MarkersJob | NestedJob, title: string): void => {
  end();
  const file = fileName(title, TYPES[job.kind].ending);
  show({ state: "working", file, phase: "start", share: 0.05 });
  worker = new Worker(new URL("./exportWorker.ts", import.meta.url), { type: "module" });
  worker.onmessage = ({ data }: MessageEvent<ExportAnswer>) => onAnswer(job.kind, file, data);
  worker.onerror = (event) => {
    end();
    show({ state: "failed", why: event.message ?? say("paper.cancelled") });
  };
  worker.postMessage(job);
};

/** A lesson's handout is made on the measures that the class works with. */
const pupilFor = (kind: ExportKind) =>
  kind === "handout" || kind === "answers" ? taughtPupil() : undefined;

/** Makes a file from the body on the table, and hands it over. */
export const makeFile = (kind: ExportKind): void => {
  const now = work();
  const { made } = drawnOf(now);
  const pupil = pupilFor(kind);
  const body = pupil ?? bodyOf(heldBody(now));
  if (!body || !made) return;
  if (!isHome(kind) && openStops(made.checks, now.signed).length > 0) return;
  const job: ExportJob = {
    kind,
    body,
    choices: now.choices,
    block: pupil ? null : blockOf(now),
    paper: now.paper,
    print: now.print,
    large: largeNow(),
    home: homeNow(now),
    date: now.date,
    language: studio().language,
    isChild: isForChild(now),
  };
  begin(job, pupil ? pupil.id : bodyName(now));
};

/** Every pupil of the class file on a sheet of its own. */
export const makeClassSheets = (): void => {
  const read = useClassFile.getState();
  if (read.state !== "read") return;
  const now = work();
  const { title, pupils } = read;
  const { language } = studio();
  const { choices, date } = now;
  begin({ kind: "class", title, pupils, choices, home: homeNow(now), date, language }, title);
};

/** Several bodies or sizes in one file. */
export const makeNested = (of: NestedOf): void => {
  const now = work();
  const { choices, paper, print, date } = now;
  const bodies = nestedBodies(of, now);
  const title = of === "work" ? now.title : of;
  if (nestedFault(bodies.length) === null)
    begin({ kind: "nested", bodies, choices, paper, print, date }, title);
};

/** The marks that are laid round a block to photograph it. */
export const makeMarkers = (): void =>
  begin({ kind: "markers", home: homeNow(work()), language: studio().language }, "ribwright");

export const stopFile = (): void => {
  end();
  show({ state: "stopped" });
};
