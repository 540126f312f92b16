import type { OwnAllowances } from "../../drafting/blockFile.ts";
import type { Mm } from "../../geometry/units.ts";
import type { Remedy } from "../../trace/doctor/remedy.ts";
import type { CornerRing } from "../../trace/edges/ring.ts";
import type { PagePlace, PdfPageLines } from "../../trace/files/drawing.ts";
import type { TapeMeasures } from "../../trace/tape/tapeMeasures.ts";
import { NO_PHOTOS, type PhotoWork } from "../photo/photoWork.ts";

/** How a block is brought in. */
export type Way = "photo" | "drawing" | "tape";

export const OWN_PIECES = ["front", "back", "sleeve"] as const;
export type OwnPiece = (typeof OWN_PIECES)[number];

/** Which corners of an outline begin which edge. */
export type Naming = {
  /** A front or back drawn on both sides of its centre. */
  readonly isWhole: boolean;
  /** It lay with its other side up. */
  readonly isTurnedOver: boolean;
  /** For each edge of `EDGES_OF`, the place in the ring of the corner at which it begins. */
  readonly corners: readonly number[];
};

/** One piece of paper as lines, before anything is corrected. */
type Outline = {
  /** From corner to corner, in order round the piece, closed; mm. */
  readonly runs: CornerRing;
  /** What it was read from: a file's or a picture's name. */
  readonly from: string;
  /** How far a line may be off, as far as it can be foretold; null where lines are exact. */
  readonly foretold: Mm | null;
};

export type Brought = Outline & {
  /** null: too few corners to be this piece; they are marked by hand. */
  readonly naming: Naming | null;
};

/** What the maker said a piece or an edge is: a shape by its place, edge by edge, or nothing. */
export type ByHand = number | "edges" | "none";

/** A drawing file as it was read, with what the maker said of it. */
export type Drawing = {
  readonly name: string;
  readonly kind: "svg" | "pdf";
  /** An SVG has one. */
  readonly pages: readonly PdfPageLines[];
  /** Where each page lies; a page that is left out is not here. */
  readonly places: readonly PagePlace[];
  /** A line whose length the maker knows sets this: 1 as the file has it. */
  readonly scale: number;
  /** True once the maker has said that the size is right. */
  readonly isSized: boolean;
  /** By piece or edge (`front`, `front.side`). */
  readonly byHand: Readonly<Record<string, ByHand>>;
  /** Pieces whose open outline is closed by a straight line. */
  readonly joined: readonly OwnPiece[];
};

/** A remedy that the maker chose: which finding, which of its remedies. */
export type Chosen = { readonly finding: string; readonly remedy: Remedy["id"] };

type TapeLength = Exclude<keyof TapeMeasures, "frontOffsets" | "backOffsets">;

/** The tape's figures as far as they are given. */
export type TapeGiven = { readonly [K in TapeLength]: Mm | null } & {
  readonly frontOffsets: readonly [Mm | null, Mm | null, Mm | null];
  readonly backOffsets: readonly [Mm | null, Mm | null, Mm | null];
};

/** A block on its way in: everything that the maker did so far. One value, replaced whole. */
export type OwnBlock = {
  readonly way: Way | null;
  readonly drawing: Drawing | null;
  readonly photo: PhotoWork;
  readonly pieces: { readonly [P in OwnPiece]: Brought | null };
  readonly tape: TapeGiven;
  /** Given where the pieces are drawn with their turnings. */
  readonly turnings: OwnAllowances | null;
  /** In the order in which they were chosen. */
  readonly remedies: readonly Chosen[];
};

const NO_OFFSETS = [null, null, null] as const;

const NO_TAPE: TapeGiven = {
  halfWidth: null,
  neckHalfWidth: null,
  frontNeckDepth: null,
  backNeckDepth: null,
  raglanDepth: null,
  frontOffsets: NO_OFFSETS,
  backOffsets: NO_OFFSETS,
  sideLength: null,
  hemHalfWidth: null,
  sleeveWidth: null,
  wristWidth: null,
  underarmLength: null,
};

export const NEW_OWN: OwnBlock = {
  way: null,
  drawing: null,
  photo: NO_PHOTOS,
  pieces: { front: null, back: null, sleeve: null },
  tape: NO_TAPE,
  turnings: null,
  remedies: [],
};
