import { makeGarment } from "../../../src/bands/makeGarment.ts";
import { draftRaglanBlock } from "../../../src/drafting/block/raglanBlock.ts";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";
import { point } from "../../../src/geometry/point.ts";
import { clothNeeded } from "../../../src/lay/clothNeeded.ts";
import { GAP } from "../../../src/lay/data/clothWidths.ts";
import { WORKED_EXAMPLE } from "../../drafting/bodies.ts";
import { polygon } from "./fineCurves.ts";
import type { Run, Runs } from "./run.ts";

const MM_PER_M = 1000;

/** A garment of one piece of body cloth, a rectangle cut once. */
const rectangle = (across: number, along: number) => {
  const { fit } = DEFAULT_CHOICES;
  const drafted = draftRaglanBlock(WORKED_EXAMPLE, fit);
  const garment = makeGarment(drafted, WORKED_EXAMPLE, DEFAULT_CHOICES);
  const corners = [point(0, 0), point(across, 0), point(across, along), point(0, along)];
  const pieces = garment.pieces
    .filter(({ name }) => name === "front")
    .map((piece) => ({ ...piece, cutLine: polygon(corners), onFold: null, cut: 1 }));
  return { ...garment, pieces };
};

/** One rectangle that needs just the length of cloth of the check, gaps at both ends included. */
const efficiency: Run = (check) => {
  const along = check.number("length") * MM_PER_M - 2 * GAP;
  const across = (check.number("pieces") * MM_PER_M * MM_PER_M) / along;
  const widths = { body: [check.number("width") * MM_PER_M], rib: [] };
  const found = clothNeeded(rectangle(across, along), widths).body.find(
    ({ laid }) => laid === "opened",
  );
  return found?.kind === "fits" ? [found.used] : [];
};

export const CLOTH_RUNS: Runs = { Y03: efficiency };
