import { apart, type Point } from "../../geometry/point.ts";
import type { Mm } from "../../geometry/units.ts";
import { soundOutline } from "../../trace/edges/soundOutline.ts";
import type { Followed } from "../../trace/follow/kind.ts";
import { closedUp, withFollowed } from "../../trace/pen/followedPen.ts";
import {
  canLosePoint,
  curved,
  nearestPlace,
  straightened,
  withoutPoint,
  withPoint,
} from "../../trace/pen/mendPen.ts";
import {
  movedHandle,
  movedPoint,
  NO_LINE,
  openRuns,
  type PenLine,
  penOfRuns,
  runsOfPen,
  segmentAfter,
  withCorner,
} from "../../trace/pen/pen.ts";
import { own, putOutline, useOwn } from "../ownBlock/state.ts";
import { type Busy, eye, forPiece, look } from "./eye.ts";
import { askPictures, isStopped } from "./photoClient.ts";
import type { Table } from "./photoJobs.ts";
import { photoSay as say } from "./photoSay.ts";
import { toolFor } from "./picking.ts";
import { filesOf } from "./pictureFiles.ts";
import { changePiece, newGesture, pieceName, pieceNow } from "./piece.ts";
import { placingKey, placingOf } from "./placing.ts";

const busyWith =
  (what: Busy) =>
  (share: number): void =>
    look({ busy: { what, share } });

/** What a job on the table needs; null while the pictures are not placed. */
const tableAsk = async () => {
  const placing = placingOf(pieceName());
  return placing && { placing, pictures: await filesOf(pieceNow().photos) };
};

/** The table of the piece in hand, laid out where it is not yet. */
export const layTable = async (): Promise<Table | null> => {
  const name = pieceName();
  const key = placingKey(pieceNow());
  const known = eye().tables[name];
  if (known?.key === key) return known.is;
  const ask = await tableAsk();
  if (!ask) return null;
  const busy = busyWith("laying");
  busy(0);
  const told = await askPictures("table", ask, busy);
  look({ busy: null });
  if ("fault" in told) {
    if (!isStopped(told)) look({ fault: told.fault });
    return null;
  }
  look({ tables: forPiece(eye().tables, name, { key, is: told.found }) });
  return told.found;
};

export const toTable = async (): Promise<void> => {
  if (!(await layTable())) return;
  const isTraced = pieceNow().pen.isClosed;
  look({ stage: "trace", tool: isTraced ? "mend" : "inside", cursor: null, held: null, end: null });
};

export const toPicture = (): void => {
  const { photos, by } = pieceNow();
  const [photo] = photos;
  const tool = photo ? toolFor(photo, by) : "mark";
  look({ stage: "picture", tool, cursor: null, held: null, end: null, fault: null });
};

export const setFollowed = (followed: Followed): void =>
  changePiece({ followed }, say("photo.step.followed"));

const middleOf = ({ window: { left, top, step, width, height } }: Table): Point => ({
  x: left + (width * step) / 2,
  y: top + (height * step) / 2,
});

export const insideOf = (table: Table): Point => eye().inside[pieceName()] ?? middleOf(table);

/** The whole outline proposed from the picture, round a place inside the piece. */
export const findOutline = async (): Promise<void> => {
  const [table, ask] = [await layTable(), await tableAsk()];
  if (!table || !ask) return;
  const { followed } = pieceNow();
  const busy = busyWith("finding");
  busy(0);
  look({ fault: null });
  const told = await askPictures(
    "propose",
    { ...ask, what: followed, inside: insideOf(table) },
    busy,
  );
  look({ busy: null });
  if ("fault" in told) {
    if (!isStopped(told)) look({ fault: told.fault });
    return;
  }
  const { runs, error } = told.found;
  changePiece({ pen: penOfRuns(runs), fit: error }, say("photo.step.found"));
  look({ tool: "mend", held: null });
};

const drawn = (pen: PenLine, step: string, gesture?: string): void =>
  changePiece({ pen, fit: null }, step, gesture);

export const movePoint = (i: number, to: Point, gesture: string): void =>
  drawn(movedPoint(pieceNow().pen, i, to), say("photo.step.point", { n: i + 1 }), gesture);

export const moveHandle = (i: number, side: "before" | "after", to: Point, gesture: string): void =>
  drawn(movedHandle(pieceNow().pen, i, side, to), say("photo.step.handle", { n: i + 1 }), gesture);

export const dropPoint = (i: number): void => {
  const { pen } = pieceNow();
  if (!canLosePoint(pen)) return;
  drawn(withoutPoint(pen, i), say("photo.step.dropPoint", { n: i + 1 }));
  look({ held: null });
};

/** The last point of an open line taken back. */
export const dropLast = (): void => {
  const { pen } = pieceNow();
  const kept = pen.points.slice(0, -1);
  const [last] = kept.slice(-1);
  const points = last ? [...kept.slice(0, -1), { ...last, after: null }] : [];
  if (pen.points.length > 0) drawn({ points, isClosed: false }, say("photo.step.dropLast"));
};

/** Half way to the next point. */
export const addAfter = (i: number): void => {
  drawn(withPoint(pieceNow().pen, { after: i, t: 0.5 }), say("photo.step.addPoint"));
  look({ held: `point.${i + 1}` });
};

export const turnCorner = (i: number): void => {
  const { pen } = pieceNow();
  const isCorner = !pen.points[i]?.isCorner;
  drawn(withCorner(pen, i, isCorner), say(isCorner ? "photo.step.corner" : "photo.step.smooth"));
};

/** The line after a point bent, or straight again. */
export const turnBend = (i: number): void => {
  const { pen } = pieceNow();
  const isStraight = segmentAfter(pen, i)?.kind === "line";
  drawn(
    isStraight ? curved(pen, i) : straightened(pen, i),
    say(isStraight ? "photo.step.curved" : "photo.step.straight"),
  );
};

/** A tap so near to the line adds a point to it, mm at the table; the page says how many px. */
export const addPointNear = (at: Point, reach: Mm): void => {
  const { pen } = pieceNow();
  const place = nearestPlace(pen, at, reach);
  if (!place) return;
  drawn(withPoint(pen, place), say("photo.step.addPoint"));
  look({ held: `point.${place.after + 1}` });
};

export const startAnew = (): void => {
  changePiece({ pen: NO_LINE, fit: null }, say("photo.step.anewLine"));
  look({ tool: "inside", held: null });
};

export const closeLine = (): void => {
  const { pen } = pieceNow();
  if (pen.isClosed || pen.points.length < 3) return;
  drawn({ ...pen, isClosed: true }, say("photo.step.close"));
  look({ tool: "mend", held: null });
};

/** A tap this near to the first point closes the line. */
export const isClosing = ({ points, isClosed }: PenLine, at: Point, reach: Mm): boolean => {
  const [first] = points;
  return Boolean(first && !isClosed && points.length >= 3 && apart(first.at, at) <= reach);
};

/** A point drawn by hand; a pull from it bends the line through it. */
export const drawPoint = (at: Point, pull: Point | null, gesture: string): void => {
  const { pen } = pieceNow();
  const isAgain = useOwn.getState().history.past.at(-1)?.gesture === gesture;
  const points = isAgain ? pen.points.slice(0, -1) : pen.points;
  const back = pull && { x: 2 * at.x - pull.x, y: 2 * at.y - pull.y };
  const point = { at, before: points.length > 0 ? back : null, after: pull, isCorner: !pull };
  drawn({ points: [...points, point], isClosed: false }, say("photo.step.draw"), gesture);
};

/** The line followed from its last point to where the maker taps. */
export const followTo = async (at: Point, isLast: boolean): Promise<void> => {
  const { pen, followed } = pieceNow();
  const last = pen.points.at(-1);
  if (!last) {
    drawPoint(at, null, newGesture("draw"));
    return;
  }
  const ask = await tableAsk();
  if (!ask) return;
  const busy = busyWith("following");
  busy(0);
  look({ fault: null });
  const told = await askPictures(
    "follow",
    { ...ask, what: followed, from: last.at, to: at, before: openRuns(pen).at(-1) ?? null },
    busy,
  );
  look({ busy: null });
  if ("fault" in told) {
    if (!isStopped(told)) look({ fault: told.fault });
    return;
  }
  const { run, joint } = told.found;
  const longer = withFollowed(pen, run, joint);
  drawn(isLast ? closedUp(longer) : longer, say("photo.step.follow"));
  if (isLast) look({ tool: "mend", held: null });
};

/** The outline handed over, in order clockwise; told where it is open or crosses itself. */
export const handOver = async (): Promise<void> => {
  const name = pieceName();
  const { pen, photos } = pieceNow();
  const ask = await tableAsk();
  if (!ask || !pen.isClosed) return;
  const sound = soundOutline(name, runsOfPen(pen));
  if ("fault" in sound) {
    look({ fault: sound.fault });
    return;
  }
  const along = sound.found.flat().map(({ start }) => start);
  const placed = await askPictures("place", {
    pictures: ask.pictures,
    piece: own().photo[name],
    along,
  });
  if ("fault" in placed) {
    if (!isStopped(placed)) look({ fault: placed.fault });
    return;
  }
  const from = photos.map((photo) => photo.name).join(", ");
  look({ fault: null });
  putOutline(name, sound.found, placed.found.foretold?.worst ?? null, from);
};
