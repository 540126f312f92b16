import { availableParallelism } from "node:os";
import { setFlagsFromString } from "node:v8";
import { parentPort, type ResourceLimits, Worker, workerData } from "node:worker_threads";
import { type Done, doBody, type Run, type Task } from "./batchBody.ts";

/** Bodies handed over at once: few where each takes long, so that all threads end together. */
const SHARE_WITH_SHEETS = 1;
const SHARE_WITHOUT = 16;
/** Shares that lie ready for a thread, so that it never waits for the next. */
const READY = 2;
/** Starting a thread takes as long as drafting about this many bodies; fewer are done without. */
const WORTH_A_THREAD = { withSheets: 4, without: 60 };
/** More threads than this only wait for the disk. Ours. */
const MOST_THREADS = 8;

/**
 * Room for what one body needs many times over; more would only be swept out later. Sheets leave more
 * behind: with less room what was compiled is swept out too, and compiled again. In MB, measured.
 */
const MOST_OLD = 128;
const MOST_YOUNG = { withSheets: 64, without: 48 };

/**
 * How much is run of a function before it is looked at for compiling anew, in bytes of its code. Every
 * thread compiles for itself: as it comes (132 kB), that is a quarter of the work of two hundred
 * patterns. Engines that are known to have the option: V8 11 to 13, Node 20 to 24. Decision 13.
 */
const PATIENCE = "--interrupt-budget=1000000";
const [FIRST_PATIENT, LAST_PATIENT] = [11, 13];

const compileLessOften = (): void => {
  const engine = Number.parseInt(process.versions.v8, 10);
  if (engine >= FIRST_PATIENT && engine <= LAST_PATIENT) setFlagsFromString(PATIENCE);
};

const sharesOf = (tasks: readonly Task[], size: number): readonly (readonly Task[])[] =>
  Array.from({ length: Math.ceil(tasks.length / size) }, (_, share) =>
    tasks.slice(share * size, (share + 1) * size),
  );

/** A run that is under way: it can be waited for, or stopped where it stands. */
export type UnderWay = { readonly ended: Promise<void>; readonly stop: () => Promise<void> };

type OnDone = (done: Done) => void;

/** Lets waiting signals in between two bodies: drafting itself never waits. */
const breath = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Without threads, one body after another. */
const inTurn = (tasks: readonly Task[], run: Run, onDone: OnDone): UnderWay => {
  let isStopped = false;
  const all = async (): Promise<void> => {
    for (const task of tasks) {
      await breath();
      if (isStopped) return;
      onDone(await doBody(task, run));
    }
  };
  const stop = async () => {
    isStopped = true;
  };
  return { ended: all(), stop };
};

/** One thread: takes shares until there are none, and ends with an error if the thread dies. */
const serveThread = (worker: Worker, next: () => readonly Task[] | undefined, onDone: OnDone) =>
  new Promise<void>((resolve, reject) => {
    let given = 0;
    const give = () => {
      const share = next();
      if (share === undefined) return given === 0 ? worker.postMessage(null) : undefined;
      given++;
      worker.postMessage(share);
    };
    worker.on("message", (done: readonly Done[]) => {
      given--;
      for (const one of done) onDone(one);
      give();
    });
    worker.on("error", reject);
    worker.on("exit", (code) =>
      code === 0 ? resolve() : reject(new Error("a thread ended early")),
    );
    for (let i = 0; i < READY; i++) give();
  });

const roomOf = ({ job }: Run): ResourceLimits => ({
  maxOldGenerationSizeMb: MOST_OLD,
  maxYoungGenerationSizeMb: job.font === null ? MOST_YOUNG.without : MOST_YOUNG.withSheets,
});

/** Shares out the bodies among threads; each asks for more as it is done. */
const inThreads = (
  tasks: readonly Task[],
  run: Run,
  onDone: OnDone,
  { threads, share }: { readonly threads: number; readonly share: number },
): UnderWay => {
  compileLessOften();
  const shares = sharesOf(tasks, share)[Symbol.iterator]();
  const next = (): readonly Task[] | undefined => shares.next().value;
  let isStopped = false;
  const workers = Array.from(
    { length: threads },
    () => new Worker(new URL(import.meta.url), { workerData: run, resourceLimits: roomOf(run) }),
  );
  const stop = async (): Promise<void> => {
    isStopped = true;
    await Promise.all(workers.map((worker) => worker.terminate()));
  };
  const all = async (): Promise<void> => {
    try {
      await Promise.all(workers.map((worker) => serveThread(worker, next, onDone)));
    } catch (error) {
      if (isStopped) return;
      await stop();
      throw error;
    }
  };
  return { ended: all(), stop };
};

/** Drafts all bodies of a run on as many cores as it is worth; `onDone` hears of each as it ends. */
export const draftAll = (tasks: readonly Task[], run: Run, onDone: OnDone): UnderWay => {
  const withSheets = run.job.font !== null;
  const worth = withSheets ? WORTH_A_THREAD.withSheets : WORTH_A_THREAD.without;
  const cores = Math.min(availableParallelism(), MOST_THREADS);
  const threads = Math.min(cores, Math.floor(tasks.length / worth));
  if (threads < 2) return inTurn(tasks, run, onDone);
  const share = withSheets ? SHARE_WITH_SHEETS : SHARE_WITHOUT;
  return inThreads(tasks, run, onDone, { threads, share });
};

/** What a thread of `inThreads` does: drafts the shares that it is given, until it is given none. */
export const serveAsThread = (): void => {
  const port = parentPort;
  if (port === null) return;
  const run: Run = workerData;
  port.on("message", async (share: readonly Task[] | null) => {
    if (share === null) return port.close();
    const done: Done[] = [];
    for (const task of share) done.push(await doBody(task, run));
    port.postMessage(done);
  });
};
