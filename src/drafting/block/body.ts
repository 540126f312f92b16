import { startTangent } from "../../geometry/path.ts";
import { along, type Point, point } from "../../geometry/point.ts";
import { cubic, line, type Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import type { Choices } from "../choices.ts";
import { BLOCK } from "../data/blockConstants.ts";
import type { Measures } from "../measures.ts";
import type { BodyEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";
import type { Necklines } from "./neckline.ts";
import { drawRaglan } from "./raglanLine.ts";

/** What front and back have in common below the neckline. */
export type Trunk = {
  readonly underarm: Point;
  readonly side: Path;
  readonly rails: readonly Rail[];
};

const clamp = (value: number, least: number, most: number): number =>
  Math.min(most, Math.max(least, value));

/** The level of the underarm (method 2.3, step 7). */
const underarmLevel = (body: Measures, fit: Choices["fit"], corner: Point, quarter: Mm): Mm => {
  const wanted = wantedLevel(body, fit);
  const across = quarter - corner.x;
  return clamp(wanted, corner.y + BLOCK.scyeLeast * across, corner.y + BLOCK.scyeMost * across);
};

const wantedLevel = (body: Measures, fit: Choices["fit"]): Mm =>
  body.scyeDepth + BLOCK.scyeClose + BLOCK.scyeOut * fit.chestEase;

/** The half width of the hem, its lean held both ways (method 2.3, step 9). */
const hemHalf = (body: Measures, fit: Choices["fit"], quarter: Mm, height: Mm) => {
  const quarterHip = (body.hip + BLOCK.hipOut * fit.chestEase) / 4;
  const wanted = Math.max(quarterHip, quarter - BLOCK.leanIn * height);
  return { wanted, used: Math.min(wanted, quarter + BLOCK.leanOut * height) };
};

/** Underarm point and side seam, the same on front and back (method 2.3). */
export const drawTrunk = (
  body: Measures,
  fit: Choices["fit"],
  quarter: Mm,
  necklines: Necklines,
): Trunk => {
  const level = underarmLevel(body, fit, necklines.frontCorner, quarter);
  const underarm = point(quarter, level);
  const wantedHem = body.napeToHip + fit.lengthBelowHip;
  const hemLevel = Math.max(wantedHem, level + BLOCK.sideLeast);
  const height = hemLevel - level;
  const half = hemHalf(body, fit, quarter, height);
  const hemEnd = point(half.used, hemLevel);
  const side: Path = [
    cubic(underarm, along(underarm, hemEnd, 1 / 3), point(hemEnd.x, hemEnd.y - height / 3), hemEnd),
  ];
  const rails = [
    ...scyeRail(wantedLevel(body, fit), level),
    ...lengthRail(wantedHem, hemLevel),
    ...hemWidthRail(half.wanted, half.used),
  ];
  return { underarm, side, rails };
};

/** A front or back, half, on the fold: neckline, raglan, side, hem, centre (method 2.3, 2.4). */
export const drawBody = (neckline: Path, corner: Point, trunk: Trunk): BodyEdges => {
  const { underarm, side } = trunk;
  const t = startTangent(side);
  // Square to the side, so that the underarm runs straight over the side seam.
  const reach = point(t.y, -t.x);
  const hemEnd = side[0].end;
  const fold = point(0, hemEnd.y);
  return {
    neckline,
    raglan: [drawRaglan(corner, underarm, reach, BLOCK.bodyRaglan)],
    side,
    hem: [line(hemEnd, fold)],
    centre: [line(fold, neckline[0].start)],
  };
};

const scyeRail = (wanted: Mm, used: Mm): readonly Rail[] =>
  wanted === used
    ? []
    : [
        {
          id: "rail-scye",
          wanted,
          used,
          unit: "mm",
          stops: false,
          message: `The underarm would lie ${asMm(wanted)} below the nape; for this chest and neck it is held at ${asMm(used)}. Measure the scye depth again, or change the chest's ease.`,
        },
      ];

const lengthRail = (wanted: Mm, used: Mm): readonly Rail[] =>
  wanted >= used
    ? []
    : [
        {
          id: "rail-length",
          wanted,
          used,
          unit: "mm",
          stops: false,
          message: `The block would end ${asMm(wanted)} below the nape; a side of ${asMm(BLOCK.sideLeast)} takes ${asMm(used)}. Measure nape to hip again, or make the length below the hip larger.`,
        },
      ];

const hemWidthRail = (wanted: Mm, used: Mm): readonly Rail[] =>
  wanted <= used
    ? []
    : [
        {
          id: "rail-hem-width",
          wanted,
          used,
          unit: "mm",
          stops: false,
          message: `A quarter of the hem would be ${asMm(wanted)}; the side seam may lean out to ${asMm(used)}. Give the chest more ease, or make the block longer.`,
        },
      ];
