import type { Band, Neckband } from "../bands/band.ts";
import type { Garment } from "../bands/garment.ts";
import type { Check } from "../checks/check.ts";
import type { MeasureId, Measures } from "../drafting/measures.ts";
import type { Piece } from "../drafting/piece.ts";
import type { Point } from "../geometry/point.ts";
import { PROGRAM } from "./data/program.ts";
import { type JsonBytes, jsonBytes } from "./jsonBytes.ts";
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

/** What stands between two brackets, a comma after each but the last. */
const each = <T>(out: JsonBytes, items: readonly T[], write: (item: T) => void): void => {
  for (let i = 0; i < items.length; i++) {
    if (i > 0) out.raw(",");
    const item = items[i];
    if (item !== undefined) write(item);
  }
};

const list = <T>(out: JsonBytes, items: readonly T[], write: (item: T) => void): void => {
  out.raw("[");
  each(out, items, write);
  out.raw("]");
};

/** Keys are names of the contract: letters and points, nothing to escape. */
const key = (out: JsonBytes, name: string): void => {
  out.raw('"');
  out.raw(name);
  out.raw('":');
};

const numbers = (out: JsonBytes, fields: readonly (readonly [string, number])[]): void =>
  each(out, fields, ([name, value]) => {
    key(out, name);
    out.number(value);
  });

const putPoint = (out: JsonBytes, { x, y }: Point): void => {
  out.raw("[");
  out.number(x);
  out.raw(",");
  out.number(y);
  out.raw("]");
};

const putEdge = (out: JsonBytes, { name, path, length }: Piece["edges"][number]): void => {
  key(out, name);
  out.raw('{"path":');
  out.path(path);
  out.raw(',"length":');
  out.number(length);
  out.raw("}");
};

const putNotch = (out: JsonBytes, { edge, at, seam }: Piece["notches"][number]): void => {
  out.raw('{"edge":');
  out.text(edge);
  out.raw(',"at":');
  out.number(at);
  out.raw(',"seam":');
  out.text(seam);
  out.raw("}");
};

const putPiece = (out: JsonBytes, piece: Piece): void => {
  out.raw('{"edges":{');
  each(out, piece.edges, (edge) => putEdge(out, edge));
  out.raw('},"cutLine":');
  out.path(piece.cutLine);
  out.raw(piece.onFold === null ? ',"onFold":null,"cut":' : ',"onFold":"centre","cut":');
  out.number(piece.cut);
  out.raw(',"grain":{"from":');
  putPoint(out, piece.grain.from);
  out.raw(',"to":');
  putPoint(out, piece.grain.to);
  out.raw('},"notches":');
  list(out, piece.notches, (notch) => putNotch(out, notch));
  out.raw("}");
};

/** A band without its closing bracket, so that more may follow. */
const putBand = (out: JsonBytes, band: Band): void => {
  out.raw('{"around":');
  out.text(band.around);
  out.raw(",");
  numbers(out, [
    ["opening", band.opening],
    ["finishedLength", band.finishedLength],
    ["cutLength", band.cutLength],
    ["cutHeight", band.cutHeight],
    ["finishedDepth", band.finishedDepth],
    ["ratio", band.ratio],
    ["stretchToSew", band.stretchToSew],
    ["stretchToPass", band.stretchToPass],
  ]);
  out.raw(',"quarterMarks":');
  list(out, band.quarterMarks, out.number);
  out.raw(',"pressure":');
  out.number(band.pressure);
};

const putNeckband = (out: JsonBytes, band: Neckband): void => {
  putBand(out, band);
  out.raw(',"marks":');
  list(out, band.marks, ({ at, to }) => {
    out.raw('{"at":');
    out.number(at);
    out.raw(',"to":');
    out.text(to);
    out.raw("}");
  });
  out.raw(",");
  numbers(out, [
    ["innerRing", band.innerRing],
    ["bodyRing", band.bodyRing],
  ]);
  out.raw(',"neckGap":');
  if (band.neckGap === null) out.raw("null");
  else out.number(band.neckGap);
  out.raw("}");
};

const putBands = (out: JsonBytes, { neckband, cuff, hemBand }: Garment["bands"]): void => {
  out.raw('{"neckband":');
  putNeckband(out, neckband);
  out.raw(',"cuff":');
  putBand(out, cuff);
  out.raw('},"hemBand":');
  putBand(out, hemBand);
  out.raw(',"holdsBlouseFrom":');
  out.number(hemBand.holdsBlouseFrom);
  out.raw("}}");
};

const putSeam = (out: JsonBytes, seam: Garment["seams"][number]): void => {
  out.raw('{"id":');
  out.text(seam.id);
  out.raw(',"a":');
  list(out, seam.a, (edge) => list(out, edge, out.text));
  out.raw(',"b":');
  list(out, seam.b, (edge) => list(out, edge, out.text));
  out.raw(",");
  numbers(out, [
    ["lengthA", seam.lengthA],
    ["lengthB", seam.lengthB],
    ["difference", seam.difference],
    ["ease", seam.ease],
  ]);
  out.raw("}");
};

const putCheck = (out: JsonBytes, check: Check): void => {
  out.raw('{"id":');
  out.text(check.id);
  out.raw(',"verdict":');
  out.text(check.verdict);
  out.raw(',"value":');
  out.number(check.value);
  out.raw(',"limit":');
  out.number(check.limit);
  out.raw(',"unit":');
  out.text(check.unit);
  out.raw(',"message":');
  out.text(check.message);
  out.raw("}");
};

const putBody = (out: JsonBytes, { id, measures, estimated }: ReportSubject["body"]): void => {
  out.raw('{"id":');
  out.text(id);
  out.raw(',"measures":{');
  numbers(out, Object.entries(measures));
  out.raw('},"estimated":');
  list(out, estimated, ({ id: measure }) => out.text(measure));
  out.raw("}");
};

/** Only where the sheets are made for a printer that is not true: how large the file draws 1 mm. */
const putDrawn = (out: JsonBytes, { grid: { drawnX, drawnY } }: Sheets): void => {
  if (drawnX === 1 && drawnY === 1) return;
  out.raw(',"drawn":{"x":');
  out.number(drawnX);
  out.raw(',"y":');
  out.number(drawnY);
  out.raw("}");
};

const putSheets = (out: JsonBytes, sheets: Sheets): void => {
  out.raw('{"paper":');
  out.text(sheets.paper);
  out.raw(",");
  numbers(out, [
    ["count", sheets.count],
    ["width", sheets.width],
    ["height", sheets.height],
  ]);
  out.raw(',"pages":');
  list(out, numberedPages(sheets), ({ page, x, y }) => {
    out.raw('{"page":');
    out.number(page);
    out.raw(',"x":');
    out.number(x);
    out.raw(',"y":');
    out.number(y);
    out.raw("}");
  });
  out.raw(',"placements":');
  list(out, sheets.placements, ({ piece, x, y, turn }) => {
    out.raw('{"piece":');
    out.text(piece);
    out.raw(",");
    numbers(out, [
      ["x", x],
      ["y", y],
      ["turn", turn],
    ]);
    out.raw("}");
  });
  putDrawn(out, sheets);
  out.raw("}");
};

/**
 * `report.json` as UTF-8 (contract), the same bytes for the same input. All lengths in mm, numbers to
 * six decimals: a thousand times finer than anything is compared to.
 */
export const reportBytes = (
  { body, garment, checks }: ReportSubject,
  sheets: Sheets,
): Uint8Array<ArrayBuffer> => {
  const { front, back, sleeve } = garment.block;
  const out = jsonBytes();
  out.raw('{"format":"ribwright-report","version":1,"unit":"mm","body":');
  putBody(out, body);
  out.raw(`,"choices":${JSON.stringify(garment.choices)},"block":{`);
  each(out, Object.entries({ front, back, sleeve }), ([name, piece]) => {
    key(out, name);
    putPiece(out, piece);
  });
  out.raw('},"pieces":{');
  each(out, garment.pieces, (piece) => {
    key(out, piece.name);
    putPiece(out, piece);
  });
  out.raw('},"seams":');
  list(out, garment.seams, (seam) => putSeam(out, seam));
  out.raw(',"bands":');
  putBands(out, garment.bands);
  out.raw(',"checks":');
  list(out, checks, (check) => putCheck(out, check));
  out.raw(',"sheets":');
  putSheets(out, sheets);
  out.raw(`,"program":${JSON.stringify(PROGRAM)}}\n`);
  return out.bytes();
};
