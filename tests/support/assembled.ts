import { poppler, type Raster, rasterOf } from "./pdf.ts";

/**
 * Sheets put together as a maker does it, from what is seen on them alone: the name that is printed
 * on each, the diamonds at the ends of its joints, and the lines along which it is cut off. Nothing
 * of the program's own knowledge of margins, windows and steps comes in here.
 */

type Spot = { readonly x: number; readonly y: number };
type Corner = "upperLeft" | "upperRight" | "lowerLeft" | "lowerRight";
const CORNERS: readonly Corner[] = ["upperLeft", "upperRight", "lowerLeft", "lowerRight"];

type Seen = {
  readonly page: number;
  readonly row: number;
  readonly column: number;
  readonly raster: Raster;
  readonly width: number;
  readonly height: number;
  readonly diamonds: Partial<Record<Corner, Spot>>;
  /** Where it is cut off, from its upper left corner; 0: it is not cut there. */
  readonly left: number;
  readonly top: number;
};

/** A sheet and where its upper left corner comes to lie, in mm from that of the first of its set. */
export type Laid = Seen & { readonly at: Spot; readonly set: number };

const DPI = 150;
/** Diamonds and joints lie no further than this from a sheet's edges. */
const ZONE = 32;
/** As they look: from the middle to a tip. Measured on a print, like everything here. */
const TIP = 4.3;
const CLEARLY = 110;
/** Where one side is fainter no diamond is looked for. */
const FAINT = 40;

/** How dark it is at a place, in mm, between the pixels. */
const darkAt = ({ perMm, inkAt }: Raster, x: number, y: number): number => {
  const [u, v] = [x * perMm - 0.5, y * perMm - 0.5];
  const [i, j] = [Math.floor(u), Math.floor(v)];
  const [a, b] = [u - i, v - j];
  return (
    inkAt(i, j) * (1 - a) * (1 - b) +
    inkAt(i + 1, j) * a * (1 - b) +
    inkAt(i, j + 1) * (1 - a) * b +
    inkAt(i + 1, j + 1) * a * b
  );
};

/** How dark the four sides of a diamond would be here: the faintest of them counts. */
const likeness = (raster: Raster, { x, y }: Spot): number => {
  let least = Infinity;
  for (const [sx, sy] of [
    [1, 1],
    [1, -1],
    [-1, 1],
    [-1, -1],
  ] as const) {
    let sum = 0;
    for (let i = 1; i < 12; i++) {
      const share = i / 12;
      sum += darkAt(raster, x + sx * TIP * share, y + sy * TIP * (1 - share));
    }
    least = Math.min(least, sum / 11);
    if (least < FAINT) return 0;
  }
  return least;
};

/** The diamond nearest to a corner of the sheet, to a hundredth of a millimetre; or none. */
const diamondIn = (raster: Raster, from: Spot): Spot | undefined => {
  let best: Spot = from;
  let most = 0;
  const coarse = 0.2;
  for (let x = from.x + TIP; x < from.x + ZONE - TIP; x += coarse)
    for (let y = from.y + TIP; y < from.y + ZONE - TIP; y += coarse) {
      const like = likeness(raster, { x, y });
      if (like > most) [best, most] = [{ x, y }, like];
    }
  for (const step of [0.2, 0.08, 0.03, 0.01]) {
    for (let round = 0; round < 6; round++) {
      for (const [dx, dy] of [
        [step, 0],
        [-step, 0],
        [0, step],
        [0, -step],
      ] as const) {
        const near = { x: best.x + dx, y: best.y + dy };
        const like = likeness(raster, near);
        if (like > most) [best, most] = [near, like];
      }
    }
  }
  return most > CLEARLY ? best : undefined;
};

/** Whether an unbroken line runs between two diamonds: along it the sheet is cut off. */
const isCut = (raster: Raster, a: Spot | undefined, b: Spot | undefined): boolean => {
  if (!a || !b) return false;
  let [dark, all] = [0, 0];
  for (let share = 0.06; share < 0.94; share += 0.002) {
    const [x, y] = [a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share];
    all++;
    if (Math.max(darkAt(raster, x, y), darkAt(raster, x + 0.1, y + 0.1)) > 60) dark++;
  }
  return dark / all > 0.93;
};

const look = (pdf: Uint8Array, page: number): Seen | null => {
  const text = poppler("pdftotext", pdf, ["-f", String(page), "-l", String(page)]);
  const [, letter, number] = /^([A-Z])(\d+)$/m.exec(text) ?? [];
  const isSheet = /sheet \d+ of \d+/.test(text);
  if (!isSheet || letter === undefined || number === undefined) return null;
  const raster = rasterOf(pdf, { page, dpi: DPI });
  const [width, height] = [raster.width / raster.perMm, raster.height / raster.perMm];
  const from: Record<Corner, Spot> = {
    upperLeft: { x: 0, y: 0 },
    upperRight: { x: width - ZONE, y: 0 },
    lowerLeft: { x: 0, y: height - ZONE },
    lowerRight: { x: width - ZONE, y: height - ZONE },
  };
  const diamonds = Object.fromEntries(
    CORNERS.flatMap((corner) => {
      const found = diamondIn(raster, from[corner]);
      return found ? [[corner, found]] : [];
    }),
  ) satisfies Partial<Record<Corner, Spot>>;
  const { upperLeft, upperRight, lowerLeft }: Seen["diamonds"] = diamonds;
  return {
    page,
    row: letter.charCodeAt(0) - 65,
    column: Number(number) - 1,
    raster,
    width,
    height,
    diamonds,
    left: isCut(raster, upperLeft, lowerLeft) ? (upperLeft?.x ?? 0) : 0,
    top: isCut(raster, upperLeft, upperRight) ? (upperLeft?.y ?? 0) : 0,
  };
};

/** Where a sheet must lie so that its diamonds close with those of the sheet before it. */
const closing = (
  before: Laid,
  sheet: Seen,
  pairs: readonly (readonly [Corner, Corner])[],
): Spot | null => {
  const moves = pairs.flatMap(([theirs, ours]) => {
    const [a, b] = [before.diamonds[theirs], sheet.diamonds[ours]];
    return a && b ? [{ x: before.at.x + a.x - b.x, y: before.at.y + a.y - b.y }] : [];
  });
  if (moves.length < pairs.length) return null;
  const mean = (axis: "x" | "y") => moves.reduce((sum, move) => sum + move[axis], 0) / moves.length;
  return { x: mean("x"), y: mean("y") };
};

const BESIDE = [
  ["upperRight", "upperLeft"],
  ["lowerRight", "lowerLeft"],
] as const;
const BELOW = [
  ["lowerLeft", "upperLeft"],
  ["lowerRight", "upperRight"],
] as const;
const swapped = (pairs: readonly (readonly [Corner, Corner])[]) =>
  pairs.map(([a, b]) => [b, a] as const);

/** Every sheet laid against the ones that lie already; those that meet none begin a set of their own. */
export const assembled = (pdf: Uint8Array, pages: number): readonly Laid[] => {
  const left = Array.from({ length: pages }, (_, i) => look(pdf, i + 1)).flatMap((seen) =>
    seen ? [seen] : [],
  );
  const laid: Laid[] = [];
  let set = 0;
  const next = (): Laid | null => {
    for (const sheet of left) {
      for (const before of laid) {
        const [down, along] = [sheet.row - before.row, sheet.column - before.column];
        if (Math.abs(down) + Math.abs(along) !== 1) continue;
        const pairs =
          along === 1
            ? BESIDE
            : along === -1
              ? swapped(BESIDE)
              : down === 1
                ? BELOW
                : swapped(BELOW);
        const at = closing(before, sheet, pairs);
        if (at) return { ...sheet, at, set: before.set };
      }
    }
    const [first] = left;
    return first ? { ...first, at: { x: 0, y: 0 }, set: set++ } : null;
  };
  for (let found = next(); found; found = next()) {
    laid.push(found);
    left.splice(
      left.findIndex(({ page }) => page === found?.page),
      1,
    );
  }
  return laid;
};

/** How dark it is at a place of a set once all is laid: the sheet that lies on top is seen. */
export const seenAt = (laid: readonly Laid[], set: number, { x, y }: Spot): number => {
  let ink = 0;
  let order = -1;
  for (const sheet of laid) {
    if (sheet.set !== set) continue;
    const [u, v] = [x - sheet.at.x, y - sheet.at.y];
    if (u < sheet.left || v < sheet.top || u > sheet.width || v > sheet.height) continue;
    const place = sheet.row * 1000 + sheet.column;
    if (place > order) [ink, order] = [darkAt(sheet.raster, u, v), place];
  }
  return ink;
};
