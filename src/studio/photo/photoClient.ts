import { faulty, type Told } from "../../trace/told.ts";
import type { Answer, Ask, JobName, JobReply } from "./photoJobs.ts";

type Waiting = {
  readonly answer: (told: Told<unknown>) => void;
  readonly share: (share: number) => void;
};

const waiting = new Map<number, Waiting>();
let worker: Worker | null = null;
let count = 0;

const onReply = ({ data }: MessageEvent<JobReply>): void => {
  const job = waiting.get(data.n);
  if (!job) return;
  if (data.kind === "share") {
    job.share(data.share);
    return;
  }
  waiting.delete(data.n);
  job.answer(data.told);
};

const gone = faulty(
  "picture",
  "stopped",
  "The work on the picture was stopped; nothing was changed.",
  "Begin it again when you like.",
);

const failed = faulty(
  "picture",
  "failed",
  "The picture could not be worked on: there is too little memory for it.",
  "Close other pages, or save the picture at half its width and height, and try again.",
);

const endWith = (told: Told<never>): void => {
  worker?.terminate();
  worker = null;
  const left = [...waiting.values()];
  waiting.clear();
  for (const { answer } of left) answer(told);
};

/** Ends all work on pictures at once; the next job begins with a new worker. */
export const stopPictures = (): void => endWith(gone);

const started = (): Worker => {
  if (worker) return worker;
  worker = new Worker(new URL("./photoWorker.ts", import.meta.url), { type: "module" });
  worker.onmessage = onReply;
  worker.onerror = () => endWith(failed);
  return worker;
};

const NO_SHARE = (): void => undefined;

/** Work on pictures off the page's own thread. Never rejects: what is wrong is told. */
export const askPictures = <Name extends JobName>(
  name: Name,
  ask: Ask<Name>,
  share: (share: number) => void = NO_SHARE,
): Promise<Told<Answer<Name>>> =>
  new Promise((done) => {
    count++;
    waiting.set(count, { share, answer: (told) => done(told as Told<Answer<Name>>) });
    started().postMessage({ n: count, name, ask });
  });

export const isStopped = (told: Told<unknown>): boolean => told === gone;
