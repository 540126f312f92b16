import type { MarkTo } from "../bands/band.ts";
import type { Garment } from "../bands/garment.ts";
import type { Mm, Ratio } from "../geometry/units.ts";
import { edgeOf, hasPiece, pieceOf } from "./shapes.ts";
import { said, type Told } from "./words/told.ts";

/** A mark of a band and of its opening, and how the band is stretched from it to the next. */
type MarkRow = {
  /** From 1, in order round the band from its seam. */
  readonly n: number;
  readonly to: Told;
  /** Along the band's finished length, from its seam. */
  readonly onBand: Mm;
  /** Along the opening as it is cut, from where the band's seam meets it. */
  readonly onOpening: Mm;
  /** From this mark to the next, on the band and on the opening. */
  readonly band: Mm;
  readonly opening: Mm;
  /** What the band gains between the two; below 0 the opening is eased in. */
  readonly stretch: Ratio;
};

/** All marks of a band, with its length and that of its opening. */
export type MarkTable = {
  readonly rows: readonly MarkRow[];
  readonly bandLength: Mm;
  /** As cut: longer than the finished opening where the cloth will shrink. */
  readonly openingLength: Mm;
};

type Place = { readonly to: Told; readonly onBand: Mm; readonly onOpening: Mm };

const tableOf = (places: readonly Place[], bandLength: Mm, openingLength: Mm): MarkTable => {
  const rows = places.map((place, i) => {
    const next = places[i + 1] ?? { onBand: bandLength, onOpening: openingLength };
    const band = next.onBand - place.onBand;
    const opening = next.onOpening - place.onOpening;
    return { ...place, n: i + 1, band, opening, stretch: band > 0 ? opening / band - 1 : 0 };
  });
  return { rows, bandLength, openingLength };
};

const TO: Readonly<Record<MarkTo, Told>> = {
  "centre-back": said("mark.centreBack"),
  "raglan-back": said("mark.raglanBack"),
  "half-way": said("mark.halfWay"),
  "raglan-front": said("mark.raglanFront"),
  "centre-front": said("mark.centreFront"),
};

/** Half the opening, run by run from centre back: finished length, and as it is cut. */
const neckRuns = (garment: Garment): readonly (readonly [finished: Mm, cut: Mm])[] => {
  const { back, sleeve, front, vInsert } = garment.finished;
  const cut = (piece: "back" | "sleeve" | "front"): Mm =>
    edgeOf(pieceOf(garment, piece), "neckline").length;
  return [
    [back.neckline.length, cut("back")],
    [sleeve.neckline.length, cut("sleeve")],
    [front.neckline.length, cut("front")],
    ...(vInsert
      ? [[vInsert.top.length / 2, edgeOf(pieceOf(garment, "vInsert"), "top").length / 2] as const]
      : []),
  ];
};

/** A way along the finished opening as it is on the pieces in hand. */
const asCut = (runs: ReturnType<typeof neckRuns>, way: Mm): Mm => {
  let [left, done] = [way, 0];
  for (const [finished, cut] of runs) {
    if (left <= finished) return done + (finished > 0 ? (left / finished) * cut : 0);
    left -= finished;
    done += cut;
  }
  return done;
};

/** The eight marks of the neckband (method 5.2). In mm. */
export const neckbandMarks = (garment: Garment): MarkTable => {
  const { neckband } = garment.bands;
  const runs = neckRuns(garment);
  const whole = 2 * runs.reduce((sum, [, cut]) => sum + cut, 0);
  const half = [...garment.ring.stations].sort((a, b) => a.way - b.way);
  const ways = half.map(({ way }) => asCut(runs, way));
  const round = [
    ...ways,
    ...ways
      .slice(1, -1)
      .map((way) => whole - way)
      .reverse(),
  ];
  const places = neckband.marks.map(({ at, to }, i) => ({
    to: TO[to],
    onBand: at,
    onOpening: round[i] ?? 0,
  }));
  return tableOf(places, neckband.finishedLength, whole);
};

const CUFF_TO = [
  said("mark.underarm"),
  said("mark.frontQuarter"),
  said("mark.sleeveMiddle"),
  said("mark.backQuarter"),
];

/** The quarter marks of a cuff (method 5.3). In mm. */
export const cuffMarks = (garment: Garment): MarkTable => {
  const { cuff } = garment.bands;
  const opening = edgeOf(pieceOf(garment, "sleeve"), "wrist").length;
  const places = cuff.quarterMarks.map((at, i) => ({
    to: CUFF_TO[i] ?? said("mark.underarm"),
    onBand: at,
    onOpening: (opening * i) / 4,
  }));
  return tableOf(places, cuff.finishedLength, opening);
};

const HEM_TO = [
  said("mark.side"),
  said("mark.centreFront"),
  said("mark.otherSide"),
  said("mark.centreBack"),
];

/** The quarter marks of the hem band: side, centre front, side, centre back. In mm. */
export const hemMarks = (garment: Garment): MarkTable => {
  const { hemBand } = garment.bands;
  const front = edgeOf(pieceOf(garment, "front"), "hem").length;
  const back = edgeOf(pieceOf(garment, "back"), "hem").length;
  const ways = [0, front, 2 * front, 2 * front + back];
  const places = hemBand.quarterMarks.map((at, i) => ({
    to: HEM_TO[i] ?? said("mark.side"),
    onBand: at,
    onOpening: ways[i] ?? 0,
  }));
  return tableOf(places, hemBand.finishedLength, 2 * (front + back));
};

/** Where the neckband's half-way mark lies: on which piece, and how far from its raglan corner. */
export type HalfWay = { readonly piece: "back" | "sleeve" | "front"; readonly from: Mm };

/** Where the half-way mark lies, from the notches of the pieces. */
export const halfWayMark = (garment: Garment): HalfWay => {
  const on = (piece: "back" | "sleeve" | "front") => {
    const found = pieceOf(garment, piece);
    const marks = found.notches.filter(({ seam }) => seam === "neckband").map(({ at }) => at);
    return { at: Math.max(-1, ...marks), length: edgeOf(found, "neckline").length };
  };
  const sleeve = on("sleeve");
  if (sleeve.at >= 0) return { piece: "sleeve", from: sleeve.at };
  const back = on("back");
  if (back.at > 0) return { piece: "back", from: back.length - back.at };
  const front = on("front");
  const at = hasPiece(garment, "vInsert") ? Math.max(0, front.at) : front.at;
  return { piece: "front", from: front.length - at };
};
