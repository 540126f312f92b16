import { create } from "zustand";
import type { Fault } from "../../drafting/fault.ts";
import type { Point } from "../../geometry/point.ts";
import type { Told } from "../../trace/told.ts";
import type { OwnPiece } from "../ownBlock/ownBlock.ts";
import type { Opened, Placing, Table } from "./photoJobs.ts";

/** What a tap on the table does. */
export type Tool = "look" | "mark" | "edge" | "length" | "inside" | "mend" | "draw" | "follow";
export type Busy = "opening" | "laying" | "finding" | "following";

/** What was worked out for a piece, and from what: another key, and it is out of date. */
type Derived<Thing> = { readonly key: string; readonly is: Thing } | null;
type PerPiece<Thing> = Readonly<Record<OwnPiece, Thing>>;

/** How the maker looks at the pictures; nothing here is work, and nothing of it is undone. */
type Eye = {
  /** The picture itself, or the table as it is seen from above. */
  readonly stage: "picture" | "trace";
  readonly photo: string | null;
  readonly tool: Tool;
  /** The crosshair, in the picture's pixels or the table's mm; null: in the middle. */
  readonly cursor: Point | null;
  /** The first end of something straight; the next tap is the second. */
  readonly end: Point | null;
  /** What is in hand: `mark.A`, `point.3`. */
  readonly held: string | null;
  readonly busy: { readonly what: Busy; readonly share: number } | null;
  readonly fault: Fault | null;
  readonly opened: Readonly<Record<string, Opened>>;
  readonly placing: PerPiece<Derived<Told<Placing>>>;
  readonly tables: PerPiece<Derived<Table>>;
  /** A place inside the piece on the table, where the line is looked for. */
  readonly inside: PerPiece<Point | null>;
};

const each = <Thing>(thing: Thing): PerPiece<Thing> => ({
  front: thing,
  back: thing,
  sleeve: thing,
});

export const useEye = create<Eye>()(() => ({
  stage: "picture",
  photo: null,
  tool: "mark",
  cursor: null,
  end: null,
  held: null,
  busy: null,
  fault: null,
  opened: {},
  placing: each(null),
  tables: each(null),
  inside: each(null),
}));

export const eye = (): Eye => useEye.getState();
export const look = (change: Partial<Eye>): void => useEye.setState(change);

/** One piece's part of something that is kept for each. */
export const forPiece = <Thing>(
  all: PerPiece<Thing>,
  name: OwnPiece,
  thing: Thing,
): PerPiece<Thing> => ({ ...all, [name]: thing });

export const takeUp = (tool: Tool): void => look({ tool, end: null, fault: null });
