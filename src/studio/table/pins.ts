import type { Garment } from "../../bands/garment.ts";
import type { EdgeName, Piece, PieceName } from "../../drafting/piece.ts";
import { boundsOf } from "../../geometry/outline.ts";
import { endOf, endTangent, startOf, startTangent } from "../../geometry/path.ts";
import { type Point, point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Chapter } from "../chapters/chapters.ts";
import type { ChoiceFieldId } from "../fields/fields.ts";

/** A number that may be taken hold of on the drawing. */
export type Pin = {
  readonly field: ChoiceFieldId;
  readonly piece: PieceName;
  readonly at: Point;
  /** The way that makes the number larger; of length 1. */
  readonly way: Point;
  /** How much the number grows for each mm along the way. */
  readonly perMm: number;
  /** Where the head stands, if not the way that it grows: clear of the pins beside it. */
  readonly head: Point;
};

const OUT = point(1, 0);
const UP = point(0, -1);
const DOWN = point(0, 1);

const edgeOf = (piece: Piece | undefined, name: EdgeName): Path | null =>
  piece?.edges.find((edge) => edge.name === name)?.path ?? null;

const pieceOf = (pieces: readonly Piece[], name: PieceName): Piece | undefined =>
  pieces.find((piece) => piece.name === name);

type Hold = {
  readonly at: Point;
  readonly way: Point;
  readonly perMm?: number;
  readonly head?: Point;
};

const pin = (field: ChoiceFieldId, piece: PieceName, hold: Hold | null): readonly Pin[] =>
  hold ? [{ field, piece, perMm: 1, head: hold.way, ...hold }] : [];

const hemPlace = (hem: Path | null, way: Point): Hold | null =>
  hem ? { at: point(startOf(hem).x * (way === UP ? 0.45 : 0.8), endOf(hem).y), way } : null;

const blockPins = ({ block }: Garment): readonly Pin[] => {
  const side = edgeOf(block.front, "side");
  const underarm = edgeOf(block.sleeve, "underarmFront");
  return [
    ...pin("fit.chestEase", "front", side && { at: startOf(side), way: OUT, perMm: 4 }),
    ...pin("fit.lengthBelowHip", "front", hemPlace(edgeOf(block.front, "hem"), DOWN)),
    ...pin("fit.upperArmEase", "sleeve", underarm && { at: startOf(underarm), way: OUT, perMm: 2 }),
  ];
};

const vPins = ({ pieces }: Garment): readonly Pin[] => {
  const v = edgeOf(pieceOf(pieces, "front"), "v");
  const neckline = edgeOf(pieceOf(pieces, "front"), "neckline");
  return [
    ...pin("vInsert.depth", "front", v && { at: startOf(v), way: DOWN }),
    ...pin(
      "vInsert.halfWidth",
      "front",
      neckline && { at: startOf(neckline), way: startTangent(neckline) },
    ),
  ];
};

const necklinePins = ({ pieces, choices }: Garment): readonly Pin[] => {
  const front = pieceOf(pieces, "front");
  const [v, neckline] = [edgeOf(front, "v"), edgeOf(front, "neckline")];
  const back = edgeOf(pieceOf(pieces, "back"), "neckline");
  const raglan = edgeOf(front, "raglan");
  const top = v
    ? point(0, startOf(v).y - choices.alterations.vInsert.depth)
    : neckline && startOf(neckline);
  return [
    ...pin("neckline.lowerFront", "front", top && { at: top, way: DOWN, head: UP }),
    ...pin("neckline.lowerBack", "back", back && { at: startOf(back), way: DOWN }),
    ...pin("neckline.widen", "front", raglan && { at: startOf(raglan), way: startTangent(raglan) }),
  ];
};

const alterationPins = (garment: Garment): readonly Pin[] => {
  const { pieces, choices } = garment;
  const on = choices.alterations;
  const front = pieceOf(pieces, "front");
  const side = edgeOf(front, "side");
  const wrist = edgeOf(pieceOf(pieces, "sleeve"), "wrist");
  const end = wrist && { at: point(startOf(wrist).x * 0.4, startOf(wrist).y), way: UP };
  return [
    ...(on.neckline.on ? necklinePins(garment) : []),
    ...(on.moveSideSeams.on
      ? pin("moveSideSeams.by", "front", side && { at: startOf(side), way: OUT })
      : []),
    ...(on.raiseHem.on ? pin("raiseHem.by", "front", hemPlace(edgeOf(front, "hem"), UP)) : []),
    ...(on.endSleeve.on ? pin("endSleeve.aboveWrist", "sleeve", end) : []),
    ...(on.vInsert.on ? vPins(garment) : []),
  ];
};

/** The lower edge of a band, and its second end. */
const bandPins = ({ pieces }: Garment, name: "cuff" | "hemBand" | "neckband"): readonly Pin[] => {
  const piece = pieceOf(pieces, name);
  const bottom = edgeOf(piece, "bottom");
  const end = edgeOf(piece, "endB");
  if (!bottom || !end || !piece) return [];
  const { right } = boundsOf(end);
  const low = point(right * 0.85, startOf(bottom).y);
  if (name === "neckband") {
    return pin("neckband.finishedDepth", name, { at: low, way: DOWN, perMm: 0.5 });
  }
  return [
    ...pin(`${name}.cutHeight`, name, { at: low, way: DOWN }),
    ...pin(`${name}.ease`, name, {
      at: point(right, endOf(end).y / 2),
      way: endTangent(end).x > 0.5 ? endTangent(end) : OUT,
    }),
  ];
};

/** The pins of a chapter: only for numbers whose sentences stand in it. */
export const pinsOf = (chapter: Chapter, garment: Garment, drafted: boolean): readonly Pin[] => {
  if (chapter === "block") return drafted ? blockPins(garment) : [];
  if (chapter === "alterations") return alterationPins(garment);
  if (chapter !== "ribs") return [];
  return (["hemBand", "cuff", "neckband"] as const).flatMap((name) => bandPins(garment, name));
};
