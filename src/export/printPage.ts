import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { type Language, tell, type Voice, voiceOf } from "../guide/words/tell.ts";
import { count, told } from "../guide/words/told.ts";
import { MARGIN, PAPERS } from "./data/paper.ts";
import { joinArt, NO_ART, type PageArt, ruled, straightRun, wordOf } from "./pageArt.ts";
import { openPdf } from "./pdfFile.ts";
import { artOps } from "./pdfOps.ts";
import { heightOf, type Part, space } from "./stack.ts";

/** Sheets that a home or school printer takes. */
export type HomePaper = "a4" | "letter";

/** How guide, handout and class sheets are printed. */
export type PrintOptions = {
  /** The print font, read by the caller. */
  readonly font: Uint8Array;
  readonly paper: HomePaper;
  readonly language: Language;
  /** YYYY-MM-DD; without it nothing in the file tells the time. */
  readonly date?: string;
};

/** A page to be: its drawing, and whether the sheet lies on its side. */
export type Page = { readonly art: PageArt; readonly lying: boolean };

/** Below the pages' text stand their numbers. */
const FOOT: Mm = 8;
const FOOT_LETTERS: Mm = 3.2;

const sheetSize = (paper: HomePaper, lying: boolean): { width: Mm; height: Mm } => {
  const { width, height } = PAPERS[paper];
  return lying ? { width: height, height: width } : { width, height };
};

/** What of a sheet is drawn on: within its margins, above the page numbers. */
export const roomOn = (paper: HomePaper, lying = false): Box => {
  const { width, height } = sheetSize(paper, lying);
  return {
    left: MARGIN,
    top: MARGIN,
    right: width - MARGIN,
    bottom: height - MARGIN - FOOT,
  };
};

export const widthIn = ({ left, right }: Box): Mm => right - left;

/** Parts one below the other, on as many pages as they take; none is cut where it fits on a page. */
export const flowed = (parts: readonly Part[], room: Box, gap: Mm): readonly PageArt[] => {
  const pages: PageArt[] = [];
  let art = NO_ART;
  let top = room.top;
  for (const part of parts) {
    const high = heightOf(part);
    if (top > room.top && top + high > room.bottom) {
      pages.push(art);
      art = NO_ART;
      top = room.top;
    }
    const drawn = part(room.left, top);
    art = joinArt(art, drawn.art);
    top = drawn.bottom + gap;
  }
  return [...pages, art];
};

/** Parts that are kept on one page, one below the other. */
export const together =
  (gap: Mm, ...parts: readonly Part[]): Part =>
  (left, top) => {
    let bottom = top;
    const arts = parts.map((part, i) => {
      const drawn = (i === 0 ? part : below(gap, part))(left, bottom);
      bottom = drawn.bottom;
      return drawn.art;
    });
    return { art: joinArt(...arts), bottom };
  };

const below =
  (gap: Mm, part: Part): Part =>
  (left, top) =>
    part(left, space(gap)(left, top).bottom);

/** A part moved to the right. */
export const indented =
  (by: Mm, part: Part): Part =>
  (left, top) =>
    part(left + by, top);

/** A fine line across. */
export const rule =
  (width: Mm): Part =>
  (left, top) => ({
    art: {
      shapes: [ruled([straightRun({ x: left, y: top }, { x: left + width, y: top })], 0.2)],
      words: [],
    },
    bottom: top,
  });

const numbered = (page: Page, place: readonly [n: number, of: number], print: Print): PageArt => {
  const { width, height } = sheetSize(print.options.paper, page.lying);
  const [n, of] = place;
  const sentence = told("paper.page", { n: count(n), of: count(of) });
  const y = height - MARGIN - 1;
  const left = wordOf(print.name, { x: MARGIN, y }, FOOT_LETTERS);
  const right = wordOf(tell(print.voice, sentence), { x: width - MARGIN - 28, y }, FOOT_LETTERS);
  return joinArt(page.art, { shapes: [], words: [left, right] });
};

/** A file under way: its voice, what stands at the foot of each page, how it is printed. */
export type Print = {
  readonly voice: Voice;
  readonly name: string;
  readonly options: PrintOptions;
};

export const printOf = (name: string, options: PrintOptions): Print => ({
  voice: voiceOf(options.language),
  name: options.date === undefined ? name : `${name}, ${options.date}`,
  options,
});

/** The pages as a PDF, each with its number. */
export const pagesPdf = async (
  title: string,
  pages: readonly Page[],
  print: Print,
): Promise<Uint8Array> => {
  const { font, paper, date } = print.options;
  const first = sheetSize(paper, pages[0]?.lying ?? false);
  const pdf = await openPdf({ font, title, date: date ?? null, ...first });
  pages.forEach((page, i) => {
    const { width, height } = sheetSize(paper, page.lying);
    const art = numbered(page, [i + 1, pages.length], print);
    pdf.addPage(width, height, artOps(art, pdf.encode));
  });
  return pdf.bytes();
};
