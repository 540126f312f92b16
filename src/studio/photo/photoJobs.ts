import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { Followed } from "../../trace/follow/kind.ts";
import type { Joint } from "../../trace/follow/meetRuns.ts";
import type { ProposedOutline } from "../../trace/follow/proposeOutline.ts";
import type { Foretold } from "../../trace/photo/foretell.ts";
import type { SeenMark } from "../../trace/photo/mark.ts";
import type { Pixel } from "../../trace/photo/picture.ts";
import type { Plane } from "../../trace/photo/plane.ts";
import type { Window } from "../../trace/photo/rectify.ts";
import type { Told } from "../../trace/told.ts";
import type { PhotoPiece } from "./photoWork.ts";

/** The file of a picture; after a cancelled run a new worker decodes it once more. */
export type PictureFile = { readonly id: string; readonly file: Blob };

export type Opened = {
  readonly width: number;
  readonly height: number;
  readonly preview: ImageBitmap;
};

/** Where a picture's table lies, and which part of it is looked at. */
export type PlacedPart = {
  readonly id: string;
  readonly plane: Plane;
  /** Places of its marks on the table, in the first picture's frame, mm. */
  readonly marks: readonly { readonly name: string; readonly place: Point }[];
  /** Round what is to be laid on the table, in pixels. */
  readonly around: readonly Pixel[];
};

export type Placing = {
  readonly parts: readonly PlacedPart[];
  /** null for a scan: nothing in it tells. */
  readonly foretold: Foretold | null;
  /** How far straight edges still stray from straight, pixels; null where none was shown. */
  readonly crooked: number | null;
};

export type Table = { readonly window: Window; readonly preview: ImageBitmap };

/** A run that was followed, brought together with the run before it. */
type FollowedRun = { readonly joint: Joint | null; readonly run: Path; readonly error: Mm };

/** What the worker is asked, and what it answers. */
type Jobs = {
  open: { ask: { readonly picture: PictureFile }; answer: Opened };
  marks: { ask: { readonly picture: PictureFile }; answer: readonly SeenMark[] };
  patch: {
    ask: { readonly picture: PictureFile; readonly at: Pixel; readonly reach: number };
    answer: ImageBitmap;
  };
  place: {
    ask: {
      readonly pictures: readonly PictureFile[];
      readonly piece: PhotoPiece;
      /** The traced line, mm, where there is one: the error is foretold along it. */
      readonly along: readonly Point[];
    };
    answer: Placing;
  };
  table: {
    ask: { readonly pictures: readonly PictureFile[]; readonly placing: Placing };
    answer: Table;
  };
  propose: {
    ask: TableAsk & { readonly what: Followed; readonly inside: Point };
    answer: ProposedOutline;
  };
  follow: {
    ask: TableAsk & {
      readonly what: Followed;
      readonly from: Point;
      readonly to: Point;
      readonly before: Path | null;
    };
    answer: FollowedRun;
  };
};

type TableAsk = { readonly pictures: readonly PictureFile[]; readonly placing: Placing };

export type JobName = keyof Jobs;
export type Ask<Name extends JobName> = Jobs[Name]["ask"];
export type Answer<Name extends JobName> = Jobs[Name]["answer"];

export type JobMessage = {
  readonly [Name in JobName]: { readonly n: number; readonly name: Name; readonly ask: Ask<Name> };
}[JobName];

export type JobReply =
  | { readonly n: number; readonly kind: "share"; readonly share: number }
  | { readonly n: number; readonly kind: "told"; readonly told: Told<unknown> };
