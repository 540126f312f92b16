import type { Mm } from "../../geometry/units.ts";
import type { PagePlace } from "../../trace/files/joinPages.ts";
import type { PdfPageLines } from "../../trace/files/pdfIn.ts";

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
  /** By hand: a shape's place in order, and the piece or edge that it is (`front`, `front.side`). */
  readonly byHand: Readonly<Record<number, string>>;
};

/** The largest drawing that is opened: a pattern of thirty pages has a tenth of it. */
export const LARGEST_DRAWING = 40_000_000;

export const paperOf = (
  pages: readonly PdfPageLines[],
): { readonly width: Mm; readonly height: Mm } => ({
  width: Math.max(0, ...pages.map(({ width }) => width)),
  height: Math.max(0, ...pages.map(({ height }) => height)),
});
