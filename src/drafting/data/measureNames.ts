import type { Mm } from "../../geometry/units.ts";
import type { KeptId, MeasureId } from "../measures.ts";
import { MEASURE_RANGES, type Range } from "./ranges.ts";

/**
 * Each measure: what it is called, how it is taken, and what it does.
 *
 * Usual ranges are the 1st, 50th and 99th percentile of the 2012 Anthropometric Survey of U.S. Army
 * Personnel (ANSUR II, public release; soldiers of 17 to 58), to the nearest mm, so honest bodies
 * lie outside too; elbow from the 1988 survey of the same army. Differences marked "1988 survey"
 * are from that one. Names given for ISO 8559:1989 are as listed in Table 4.1 of *Anthropometry,
 * Apparel Sizing and Design* (Woodhead Publishing); those marked "from memory" were not checked
 * against ISO 8559-1:2017. ASTM D5219 is the American terminology of body dimensions.
 *
 * Unit: mm, of the body, without ease.
 */
export type MeasureName = {
  readonly title: string;
  readonly kind: "girth" | "length";
  readonly howToTake: string;
  readonly standard: string;
  /** Lowest in a hundred, middle, highest in a hundred. */
  readonly usual: { readonly women: Usual; readonly men: Usual };
  readonly mistakes: readonly string[];
  readonly drives: string;
  /** Outside these a body is refused. */
  readonly limits: Range;
};
type Usual = readonly [low: Mm, middle: Mm, high: Mm];
export const MEASURE_NAMES: Readonly<Record<MeasureId | KeptId, MeasureName>> = {
  height: {
    title: "Height",
    kind: "length",
    howToTake:
      "Stand without shoes, heels and back to a wall, eyes level. Lay a book flat on the head against the wall, mark, and measure from the floor.",
    standard: "ISO 8559-1 “stature” (from memory); “Height” in ISO 8559:1989",
    usual: { women: [1483, 1626, 1778], men: [1602, 1755, 1927] },
    mistakes: ["shoes on", "a stated height instead of a measured one", "hair piled up"],
    drives: "Estimates of missing measures, and the height group. No seam directly.",
    limits: MEASURE_RANGES.height,
  },
  chest: {
    title: "Chest or bust girth",
    kind: "girth",
    howToTake:
      "Round the fullest part, tape level and snug, arms down, after breathing out. Over the usual underwear.",
    standard:
      "ISO 8559-1 “bust girth” (women), “chest girth” (men) (from memory); both in ISO 8559:1989",
    usual: { women: [784, 940, 1160], men: [873, 1056, 1276] },
    mistakes: [
      "tape slipped down at the back",
      "under the arms rather than at the fullest level",
      "breath held in",
      "over a jumper",
    ],
    drives: "Body width, and through ease everything across. Required.",
    limits: MEASURE_RANGES.chest,
  },
  waist: {
    title: "Waist girth",
    kind: "girth",
    howToTake:
      "At navel level, tape level, belly at rest. The narrowest part of a woman's waist lies higher and is smaller.",
    standard:
      "ISO 8559-1 “waist girth” is at the natural waist (from memory), so not quite this; the survey's waist is at the navel",
    usual: { women: [665, 852, 1115], men: [725, 937, 1214] },
    mistakes: [
      "trouser waist size instead",
      "belly drawn in",
      "narrowest part instead of navel level (66 mm less in women, 23 mm less in men, 1988 survey)",
    ],
    drives: "Estimates of missing measures, and the check on other measures.",
    limits: MEASURE_RANGES.girth,
  },
  hip: {
    title: "Hip girth",
    kind: "girth",
    howToTake: "Round the fullest part of the seat, feet together, tape level, pockets empty.",
    standard: "ISO 8559-1 “hip girth” (from memory); “Hip girth” in ISO 8559:1989",
    usual: { women: [867, 1018, 1206], men: [862, 1017, 1218] },
    mistakes: ["at the hip bones (too high)", "over thick clothes", "swapped with the waist"],
    drives: "Hem width, and the length of the hem band.",
    limits: MEASURE_RANGES.girth,
  },
  neckBase: {
    title: "Neck base girth",
    kind: "girth",
    howToTake:
      "Round the base of the neck: over the nape bone, the two side points where neck meets shoulder, and the pit between the collar bones in front. A fine chain lies there by itself.",
    standard: "ISO 8559-1 “neck base girth” (from memory); “Neck-base girth” in ISO 8559:1989",
    usual: { women: [329, 370, 423], men: [381, 433, 502] },
    mistakes: ["measured higher, as a shirt collar (30 to 60 mm less)", "tape pulled tight"],
    drives: "Neckline curve, neckband length, start of all four raglan lines.",
    limits: MEASURE_RANGES.girth,
  },
  shoulder: {
    title: "Shoulder length",
    kind: "length",
    howToTake:
      "From the side neck point to the bony end of the shoulder, along the ridge. One side.",
    standard: "ISO 8559-1 “shoulder length” (from memory); “Shoulder length” in ISO 8559:1989",
    usual: { women: [114, 135, 160], men: [125, 150, 175] },
    mistakes: [
      "from the nape instead of the side neck point",
      "past the bone on to the arm",
      "both shoulders added",
    ],
    drives: "Sleeve length from the neck.",
    limits: MEASURE_RANGES.length,
  },
  acrossBack: {
    title: "Across back",
    kind: "length",
    howToTake:
      "Arms hanging. From the fold where the arm meets the back on one side to the other, straight across, half-way down the scye.",
    standard: "ISO 8559-1 “back width” (from memory); “Back width” in ISO 8559:1989",
    usual: { women: [307, 373, 445], men: [352, 430, 515] },
    mistakes: [
      "arms forward (reads wide)",
      "measured at the shoulder ends",
      "pulled tight over the blades",
    ],
    drives: "Estimates of missing measures, and the check on other measures.",
    limits: MEASURE_RANGES.length,
  },
  napeToWaist: {
    title: "Nape to waist",
    kind: "length",
    howToTake:
      "From the nape bone down the middle of the back to the level of the waist tape, following the back.",
    standard:
      "ISO 8559-1 “back waist length” (from memory); “Cervical to waist (back)” in ISO 8559:1989",
    usual: { women: [365, 424, 494], men: [415, 477, 548] },
    mistakes: [
      "started below the bone (bend the head to find it, then lift the head)",
      "to the natural waist instead of navel level (about 70 mm less, 1988 survey)",
    ],
    drives: "Nape to hip where that is missing, and the check on other measures.",
    limits: MEASURE_RANGES.length,
  },
  napeToHip: {
    title: "Nape to hip",
    kind: "length",
    howToTake: "From the nape bone down the middle of the back to the level of the hip tape.",
    standard:
      "no single standard measure known; nape to waist and “Waist to hips” (ISO 8559:1989) together",
    usual: { women: [502, 571, 645], men: [562, 647, 724] },
    mistakes: [
      "following the hollow of the back below the waist instead of letting the tape hang",
      "hip level guessed",
    ],
    drives: "Body length to the hem band; where the hem sits.",
    limits: MEASURE_RANGES.length,
  },
  scyeDepth: {
    title: "Scye depth",
    kind: "length",
    howToTake:
      "Hold a ruler or strip of card level and close up under both arms, arms down. From the nape bone down the middle of the back to the upper edge of the strip.",
    standard: "“Scye depth” in ISO 8559:1989; ISO 8559-1 “scye depth length” (from memory)",
    usual: { women: [152, 188, 224], men: [181, 219, 256] },
    mistakes: [
      "strip not level or not close up under the arms",
      "arms raised",
      "from the shoulder instead of the nape",
    ],
    drives:
      "Depth of the raglan lines. The underarm point of a close block lies 25 mm below this, then the ease.",
    limits: MEASURE_RANGES.length,
  },
  upperArm: {
    title: "Upper arm girth",
    kind: "girth",
    howToTake: "Round the fullest part of the upper arm, elbow bent and muscle tensed.",
    standard:
      "ISO 8559-1 “upper-arm girth” (from memory; arm relaxed there); “Upper arm girth” in ISO 8559:1989",
    usual: { women: [244, 304, 388], men: [280, 357, 448] },
    mistakes: [
      "half-way down instead of at the fullest",
      "over a sleeve",
      "in women the hanging arm at the armpit is about 10 mm larger still (1988 survey)",
    ],
    drives: "Sleeve width at the underarm.",
    limits: MEASURE_RANGES.girth,
  },
  wrist: {
    title: "Wrist girth",
    kind: "girth",
    howToTake: "Round the wrist over the knob of bone, snug.",
    standard: "ISO 8559-1 “wrist girth” (from memory); “Wrist girth” in ISO 8559:1989",
    usual: { women: [138, 154, 174], men: [156, 176, 198] },
    mistakes: ["over a watch", "above the bone"],
    drives: "Finished length of the cuff, and the width of the sleeve's end.",
    limits: MEASURE_RANGES.girth,
  },
  hand: {
    title: "Hand girth",
    kind: "girth",
    howToTake: "Round the knuckles of the open hand, fingers together, thumb left out.",
    standard:
      "ISO 8559-1 “hand girth” (from memory); “Hand girth” in ISO 8559:1989; also in ASTM D5219",
    usual: { women: [167, 187, 207], men: [189, 212, 237] },
    mistakes: ["thumb taken in", "round the palm below the knuckles"],
    drives: "How far the cuff must stretch.",
    limits: MEASURE_RANGES.girth,
  },
  head: {
    title: "Head girth",
    kind: "girth",
    howToTake:
      "Tape just above the brows and round the widest part of the back of the head, hair flat.",
    standard: "ISO 8559-1 “head girth” (from memory); “Head girth” in ISO 8559:1989",
    usual: { women: [521, 560, 611], men: [538, 574, 614] },
    mistakes: ["tape too low at the back", "over a hair knot"],
    drives: "Length of the neckband: it must stretch over the head.",
    limits: MEASURE_RANGES.girth,
  },
  armLength: {
    title: "Arm length",
    kind: "length",
    howToTake:
      "Hand on hip, elbow a little bent. From the shoulder end bone over the elbow to the wrist bone.",
    standard:
      "ISO 8559-1 “outer arm length” (from memory); “Arm length” in ISO 8559:1989; “Arm length (bent arm)” in ASTM D5219",
    usual: { women: [483, 551, 624], men: [535, 602, 678] },
    mistakes: ["arm straight", "to the knuckles", "from the side neck point"],
    drives: "Sleeve length below the shoulder point.",
    limits: MEASURE_RANGES.length,
  },
  spineToWrist: {
    title: "Nape to wrist",
    kind: "length",
    howToTake:
      "Hand on hip, elbow a little bent. From the nape bone over the shoulder end, over the elbow, to the wrist bone.",
    standard:
      "“Seventh cervical to wrist length” in ISO 8559:1989; “Cervicale to wrist length” in ASTM D5219",
    usual: { women: [675, 757, 843], men: [757, 841, 931] },
    mistakes: [
      "arm raised to shoulder height (the survey does this and reads 6 % more)",
      "tape cutting the corner at the shoulder",
    ],
    drives: "The check on shoulder and arm length; estimates of missing measures.",
    limits: MEASURE_RANGES.length,
  },
  waistToHip: {
    title: "Waist to hip",
    kind: "length",
    howToTake: "Straight down at the side from the waist tape to the hip tape.",
    standard: "“Waist to hips” in ISO 8559:1989; ISO 8559-1 “waist to hip” (from memory)",
    usual: { women: [81, 147, 201], men: [103, 170, 224] },
    mistakes: ["levels not the same as for the girths"],
    drives: "Kept with the body; nothing is worked from it yet.",
    limits: MEASURE_RANGES.length,
  },
  torsoGirth: {
    title: "Torso girth",
    kind: "girth",
    howToTake:
      "From mid-shoulder down the front, through the crotch, up the back to the same point, close but not tight. Take it yourself, or have someone you trust help.",
    standard: "“Trunk circumference” in ISO 8559:1989; ISO 8559-1 “torso girth” (from memory)",
    usual: { women: [1394, 1555, 1745], men: [1468, 1664, 1880] },
    mistakes: ["tape slack or tight", "different shoulder point"],
    drives: "Kept with the body; nothing is worked from it yet.",
    limits: MEASURE_RANGES.torsoGirth,
  },
  elbow: {
    title: "Elbow girth",
    kind: "girth",
    howToTake: "Round the bent elbow.",
    standard: "“Elbow girth” in ISO 8559:1989",
    usual: { women: [210, 238, 273], men: [244, 276, 314] },
    mistakes: ["elbow straight, as in the 1988 survey's figures"],
    drives: "Kept with the body; nothing is worked from it yet.",
    limits: MEASURE_RANGES.girth,
  },
};
