import { create } from "zustand";
import type { Check } from "../../checks/check.ts";
import { bodyOf, heldBody } from "../../project/work.ts";
import { isForChild } from "../guide/sewn.ts";
import { bodyName } from "../state/changes.ts";
import { blockOf, drawnOf } from "../state/made.ts";
import { studio, work } from "../state/store.ts";
import { say } from "../words/say.ts";
import { download, fileName } from "./download.ts";
import {
  type ExportAnswer,
  type ExportJob,
  type ExportKind,
  type ExportPhase,
  isHome,
} from "./exportJob.ts";

/** What the page says of a file that is being made. */
export type Run =
  | { readonly state: "idle" }
  | {
      readonly state: "working";
      readonly file: string;
      readonly phase: ExportPhase;
      readonly share: number;
    }
  | { readonly state: "made"; readonly file: string; readonly kind: ExportKind }
  | { readonly state: "stopped" }
  | { readonly state: "failed"; readonly why: string };

export const useRun = create<Run>()(() => ({ state: "idle" }));
const show = (run: Run): void => useRun.setState(run, true);

let worker: Worker | null = null;

const TYPES: Readonly<Record<ExportKind, { ending: string; type: string }>> = {
  pdf: { ending: ".pdf", type: "application/pdf" },
  svg: { ending: ".svg", type: "image/svg+xml" },
  dxf: { ending: ".dxf", type: "application/dxf" },
  report: { ending: "-report.json", type: "application/json" },
  guide: { ending: "-guide.pdf", type: "application/pdf" },
  handout: { ending: "-handout.pdf", type: "application/pdf" },
  answers: { ending: "-answers.pdf", type: "application/pdf" },
};

/** Stops that are neither mended nor signed for: no file is made over them. */
export const openStops = (checks: readonly Check[], signed: Readonly<Record<string, string>>) =>
  checks.filter(({ id, verdict }) => verdict === "stop" && signed[id] === undefined);

const nameOf = (kind: ExportKind): string => fileName(bodyName(work()), TYPES[kind].ending);

const end = (): void => {
  worker?.terminate();
  worker = null;
};

const onAnswer = (kind: ExportKind, file: string, answer: ExportAnswer): void => {
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

/** Makes a file off the page's own thread, and hands it over. One at a time. */
export const makeFile = (kind: ExportKind): void => {
  const now = work();
  const body = bodyOf(heldBody(now));
  const { made } = drawnOf(now);
  if (!body || !made) return;
  if (!isHome(kind) && openStops(made.checks, now.signed).length > 0) return;
  end();
  const file = nameOf(kind);
  const job: ExportJob = {
    kind,
    body,
    choices: now.choices,
    block: blockOf(now),
    paper: now.paper,
    date: now.date,
    language: studio().language,
    isChild: isForChild(now),
  };
  show({ state: "working", file, phase: "start", share: 0.05 });
  worker = new Worker(new URL("./exportWorker.ts", import.meta.url), { type: "module" });
  worker.onmessage = ({ data }: MessageEvent<ExportAnswer>) => onAnswer(kind, file, data);
  worker.onerror = (event) => {
    end();
    show({ state: "failed", why: event.message ?? say("paper.cancelled") });
  };
  worker.postMessage(job);
};

export const stopFile = (): void => {
  end();
  show({ state: "stopped" });
};
