import type { SheetPage, Sheets } from "./sheets.ts";
import { sheetName } from "./tiles.ts";

type Asked = Pick<Sheets, "pages" | "print">;

/** True where title and map are printed too: all sheets are wanted. */
export const isWhole = ({ print }: Pick<Sheets, "print">): boolean => print.only.length === 0;

/** The sheets that are printed: all, or those that were asked for by name. */
export const wantedPages = ({ pages, print }: Asked): readonly SheetPage[] =>
  isWhole({ print })
    ? pages
    : pages.filter(({ row, column }) => print.only.includes(sheetName(row, column)));

/** The same, each with its number in the file: without title and map the first is page 1. */
export const numberedPages = (asked: Asked): readonly SheetPage[] =>
  isWhole(asked) ? asked.pages : wantedPages(asked).map((page, i) => ({ ...page, page: i + 1 }));
