import { fitRun } from "../../trace/follow/fitRun.ts";
import { livePath } from "../../trace/follow/livePath.ts";
import { jointOf } from "../../trace/follow/meetRuns.ts";
import { proposing } from "../../trace/follow/proposeOutline.ts";
import { findMarks } from "../../trace/photo/findMarks.ts";
import type { StraightEdge } from "../../trace/photo/fitPlane.ts";
import { joinTables, type TablePart } from "../../trace/photo/joinTables.ts";
import { greyAt } from "../../trace/photo/picture.ts";
import { rectified, type TablePicture } from "../../trace/photo/rectify.ts";
import { findStraightEdge } from "../../trace/photo/straightEdge.ts";
import { faulty, found, type Told } from "../../trace/told.ts";
import type {
  Answer,
  Ask,
  JobMessage,
  JobName,
  JobReply,
  PictureFile,
  Placing,
} from "./photoJobs.ts";
import { bitmapOf, opened, pictureOf } from "./pictureRoom.ts";
import { placePiece } from "./placePiece.ts";
import { windowOf } from "./tableWindow.ts";

/** The longer side of what is shown of the table. */
const SHOWN = 2400;

type Share = (share: number) => void;

const fileOf = (pictures: readonly PictureFile[], id: string): PictureFile | undefined =>
  pictures.find((picture) => picture.id === id);

const lost: Told<never> = faulty(
  "picture",
  "lost",
  "The picture’s file is no longer on this device.",
  "Choose the picture again; what was marked in it is kept.",
);

const open = async ({ picture }: Ask<"open">): Promise<Told<Answer<"open">>> => {
  const told = await opened(picture);
  if ("fault" in told) return told;
  const { picture: grey, shown } = told.found;
  return found({ width: grey.width, height: grey.height, preview: shown });
};

const marks = async ({ picture }: Ask<"marks">): Promise<Told<Answer<"marks">>> => {
  const told = await pictureOf(picture);
  return "fault" in told ? told : findMarks(told.found);
};

/** A small part of the picture, pixel by pixel, for the magnifier. */
const patch = async ({ picture, at, reach }: Ask<"patch">): Promise<Told<Answer<"patch">>> => {
  const told = await pictureOf(picture);
  if ("fault" in told) return told;
  const side = 2 * reach + 1;
  const [x0, y0] = [Math.floor(at.x) - reach + 0.5, Math.floor(at.y) - reach + 0.5];
  const grey = Uint8Array.from({ length: side * side }, (_, k) =>
    greyAt(told.found, x0 + (k % side), y0 + Math.floor(k / side)),
  );
  return found(bitmapOf({ grey, width: side, height: side }, side));
};

const place = ({ pictures, piece, along }: Ask<"place">): Promise<Told<Placing>> =>
  placePiece(
    piece,
    async ({ id, edges }) => {
      const file = fileOf(pictures, id);
      const picture = file ? await pictureOf(file) : lost;
      if ("fault" in picture) return picture;
      const straight: StraightEdge[] = [];
      for (const [from, to] of edges) {
        const edge = findStraightEdge(picture.found, from, to);
        if ("fault" in edge) return edge;
        straight.push(edge.found);
      }
      return found(straight);
    },
    along,
  );

/** The table that was laid out last: following a line needs it again and again. */
let laid: { readonly key: string; readonly table: TablePicture } | null = null;

const tableOf = async (
  { pictures, placing }: { readonly pictures: readonly PictureFile[]; readonly placing: Placing },
  share: Share,
): Promise<Told<TablePicture>> => {
  const key = JSON.stringify(placing.parts);
  if (laid?.key === key) return found(laid.table);
  const window = windowOf(placing.parts);
  const parts: TablePart[] = [];
  for (const [i, { id, plane, marks: placed }] of placing.parts.entries()) {
    const file = fileOf(pictures, id);
    const picture = file ? await pictureOf(file) : lost;
    if ("fault" in picture) return picture;
    const work = rectified(picture.found, plane, window);
    for (;;) {
      const step = work.next();
      if (step.done) {
        parts.push({ table: step.value, marks: placed.map((mark) => mark.place) });
        break;
      }
      share((i + step.value) / placing.parts.length);
    }
  }
  const [first, ...more] = parts;
  if (!first) return lost;
  laid = { key, table: joinTables(first, more) };
  return found(laid.table);
};

const table = async (ask: Ask<"table">, share: Share): Promise<Told<Answer<"table">>> => {
  const told = await tableOf(ask, share);
  if ("fault" in told) return told;
  return found({ window: told.found.window, preview: bitmapOf(told.found, SHOWN) });
};

const propose = async (ask: Ask<"propose">, share: Share): Promise<Told<Answer<"propose">>> => {
  const told = await tableOf(ask, (done) => share(done / 2));
  if ("fault" in told) return told;
  const work = proposing(told.found, ask.what, ask.inside);
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
    share(0.5 + step.value / 2);
  }
};

const follow = async (ask: Ask<"follow">, share: Share): Promise<Told<Answer<"follow">>> => {
  const told = await tableOf(ask, share);
  if ("fault" in told) return told;
  const line = livePath(told.found, ask.what, ask.from, ask.to);
  if ("fault" in line) return line;
  const { path, error } = fitRun(line.found);
  const joint = ask.before && jointOf(ask.before, path);
  return found({ joint, run: joint?.after ?? path, error });
};

const WORK: {
  readonly [Name in JobName]: (ask: Ask<Name>, share: Share) => Promise<Told<Answer<Name>>>;
} = { open, marks, patch, place, table, propose, follow };

const reply = (answer: JobReply, transfer: Transferable[] = []): void =>
  postMessage(answer, { transfer });

const run = <Name extends JobName>(name: Name, ask: Ask<Name>, share: Share) =>
  WORK[name](ask, share);

/** Bitmaps are handed over, not copied. */
const bitmapsIn = (told: Told<unknown>): Transferable[] => {
  const thing = "found" in told ? told.found : null;
  if (thing instanceof ImageBitmap) return [thing];
  const preview =
    typeof thing === "object" && thing !== null && "preview" in thing ? thing.preview : null;
  return preview instanceof ImageBitmap ? [preview] : [];
};

/** One job after the other, in the order in which they were asked for. */
let queue: Promise<void> = Promise.resolve();

const serve = async ({ n, name, ask }: JobMessage): Promise<void> => {
  const share: Share = (done) => reply({ n, kind: "share", share: done });
  const told = await run(name, ask as never, share).catch(
    (): Told<never> =>
      faulty(
        "picture",
        "failed",
        "The picture could not be worked on: there is too little memory for it.",
        "Close other pages, or save the picture at half its width and height, and try again.",
      ),
  );
  reply({ n, kind: "told", told }, bitmapsIn(told));
};

addEventListener("message", ({ data }: MessageEvent<JobMessage>) => {
  queue = queue.then(() => serve(data));
});
