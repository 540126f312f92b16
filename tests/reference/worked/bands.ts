import { cutCuff, cutHemBand } from "../../../src/bands/cuffAndHem.ts";
import { cutNeckband, foldRings } from "../../../src/bands/neckband.ts";
import { wornLength } from "../../../src/bands/worn.ts";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";
import { lengthOf } from "../../../src/geometry/length.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import { turningOf } from "../../../src/geometry/turning.ts";
import { WORKED_EXAMPLE } from "../../drafting/bodies.ts";
import { choicesWith, evenRing } from "./bandRing.ts";
import { ellipse, stadium } from "./fineCurves.ts";
import type { Run, Runs } from "./run.ts";

/** A sleeve end wide enough for any cuff of the checks. */
const SLEEVE_END = 254;

/** The project cuts to the finished length and two allowances; 12.7 added is just those. */
const cuffOf = (wrist: number) =>
  cutCuff(SLEEVE_END, { ...WORKED_EXAMPLE, wrist }, DEFAULT_CHOICES);

const cuffCut: Run = (check) => {
  const { cutHeight, cutLength } = cuffOf(check.number("wrist"));
  return check.number("cutHeight") === DEFAULT_CHOICES.bands.cuff.cutHeight
    ? [cutHeight, cutLength]
    : [];
};

const cuffFinished: Run = (check) => {
  const finished = check.number("cutLength") - 2 * check.number("allowance");
  const { finishedDepth, finishedLength, cutLength } = cuffOf(finished);
  return cutLength === check.number("cutLength") ? [finishedDepth, finishedLength] : [];
};

const hemBand: Run = (check) => {
  const body = { ...WORKED_EXAMPLE, hip: check.number("hip") };
  const band = cutHemBand({ front: 280, back: 280 }, body, DEFAULT_CHOICES);
  return [band.cutLength, band.finishedDepth, band.finishedLength];
};

const toSew: Run = (check) => {
  const body = { ...WORKED_EXAMPLE, wrist: check.number("finishedLength") };
  return [cutCuff(check.number("opening"), body, DEFAULT_CHOICES).stretchToSew];
};

const ratio: Run = (check) => {
  const body = { ...WORKED_EXAMPLE, wrist: check.number("finishedLength") };
  return [cutCuff(check.number("opening"), body, DEFAULT_CHOICES).ratio];
};

/** A hand or a head through a band of this length. */
const toPass: Run = (check) => {
  const body = {
    ...WORKED_EXAMPLE,
    wrist: check.number("finishedLength"),
    hand: check.number("part"),
  };
  return [cutCuff(SLEEVE_END, body, DEFAULT_CHOICES).stretchToPass];
};

const neckband: Run = (check) => {
  const choices = choicesWith({
    neckband: { ratio: check.number("ratio"), finishedDepth: check.number("finishedDepth") },
    allowance: check.number("allowance"),
  });
  const ring = evenRing(check.number("opening"), 2 * Math.PI);
  const { cutHeight, cutLength, finishedLength } = cutNeckband(
    ring,
    WORKED_EXAMPLE,
    choices,
  ).neckband;
  return [cutHeight, cutLength, finishedLength];
};

const quarterMarks: Run = (check) => cuffOf(check.number("finishedLength")).quarterMarks;

/** The inner edge of a ring whose outer edge is a drawn path: its length and turning measured. */
const innerOf = (outer: Path, depth: number): number => {
  const [opening, turning] = [lengthOf(outer), turningOf(outer)];
  return foldRings({ opening, turning }, depth, WORKED_EXAMPLE.neckBase).innerRing;
};
const circleOf = (length: number): Path => ellipse(length / (2 * Math.PI), length / (2 * Math.PI));

const ringInner: Run = (check) => [innerOf(circleOf(check.number("outer")), check.number("depth"))];
const ringRatios: Run = (check) => {
  const [outer, depth] = [check.number("outer"), check.number("depth")];
  return [innerOf(circleOf(outer), depth) / outer, innerOf(circleOf(outer), depth / 2) / outer];
};
const stadiumInner: Run = (check) => [
  innerOf(stadium(check.number("straight"), check.number("radius")), check.number("depth")),
];

const afterStretch: Run = (check) => {
  const [finished, stretch] = [check.number("finishedLength"), check.number("stretch")];
  const rib = { stretch, recovery: check.number("recovery") };
  return [wornLength(finished, finished * (1 + stretch), rib)];
};

export const BAND_RUNS: Runs = {
  B01: cuffCut,
  B02: cuffFinished,
  B03: hemBand,
  B04: toSew,
  B05: ratio,
  B06: toPass,
  B07: neckband,
  B08: quarterMarks,
  B09: ringInner,
  B10: ringRatios,
  B11: stadiumInner,
  B12: toPass,
  B13: afterStretch,
};
