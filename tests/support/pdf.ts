import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** A file that poppler's tools can read, for as long as `use` runs. */
const withFile = <T>(pdf: Uint8Array, use: (file: string) => T): T => {
  const folder = mkdtempSync(join(tmpdir(), "sheets-"));
  try {
    const file = join(folder, "in.pdf");
    writeFileSync(file, pdf);
    return use(file);
  } finally {
    rmSync(folder, { recursive: true });
  }
};

/** Runs a poppler tool on a PDF and gives what it prints. */
export const poppler = (
  tool: "pdfinfo" | "pdffonts" | "pdftotext",
  pdf: Uint8Array,
  options: readonly string[] = [],
): string =>
  withFile(pdf, (file) => {
    const args = [...options, file, ...(tool === "pdftotext" ? ["-"] : [])];
    return execFileSync(tool, args, { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"] });
  });

/** Runs another reader on a PDF; IN stands for the file. Gives all that it prints. */
export const withTool = (
  tool: "qpdf" | "mutool",
  options: readonly string[],
  pdf: Uint8Array,
): string =>
  withFile(pdf, (file) =>
    execFileSync(
      tool,
      options.map((word) => (word === "IN" ? file : word)),
      { encoding: "utf8", stdio: ["ignore", "pipe", "pipe"], maxBuffer: 1 << 28 },
    ),
  );

/** A part of a page in grey: how much ink there is at a pixel, 0 to 255. */
export type Raster = {
  readonly width: number;
  readonly height: number;
  /** Pixels to a millimetre. */
  readonly perMm: number;
  /** From the sheet's upper left corner to the part's, in pixels. */
  readonly left: number;
  readonly top: number;
  readonly inkAt: (x: number, y: number) => number;
};

const PGM = /^P5\s+(\d+)\s+(\d+)\s+255\s/;

type Part = {
  readonly page: number;
  readonly dpi: number;
  /** In millimetres on the sheet; the whole page where it is not given. */
  readonly box?: { left: number; top: number; width: number; height: number };
};

/** Poppler's own programs, which verify installs where they are missing. */
const DRAWS = "pdftoppm";

/** Draws a page, or a part of it, with poppler. */
export const rasterOf = (pdf: Uint8Array, { page, dpi, box }: Part): Raster =>
  withFile(pdf, (file) => {
    const perMm = dpi / 25.4;
    const px = (mm: number): number => Math.round(mm * perMm);
    const crop = box
      ? ["-x", px(box.left), "-y", px(box.top), "-W", px(box.width), "-H", px(box.height)]
      : [];
    const pages = ["-f", page, "-l", page];
    const args = ["-gray", "-r", dpi, ...crop, ...pages, file].map(String);
    const bytes = execFileSync(DRAWS, args, {
      maxBuffer: 1 << 30,
      stdio: ["ignore", "pipe", "pipe"],
    });
    const header = PGM.exec(bytes.toString("latin1", 0, 64));
    if (!header) throw new Error("pdftoppm gave no grey picture.");
    const [width, height] = [Number(header[1]), Number(header[2])];
    const pixels = bytes.subarray(header[0].length);
    const inkAt = (x: number, y: number): number =>
      x < 0 || y < 0 || x >= width || y >= height ? 0 : 255 - (pixels[y * width + x] ?? 255);
    return { width, height, perMm, left: px(box?.left ?? 0), top: px(box?.top ?? 0), inkAt };
  });

/** Less ink than this is the pale edge of a line. */
const FAINT = 20;

/**
 * The middles of the inked runs that a straight line of pixels meets, in millimetres on the sheet:
 * across at height `at`, or down at distance `at` from the left.
 */
export const crossings = (
  raster: Raster,
  along: "across" | "down",
  at: number,
): readonly number[] => {
  const { width, height, perMm, left, top, inkAt } = raster;
  const across = along === "across";
  const line = Math.floor(at * perMm) - (across ? top : left);
  const found: number[] = [];
  let [ink, moment] = [0, 0];
  for (let i = 0; i <= (across ? width : height); i++) {
    const value = across ? inkAt(i, line) : inkAt(line, i);
    if (value > FAINT) {
      ink += value;
      moment += value * (i + 0.5);
    } else if (ink > 0) {
      found.push((moment / ink + (across ? left : top)) / perMm);
      [ink, moment] = [0, 0];
    }
  }
  return found;
};
