import { BAND } from "../../bands/data/bandConstants.ts";
import { SEAM_MEETS } from "../../geometry/tolerance.ts";

/**
 * What is sound and what attends; beyond it is a stop (method 6). Ours, common practice, no source,
 * to be changed with wear trials. Papers call 2.0 kPa proper for the upper arm and 2.35 for the
 * calf (read as abstracts); at rest a band stays below.
 */
export const LIMITS = {
  seam: { sound: SEAM_MEETS, attend: 2 },
  turn: { sound: 5, attend: 10 },
  wristTurn: { sound: 40, attend: 60 },
  sideSlope: { sound: 30, attend: 60 },
  chestEase: { from: 60, to: 320, attendFrom: 0, attendTo: 450 },
  hipEase: { from: 20, to: 450, attendTo: 600 },
  /** The hip may be tighter than the body by this part of the cloth's stretch. */
  hipStretch: 0.5,
  upperArmEase: { from: 40, to: 220, attendFrom: 0, attendTo: 300 },
  /** A body part passes with a tenth of the stretch in hand. */
  passes: BAND.safeStretch,
  sews: BAND.sewStretch,
  /** The neck seam may stretch by this much more than the cloth before it is a stop. */
  necklineAttend: 1.5,
  /** The fold bears this part of its ring as slack before it lifts. Model, see bandConstants. */
  slack: BAND.limit - 1,
  cuffHolds: { part: 0.75, attendFrom: -0.05 },
  hemHolds: { part: 0.5, attendFrom: -0.1 },
  pressure: { sound: 1, attend: 2 },
  vMatch: 0.5,
} as const;
