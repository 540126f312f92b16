import type { Band, HemBand, Neckband } from "../bands/band.ts";
import type { Garment } from "../bands/garment.ts";
import type { Check } from "../checks/check.ts";
import type { MeasureId, Measures } from "../drafting/measures.ts";
import type { Piece } from "../drafting/piece.ts";
import { toPathData } from "../geometry/pathData.ts";
import type { Point } from "../geometry/point.ts";
import { PROGRAM } from "./data/program.ts";
import type { Sheets } from "./sheets.ts";
import { numberedPages } from "./wanted.ts";

/** What a report is made of; what `make` gives fits it. */
export type ReportSubject = {
  readonly body: {
    readonly id: string;
    readonly measures: Measures;
    readonly estimated: readonly { readonly id: MeasureId }[];
  };
  readonly garment: Garment;
  readonly checks: readonly Check[];
};

/** Six decimals: a thousand times finer than anything is compared to. Never a minus nought. */
const rounded = (value: number): number => Math.round(value * 1e6) / 1e6 || 0;

const pair = ({ x, y }: Point): readonly [number, number] => [rounded(x), rounded(y)];

const pieceOf = (piece: Piece) => ({
  edges: Object.fromEntries(
    piece.edges.map(({ name, path, length }) => [
      name,
      { path: toPathData(path), length: rounded(length) },
    ]),
  ),
  cutLine: toPathData(piece.cutLine),
  onFold: piece.onFold,
  cut: piece.cut,
  grain: { from: pair(piece.grain.from), to: pair(piece.grain.to) },
  notches: piece.notches.map(({ edge, at, seam }) => ({ edge, at: rounded(at), seam })),
});

const bandOf = (band: Band) => ({
  around: band.around,
  opening: rounded(band.opening),
  finishedLength: rounded(band.finishedLength),
  cutLength: rounded(band.cutLength),
  cutHeight: rounded(band.cutHeight),
  finishedDepth: rounded(band.finishedDepth),
  ratio: rounded(band.ratio),
  stretchToSew: rounded(band.stretchToSew),
  stretchToPass: rounded(band.stretchToPass),
  quarterMarks: band.quarterMarks.map(rounded),
  pressure: rounded(band.pressure),
});

const neckbandOf = (band: Neckband) => ({
  ...bandOf(band),
  marks: band.marks.map(({ at, to }) => ({ at: rounded(at), to })),
  innerRing: rounded(band.innerRing),
  bodyRing: rounded(band.bodyRing),
  neckGap: band.neckGap === null ? null : rounded(band.neckGap),
});

const hemBandOf = (band: HemBand) => ({
  ...bandOf(band),
  holdsBlouseFrom: rounded(band.holdsBlouseFrom),
});

/** Only where the sheets are made for a printer that is not true: how large the file draws 1 mm. */
const drawnFor = ({ grid: { drawnX, drawnY } }: Sheets) =>
  drawnX === 1 && drawnY === 1 ? {} : { drawn: { x: rounded(drawnX), y: rounded(drawnY) } };

const sheetsOf = (sheets: Sheets) => ({
  paper: sheets.paper,
  count: sheets.count,
  width: rounded(sheets.width),
  height: rounded(sheets.height),
  pages: numberedPages(sheets).map(({ page, x, y }) => ({ page, x: rounded(x), y: rounded(y) })),
  placements: sheets.placements.map(({ piece, x, y, turn }) => ({
    piece,
    x: rounded(x),
    y: rounded(y),
    turn: rounded(turn),
  })),
  ...drawnFor(sheets),
});

/** `report.json` as a value (contract). All lengths in mm; numbers to six decimals. */
const reportOf = ({ body, garment, checks }: ReportSubject, sheets: Sheets) => ({
  format: "ribwright-report",
  version: 1,
  unit: "mm",
  body: {
    id: body.id,
    measures: Object.fromEntries(
      Object.entries(body.measures).map(([id, value]) => [id, rounded(value)]),
    ),
    estimated: body.estimated.map(({ id }) => id),
  },
  choices: garment.choices,
  block: {
    front: pieceOf(garment.block.front),
    back: pieceOf(garment.block.back),
    sleeve: pieceOf(garment.block.sleeve),
  },
  pieces: Object.fromEntries(garment.pieces.map((piece) => [piece.name, pieceOf(piece)])),
  seams: garment.seams.map((seam) => ({
    id: seam.id,
    a: seam.a,
    b: seam.b,
    lengthA: rounded(seam.lengthA),
    lengthB: rounded(seam.lengthB),
    difference: rounded(seam.difference),
    ease: rounded(seam.ease),
  })),
  bands: {
    neckband: neckbandOf(garment.bands.neckband),
    cuff: bandOf(garment.bands.cuff),
    hemBand: hemBandOf(garment.bands.hemBand),
  },
  checks: checks.map(({ id, verdict, value, limit, unit, message }) => ({
    id,
    verdict,
    value: rounded(value),
    limit: rounded(limit),
    unit,
    message,
  })),
  sheets: sheetsOf(sheets),
  program: PROGRAM,
});

/** `report.json` as text, the same bytes for the same input. */
export const reportText = (subject: ReportSubject, sheets: Sheets): string =>
  `${JSON.stringify(reportOf(subject, sheets))}\n`;
