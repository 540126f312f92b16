import type { Mm } from "../../geometry/units.ts";
import type { Followed } from "../../trace/follow/kind.ts";
import { NO_LINE, type PenLine } from "../../trace/pen/pen.ts";
import type { SeenMark } from "../../trace/photo/mark.ts";
import type { Pixel } from "../../trace/photo/picture.ts";

/** A length that is known in a picture, such as a ruler's; null while it is not typed yet. */
type KnownLength = { readonly from: Pixel; readonly to: Pixel; readonly length: Mm | null };

/** Both ends of something straight on the table, as the maker showed them. */
type ShownEdge = readonly [Pixel, Pixel];

/** One picture of a piece. Its file lies apart, under its id. */
export type Photo = {
  readonly id: string;
  readonly name: string;
  readonly width: number;
  readonly height: number;
  readonly marks: readonly SeenMark[];
  readonly edges: readonly ShownEdge[];
  readonly lengths: readonly KnownLength[];
};

/** By what a picture's slant and scale are known: marks, the corners of a sheet, or scale alone. */
export type PlacedBy = "marks" | "sheet" | "scale";

/** A piece on its way from pictures to an outline. */
export type PhotoPiece = {
  readonly photos: readonly Photo[];
  readonly by: PlacedBy;
  /** Between marks, by their names in order: `A-B`. The marks lie still for all of its pictures. */
  readonly distances: Readonly<Record<string, Mm>>;
  readonly sheet: { readonly width: Mm; readonly height: Mm };
  /** Whether the lens's bending is told from straight edges and marks. */
  readonly bends: boolean;
  /** How high the paper's highest wave stands; 0 where it lies flat. */
  readonly waves: Mm;
  readonly followed: Followed;
  readonly pen: PenLine;
  /** How far traced points lie from the proposed line; null once it was drawn or mended by hand. */
  readonly fit: Mm | null;
};

/** A sheet of A0, the usual size of a printed block. */
const A0 = { width: 841, height: 1189 } as const;

export const NO_PHOTO: PhotoPiece = {
  photos: [],
  by: "marks",
  distances: {},
  sheet: A0,
  bends: false,
  waves: 0,
  followed: "line",
  pen: NO_LINE,
  fit: null,
};

export type PhotoWork = {
  readonly front: PhotoPiece;
  readonly back: PhotoPiece;
  readonly sleeve: PhotoPiece;
};

export const NO_PHOTOS: PhotoWork = { front: NO_PHOTO, back: NO_PHOTO, sleeve: NO_PHOTO };
