import { faulty, found, type Told } from "../told.ts";

/** One drawing instruction of a page: its name in the PDF library, and what it is given. */
export type PdfStep = { readonly name: string; readonly given: readonly unknown[] };

/** A page as its instructions. Lengths in points of the page's own unit, y up. */
export type PdfPage = {
  /** Left, bottom, right, top. */
  readonly box: readonly [number, number, number, number];
  /** Points a unit; 1 almost always. */
  readonly unit: number;
  /** How far it is turned to be read, in degrees: 0, 90, 180 or 270, clockwise. */
  readonly turn: number;
  readonly steps: readonly PdfStep[];
  /** Its words, each with where it begins, in the page's own units. */
  readonly words: readonly { readonly text: string; readonly x: number; readonly y: number }[];
  /** The library's numbers of its instructions, by name. */
  readonly codes: ReadonlyMap<string, number>;
  /** Whether a layer is shown, and what it is called. */
  readonly layer: (id: string) => { readonly name: string; readonly isShown: boolean };
};

/** More pages than this are no pattern; a pattern on A4 has some thirty. Ours. */
const MOST_PAGES = 200;
/** More instructions than this on a page are a picture turned into lines. Ours. */
const MOST_STEPS = 400_000;

const nameOf = (error: unknown): string => (error instanceof Error ? error.name : "");

/** What the library's errors mean to a maker. */
const refusal = (error: unknown): Told<never> =>
  nameOf(error) === "PasswordException"
    ? faulty(
        "file",
        "password",
        "The PDF is locked with a password, so its lines cannot be read.",
        "Open it where you know the password, and save or print it anew without one.",
      )
    : faulty(
        "file",
        "no PDF",
        "The file is no PDF that can be read, or a part of it is missing.",
        "Copy or download it again.",
      );

const tooLarge = (what: string, most: number): Told<never> =>
  faulty(
    "file",
    what,
    `The PDF has ${what}; ${most} is the most that is read.`,
    "Save only the pages of the block.",
  );

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

type Codes = PdfPage["codes"];
type Opened = Pick<PdfPage, "codes" | "layer">;

/** What the library tells of a page, and no more of it than is used here. */
type LibraryPage = {
  readonly view: readonly number[];
  readonly userUnit: number;
  readonly rotate: number;
  readonly getOperatorList: () => Promise<{
    readonly fnArray: readonly number[];
    readonly argsArray: readonly unknown[];
  }>;
  readonly getTextContent: () => Promise<{ readonly items: readonly unknown[] }>;
};

/** A piece of text of the library, where it has a place. */
const wordOf = (item: unknown): PdfPage["words"] => {
  if (!isRecord(item) || typeof item["str"] !== "string") return [];
  const place: readonly unknown[] = Array.isArray(item["transform"]) ? item["transform"] : [];
  const [x, y] = [place[4], place[5]];
  return typeof x === "number" && typeof y === "number" ? [{ text: item["str"], x, y }] : [];
};

const readPage = async (page: LibraryPage, { codes, layer }: Opened): Promise<PdfPage> => {
  const names = new Map([...codes].map(([name, code]) => [code, name]));
  const { fnArray, argsArray } = await page.getOperatorList();
  const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
  const { items } = await page.getTextContent();
  return {
    words: items.flatMap(wordOf),
    box: [left, bottom, right, top],
    unit: page.userUnit,
    turn: page.rotate,
    steps: fnArray.map((code, i) => {
      const args = argsArray[i];
      return { name: names.get(code) ?? "", given: Array.isArray(args) ? args : [] };
    }),
    codes,
    layer,
  };
};

/** A layer by what the library keeps of it. */
const layerOf = (group: unknown): ReturnType<PdfPage["layer"]> => {
  const name = isRecord(group) && typeof group["name"] === "string" ? group["name"] : "";
  return { name, isShown: !(isRecord(group) && group["visible"] === false) };
};

/**
 * The pages of a PDF as their drawing instructions. The library that reads them (pdfjs-dist, some
 * 400 kB) is loaded when it is first needed and never before. Scripts in the file are not run, and
 * nothing is fetched. A browser must be told the address of the library's own worker; Node finds it.
 */
export const openPdf = async (
  bytes: Uint8Array,
  worker: string | null,
): Promise<Told<readonly PdfPage[]>> => {
  const { getDocument, GlobalWorkerOptions, OPS } = await import("pdfjs-dist/legacy/build/pdf.mjs");
  if (worker !== null) GlobalWorkerOptions.workerSrc = worker;
  const codes: Codes = new Map(Object.entries(OPS));
  // The library keeps the bytes that it is given: it gets a copy.
  const task = getDocument({
    data: new Uint8Array(bytes),
    isEvalSupported: false,
    useSystemFonts: false,
    disableFontFace: true,
    stopAtErrors: false,
    verbosity: 0,
  });
  try {
    const file = await task.promise;
    if (file.numPages > MOST_PAGES) return tooLarge(`${file.numPages} pages`, MOST_PAGES);
    const layers = await file.getOptionalContentConfig();
    const opened: Opened = { codes, layer: (id) => layerOf(layers.getGroup(id)) };
    const pages: PdfPage[] = [];
    for (let number = 1; number <= file.numPages; number++) {
      const page = await readPage(await file.getPage(number), opened);
      const { length } = page.steps;
      if (length > MOST_STEPS) return tooLarge(`${length} steps`, MOST_STEPS);
      pages.push(page);
    }
    return found(pages);
  } catch (error) {
    return refusal(error);
  } finally {
    await task.destroy();
  }
};
