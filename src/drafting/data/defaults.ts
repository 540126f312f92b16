import type { Choices } from "../choices.ts";

/**
 * What a maker starts from: a regular sweatshirt. Lengths in mm, stretch and shrinkage as shares.
 * The source stands beside each value. "Workroom" is the workroom's alteration, as it was given to
 * us; "practice" is common practice without a source that we could read.
 */
export const DEFAULT_CHOICES: Choices = {
  fit: {
    chestEase: 140, // practice: a regular sweatshirt has 100 to 180
    upperArmEase: 110, // practice: a regular sweatshirt has 80 to 140
    lengthBelowHip: 0, // ours: the block ends at the hip, the band is taken from there
  },
  alterations: {
    moveSideSeams: { on: true, by: 12.7 }, // workroom: half an inch
    raiseHem: { on: true, by: 50.8 }, // workroom: 2 in, so that a 76.2 band blouses by 25.4
    endSleeve: { on: true, aboveWrist: 50.8 }, // workroom: 2 in, the depth of the finished cuff
    neckline: {
      on: false, // ours: the block's own neckline is already that of a sweatshirt
      lowerFront: 0,
      lowerBack: 0,
      widen: 0,
    },
    vInsert: {
      on: true, // workroom
      halfWidth: 25.4, // workroom: 1 in on either side of the centre
      depth: 50.8, // workroom: 2 in
      allowance: 6.35, // workroom: a quarter of an inch
      method: "true", // ours: the cut-away insert comes out short
    },
  },
  cloth: {
    body: {
      stretch: 0.25, // practice: sweatshirt fleece across
      shrinkLength: 0, // ours: washed before it is cut
      shrinkWidth: 0, // ours: washed before it is cut
      turned: false,
    },
    rib: {
      stretch: 0.8, // practice: 2 by 2 rib with elastane; the maker's own test strip goes before it
      recovery: 0.95, // practice, as above
    },
  },
  bands: {
    neckband: {
      finishedDepth: 19, // practice: three quarters of an inch
      ratio: null, // method 5.2: found from the rib
      share: "ring", // method 5.2: marks by the ring under the fold
    },
    cuff: {
      cutHeight: 114.3, // workroom: 4.5 in, 50.8 deep when finished
      ease: 0, // workroom: cut to wrist + 12.7, which is two allowances
    },
    hemBand: {
      cutHeight: 165.1, // workroom: 6.5 in, 76.2 deep when finished
      ease: 0, // workroom: as long as the hip
    },
  },
  allowances: {
    raglan: 9.525, // practice: three eighths of an inch on knits
    side: 9.525, // practice, as above
    underarm: 9.525, // practice, as above
    bands: 6.35, // practice: a quarter of an inch on bands and the edges they meet
  },
};
