import { isMainThread } from "node:worker_threads";
import { PROGRAM } from "../export/data/program.ts";
import { commandOf } from "./arguments.ts";
import { batch } from "./batch.ts";
import { block } from "./block.ts";
import { check } from "./check.ts";
import { draft } from "./draft.ts";
import { DONE, type ExitStatus, FAILED, REFUSED } from "./exitStatus.ts";
import { guide, handout } from "./homePrint.ts";
import { markers } from "./markersFile.ts";
import { nest } from "./nestFile.ts";
import { serveAsThread } from "./pool.ts";
import type { Voice } from "./progress.ts";
import { usageOf } from "./usage.ts";

const run = async (words: readonly string[], voice: Voice): Promise<ExitStatus> => {
  const command = commandOf(words);
  switch (command.command) {
    case "draft":
      return draft(command, voice);
    case "batch":
      return batch(command, voice);
    case "check":
      return check(command, voice);
    case "block":
      return block(command, voice);
    case "guide":
      return guide(command, voice);
    case "handout":
      return handout(command, voice);
    case "nest":
      return nest(command, voice);
    case "markers":
      return markers(command, voice);
    case "version":
      voice.out(`${PROGRAM.name} ${PROGRAM.version}\n`);
      return DONE;
    case "help":
      voice.out(`${usageOf(command.of)}\n`);
      return DONE;
    case "wrong":
      voice.err(`${command.sentence}\n\n${usageOf(command.of)}\n`);
      return REFUSED;
  }
};

const voice: Voice = {
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  isWatched: process.stderr.isTTY,
};

/** No maker is shown a stack; what went wrong is still said, so that it can be told to us. */
const failed = (error: unknown): ExitStatus => {
  const what = error instanceof Error ? error.message : String(error);
  voice.err(
    `The program itself failed, which is our mistake: ${what}. Please send us this line.\n`,
  );
  return FAILED;
};

if (isMainThread) {
  // A reader that goes away (`… | head`) is no failure.
  for (const stream of [process.stdout, process.stderr]) stream.on("error", () => undefined);
  process.exitCode = await run(process.argv.slice(2), voice).catch(failed);
} else {
  serveAsThread();
}
