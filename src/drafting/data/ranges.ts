/** What a number may be, both ends included. Outside, the file is refused (method, section 3). */
export type Range = {
  readonly least: number;
  readonly most: number;
  readonly unit: "mm" | "ratio";
};

const mm = (least: number, most: number): Range => ({ least, most, unit: "mm" });
const share = (least: number, most: number): Range => ({ least, most, unit: "ratio" });

/** Source of all of these: the drafting method, section 3, "Ranges"; ours, common practice. */
export const CHOICE_RANGES = {
  fit: {
    chestEase: mm(-60, 400),
    upperArmEase: mm(-20, 300),
    lengthBelowHip: mm(-300, 400),
  },
  moveSideSeams: { by: mm(0, 60) },
  raiseHem: { by: mm(0, 300) },
  endSleeve: { aboveWrist: mm(0, 400) },
  neckline: { lowerFront: mm(-20, 150), lowerBack: mm(-20, 100), widen: mm(0, 80) },
  vInsert: { halfWidth: mm(5, 80), depth: mm(10, 250), allowance: mm(0, 15) },
  stretch: share(0.02, 2),
  recovery: share(0.5, 1),
  shrinkage: share(-0.1, 0.2),
  neckband: { finishedDepth: mm(6, 60), ratio: share(0.5, 1) },
  cutHeight: mm(30, 300),
  bandEase: mm(-60, 100),
  allowance: mm(0, 30),
} as const;

/** A cuff or hem band is at least this many `bands` allowances high, or nothing would be left. */
export const CUT_HEIGHT_ALLOWANCES = 4; // method, section 3, "Ranges"

/** Body measures outside these are slips, unit mistakes mostly: not drafted (method, section 7). */
export const MEASURE_RANGES = {
  height: mm(800, 2300),
  chest: mm(400, 2000),
  girth: mm(60, 2000),
  torsoGirth: mm(60, 2600),
  length: mm(40, 1500),
} as const;
