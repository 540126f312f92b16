import type { jsPDF } from "jspdf";
import type { Box } from "../geometry/outline.ts";
import type { Mm } from "../geometry/units.ts";
import { type LayerInternals, type PdfLayers, pdfLayers } from "./pdfLayers.ts";
import type { Encode } from "./pdfOps.ts";

const POINTS_PER_MM = 72 / 25.4;
/** Viewers stop here, and jsPDF cuts pages off without a word. */
const LONGEST_SIDE = 14_400;

/** A PDF under way. Pages and forms are drawn in mm from their upper left corner, y down. */
export type PdfFile = {
  readonly encode: Encode;
  /** A drawing of lines, without words, that many pages show; gives the operator that draws it. */
  readonly addForm: (box: Box, ops: string) => string;
  readonly addPage: (width: Mm, height: Mm, ops: string) => void;
  readonly layers: PdfLayers;
  readonly bytes: () => Uint8Array;
};

/** The parts of jsPDF that its types leave out. */
type Internals = LayerInternals & {
  readonly getFont: () => { readonly id: string };
};
type Escapes = { readonly pdfEscape16: (text: string, font: unknown) => string };
const internalsOf = (doc: jsPDF): Internals => doc.internal as unknown as Internals;
const escapesOf = (doc: jsPDF): Escapes => doc as unknown as Escapes;

const base64 = (bytes: Uint8Array): string => {
  let text = "";
  for (let i = 0; i < bytes.length; i += 8192) {
    text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  }
  return btoa(text);
};

/** The font as jsPDF wants it, kept from one document to the next. */
const inBase64 = new WeakMap<Uint8Array, string>();

const fontText = (font: Uint8Array): string => {
  const known = inBase64.get(font);
  if (known !== undefined) return known;
  const text = base64(font);
  inBase64.set(font, text);
  return text;
};

/** What a PDF is opened with. */
export type PdfStart = {
  readonly font: Uint8Array;
  readonly title: string;
  /** YYYY-MM-DD; without it the file tells no time at all. */
  readonly date: string | null;
  /** The size of the first page. */
  readonly width: Mm;
  readonly height: Mm;
  /** Everything is written as it is: three times as large a file, and a quarter sooner. */
  readonly unpacked?: true;
};

const FONT_FILE = "NotoSans.ttf";
const FONT_NAME = "NotoSans";
/** jsPDF always writes a date. Where none is wanted this one is written and then blanked out. */
const NO_DATE = "D:19700101000000+00'00'";
const SAME_FILE = "0".repeat(32);

/** Page sizes in points. jsPDF turns a page unless it is told which way it lies. */
const sizeOf = (width: Mm, height: Mm): [number, number] => [
  width * POINTS_PER_MM,
  height * POINTS_PER_MM,
];
const lieOf = (width: Mm, height: Mm): "landscape" | "portrait" =>
  width > height ? "landscape" : "portrait";

const openDocument = async (start: PdfStart): Promise<jsPDF> => {
  const { jsPDF } = await import("jspdf");
  const doc = new jsPDF({
    unit: "pt",
    format: sizeOf(start.width, start.height),
    orientation: lieOf(start.width, start.height),
    compress: start.unpacked !== true,
    putOnlyUsedFonts: true,
    floatPrecision: 4,
  });
  const day = start.date === null ? NO_DATE : `D:${start.date.replaceAll("-", "")}000000+00'00'`;
  doc.setCreationDate(day);
  doc.setFileId(SAME_FILE);
  doc.setProperties({ title: start.title });
  doc.setDisplayMode("fullpage");
  doc.addFileToVFS(FONT_FILE, fontText(start.font));
  doc.addFont(FONT_FILE, FONT_NAME, "normal");
  doc.setFont(FONT_NAME);
  return doc;
};

/** Looks each letter up once. A letter that the font lacks is printed as a question mark. */
const encoder = (doc: jsPDF): Encode => {
  const font = internalsOf(doc).getFont();
  const codes = new Map<string, string>();
  const codeOf = (letter: string): string => {
    const known = codes.get(letter);
    if (known !== undefined) return known;
    const code = escapesOf(doc).pdfEscape16(letter, font);
    const shown = code === "" ? escapesOf(doc).pdfEscape16("?", font) : code;
    codes.set(letter, shown);
    return shown;
  };
  // Spaces that hold words together have done their work once the lines are broken.
  return (text) => {
    let shown = "";
    for (const letter of text.normalize("NFC")) shown += codeOf(letter === "\u00a0" ? " " : letter);
    return shown;
  };
};

/** The finished file, byte by byte; the stand-in date is blanked and no offset moves. */
const bytesOf = (doc: jsPDF, dated: boolean): Uint8Array => {
  const entry = `/CreationDate (${NO_DATE})`;
  const text = dated ? doc.output() : doc.output().replace(entry, " ".repeat(entry.length));
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; i++) bytes[i] = text.charCodeAt(i);
  return bytes;
};

/** A frame in millimetres from the upper left corner of the page, y down, in thin black lines. */
const inMillimetres = (height: Mm, ops: string): string => {
  const k = POINTS_PER_MM.toFixed(8);
  return `q ${k} 0 0 -${k} 0 ${(height * POINTS_PER_MM).toFixed(6)} cm 0 G 0 g\n${ops}\nQ`;
};

/** Forms are called Xo1, Xo2 ... by jsPDF, in the order in which they are made. */
const addFormTo = (doc: jsPDF, name: string, { left, top, right, bottom }: Box, ops: string) => {
  doc.beginFormObject(left, top, right - left, bottom - top, doc.unitMatrix);
  internalsOf(doc).write(ops);
  doc.endFormObject(name);
  return `/${name} Do`;
};

/** Opens a PDF. jsPDF is loaded only here, when the first one is asked for. */
export const openPdf = async (start: PdfStart): Promise<PdfFile> => {
  const doc = await openDocument(start);
  const internals = internalsOf(doc);
  const { events, write, getFont } = internals;
  const fontKey = `/${getFont().id} `;
  events.subscribe("putCatalog", () => write("/ViewerPreferences << /PrintScaling /None >>"));
  // A font is embedded only if jsPDF's own call has used it; ours pass it by.
  doc.text(" ", 0, 0);
  const layers = pdfLayers(internals);
  let [pages, forms] = [0, 0];
  return {
    encode: encoder(doc),
    addForm: (box, ops) => {
      forms++;
      return addFormTo(doc, `Xo${forms}`, box, ops);
    },
    addPage: (width, height, ops) => {
      if (Math.max(width, height) * POINTS_PER_MM > LONGEST_SIDE) {
        throw new RangeError("A page is longer than 5.08 m.");
      }
      if (pages > 0) doc.addPage(sizeOf(width, height), lieOf(width, height));
      pages++;
      write(inMillimetres(height, ops.replaceAll("/F ", fontKey)));
    },
    layers,
    bytes: () => bytesOf(doc, start.date !== null),
  };
};
