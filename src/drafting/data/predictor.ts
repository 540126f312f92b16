import type { Mm } from "../../geometry/units.ts";
import type { MeasureId, Sex } from "../measures.ts";

/**
 * What the survey foretells of a body (method, section 7). Generated, not written by hand.
 *
 * Source: 2012 Anthropometric Survey of U.S. Army Personnel (ANSUR II), public release, a work of
 * the US Government: Gordon et al., Technical Report NATICK/TR-15/007, 2014. Its measures were
 * brought to ours as told in tests/reference/data/ansur2.md. Least squares, mean and covariance
 * of 4,855 of the 6,068 bodies: a random 80 % of each sex (1,589 women, 3,266 men), one very
 * unlikely row left out; the rest were kept to test by. Soldiers of 17 to 58, no children.
 *
 * Unit: mm; covariances mm².
 */
export type GroupId = Sex | "pooled";
export type PredictorId = "height" | "chest" | "waist" | "hip";

/** value = intercept + Σ coef · measure, over the measures that `coef` names. */
export type Regression = {
  readonly intercept: number;
  readonly coef: { readonly [M in MeasureId]?: number };
  /** The spread of honest bodies about the value. */
  readonly residualSd: Mm;
};

/** Height is never estimated and never doubted. */
type Regressions = Readonly<Record<Exclude<MeasureId, "height">, Regression>>;

export type Group = {
  /** The survey's 1st and 99th percentile; beyond them an estimate is a stretch. */
  readonly validRange: Readonly<Record<PredictorId, readonly [Mm, Mm]>>;
  /** From height, chest, waist and hip; one of the four from the other three. */
  readonly full: Regressions;
  /** From height and chest; chest from height alone. */
  readonly small: Regressions;
  /**
   * The measures as one normal distribution, in the order of MEASURE_IDS with waistToHip
   * (napeToHip less napeToWaist) in the place of napeToHip. Of the covariance the lower half.
   */
  readonly normal: {
    readonly mean: readonly number[];
    readonly covariance: readonly (readonly number[])[];
  };
};

/** Beyond this many standard deviations a measure is doubted. Method, section 7. */
export const SIGMA_LIMIT = 3;

const female: Group = {
  validRange: {
    height: [1482.5, 1777.6],
    chest: [784, 1160.2],
    waist: [665, 1115.1],
    hip: [867, 1206.3],
  },
  full: {
    chest: {
      intercept: 209.5702,
      coef: { height: 0.034868, waist: 0.587557, hip: 0.170385 },
      residualSd: 43.37,
    },
    waist: {
      intercept: -182.8039,
      coef: { height: -0.098243, chest: 0.668278, hip: 0.559916 },
      residualSd: 46.26,
    },
    hip: {
      intercept: 116.2154,
      coef: { height: 0.219785, chest: 0.159318, waist: 0.460308 },
      residualSd: 41.94,
    },
    neckBase: {
      intercept: 115.2549,
      coef: { height: 0.068519, chest: 0.0907, waist: 0.024076, hip: 0.0368 },
      residualSd: 13.67,
    },
    shoulder: {
      intercept: 33.6687,
      coef: { height: 0.060761, chest: 0.001891, waist: -0.000541, hip: 0.001479 },
      residualSd: 9.48,
    },
    acrossBack: {
      intercept: 106.4011,
      coef: { height: 0.02898, chest: 0.183067, waist: 0.008911, hip: 0.038348 },
      residualSd: 22.86,
    },
    napeToWaist: {
      intercept: 77.2818,
      coef: { height: 0.184154, chest: -0.06031, waist: 0.227386, hip: -0.088545 },
      residualSd: 18.05,
    },
    napeToHip: {
      intercept: 52.5586,
      coef: { height: 0.291485, chest: 0.001381, waist: -0.021221, hip: 0.060689 },
      residualSd: 24.49,
    },
    scyeDepth: {
      intercept: 10.8582,
      coef: { height: 0.070281, chest: 0.015094, waist: 0.044973, hip: 0.00989 },
      residualSd: 13.36,
    },
    upperArm: {
      intercept: 1.1991,
      coef: { height: -0.017917, chest: 0.097397, waist: 0.046826, hip: 0.196803 },
      residualSd: 17.21,
    },
    wrist: {
      intercept: 28.8992,
      coef: { height: 0.049302, chest: 0.021616, waist: 0.004894, hip: 0.020533 },
      residualSd: 5.7,
    },
    hand: {
      intercept: 66.1346,
      coef: { height: 0.051092, chest: 0.022195, waist: -0.000487, hip: 0.016342 },
      residualSd: 7.34,
    },
    head: {
      intercept: 391.4998,
      coef: { height: 0.072704, chest: 0.018186, waist: -0.01056, hip: 0.042015 },
      residualSd: 17.96,
    },
    armLength: {
      intercept: -69.3762,
      coef: { height: 0.367813, chest: -0.006006, waist: 0.020307, hip: 0.010617 },
      residualSd: 17.3,
    },
    spineToWrist: {
      intercept: -7.4309,
      coef: { height: 0.414989, chest: 0.061775, waist: 0.003893, hip: 0.027386 },
      residualSd: 20.01,
    },
  },
  small: {
    chest: { intercept: 422.0022, coef: { height: 0.322575 }, residualSd: 80.05 },
    waist: { intercept: -158.6129, coef: { height: 0.033436, chest: 1.0205 }, residualSd: 53.67 },
    hip: { intercept: 43.2047, coef: { height: 0.235176, chest: 0.629062 }, residualSd: 48.67 },
    neckBase: {
      intercept: 113.026,
      coef: { height: 0.077979, chest: 0.138419 },
      residualSd: 13.92,
    },
    shoulder: { intercept: 33.8183, coef: { height: 0.061091, chest: 0.00227 }, residualSd: 9.48 },
    acrossBack: {
      intercept: 106.6446,
      coef: { height: 0.038297, chest: 0.216284 },
      residualSd: 22.95,
    },
    napeToWaist: {
      intercept: 37.3899,
      coef: { height: 0.170933, chest: 0.116037 },
      residualSd: 20.96,
    },
    napeToHip: {
      intercept: 58.5465,
      coef: { height: 0.305048, chest: 0.017902 },
      residualSd: 24.61,
    },
    scyeDepth: {
      intercept: 4.1521,
      coef: { height: 0.074111, chest: 0.067211 },
      residualSd: 13.62,
    },
    upperArm: { intercept: 2.2747, coef: { height: 0.029932, chest: 0.268985 }, residualSd: 20.45 },
    wrist: { intercept: 29.0101, coef: { height: 0.054295, chest: 0.039526 }, residualSd: 5.81 },
    hand: { intercept: 66.9178, coef: { height: 0.054919, chest: 0.031979 }, residualSd: 7.38 },
    head: { intercept: 394.99, coef: { height: 0.082232, chest: 0.03384 }, residualSd: 18.04 },
    armLength: {
      intercept: -72.1384,
      coef: { height: 0.370989, chest: 0.021396 },
      residualSd: 17.35,
    },
    spineToWrist: {
      intercept: -6.8652,
      coef: { height: 0.42156, chest: 0.082976 },
      residualSd: 20.05,
    },
  },
  normal: {
    mean: [
      1628.763, 947.4, 862.668, 1022.224, 371.173, 135.471, 373.928, 425.733, 146.626, 188.536,
      305.864, 154.89, 186.665, 560.987, 552.385, 758.367,
    ],
    covariance: [
      [4212.258],
      [1358.769, 6842.359],
      [1527.465, 7028.057, 10100.532],
      [1845.372, 4623.816, 6104.762, 5708.108],
      [516.546, 1053.066, 1209.94, 902.859, 379.638],
      [260.413, 98.538, 109.669, 126.012, 23.822, 105.815],
      [455.196, 1531.927, 1654.981, 1173.24, 307.53, 74.687, 874.851],
      [877.682, 1026.228, 1613.602, 943.685, 235.702, 58.1, 254.866, 708.067],
      [431.586, -489.244, -1002.512, -182.528, -42.994, 26.673, -52.776, -152.941, 611.581],
      [403.496, 560.578, 728.062, 530.49, 148.806, 54.8, 161.775, 222.389, -4.434, 252.844],
      [
        491.572, 1881.164, 2331.556, 1826.524, 378.872, 38.798, 477.906, 331.2, -187.976, 187.728,
        938.504,
      ],
      [
        282.41, 344.226, 402.001, 338.007, 95.81, 22.614, 95.125, 91.121, 6.291, 51.052, 146.769,
        62.674,
      ],
      [
        274.786, 293.433, 328.88, 287.222, 87.042, 29.58, 92.569, 81.414, 6.206, 45.061, 131.092,
        52.651, 78.871,
      ],
      [
        392.364, 343.28, 388.699, 393.618, 135.272, 40.657, 114.058, 86.032, -49.842, 54.427,
        158.399, 51.124, 55.838, 368.868,
      ],
      [
        1591.772, 650.485, 789.533, 835.551, 218.02, 118.052, 209.383, 285.94, 52.713, 155.527,
        256.227, 115.902, 120.562, 213.722, 905.137,
      ],
      [
        1888.464, 1140.551, 1274.548, 1231.535, 342.893, 185.484, 413.711, 379.647, 68.462, 230.253,
        433.6, 167.095, 174.281, 282.552, 970.905, 1292.19,
      ],
    ],
  },
};

const male: Group = {
  validRange: {
    height: [1601.6, 1927],
    chest: [872.8, 1276.2],
    waist: [724.8, 1214],
    hip: [861.8, 1218],
  },
  full: {
    chest: {
      intercept: 222.7363,
      coef: { height: 0.040469, waist: 0.531326, hip: 0.259855 },
      residualSd: 38.92,
    },
    waist: {
      intercept: -226.8062,
      coef: { height: -0.134594, chest: 0.645317, hip: 0.706802 },
      residualSd: 42.89,
    },
    hip: {
      intercept: 105.0346,
      coef: { height: 0.164674, chest: 0.19759, waist: 0.442505 },
      residualSd: 33.94,
    },
    neckBase: {
      intercept: 153.2763,
      coef: { height: 0.031996, chest: 0.16808, waist: 0.021544, hip: 0.026287 },
      residualSd: 16.81,
    },
    shoulder: {
      intercept: 29.2785,
      coef: { height: 0.058491, chest: 0.038403, waist: -0.040513, hip: 0.014955 },
      residualSd: 9.43,
    },
    acrossBack: {
      intercept: 117.4465,
      coef: { height: 0.014117, chest: 0.319948, waist: -0.021288, hip: -0.029408 },
      residualSd: 25.38,
    },
    napeToWaist: {
      intercept: 77.8993,
      coef: { height: 0.192312, chest: -0.045443, waist: 0.189018, hip: -0.066365 },
      residualSd: 19.01,
    },
    napeToHip: {
      intercept: 81.7121,
      coef: { height: 0.261967, chest: -0.010231, waist: 0.003451, hip: 0.109837 },
      residualSd: 26.71,
    },
    scyeDepth: {
      intercept: 26.4515,
      coef: { height: 0.05686, chest: 0.061228, waist: 0.00453, hip: 0.022616 },
      residualSd: 13.12,
    },
    upperArm: {
      intercept: 3.0794,
      coef: { height: -0.038841, chest: 0.293021, waist: -0.12511, hip: 0.226155 },
      residualSd: 19.78,
    },
    wrist: {
      intercept: 33.9282,
      coef: { height: 0.043643, chest: 0.034168, waist: -0.003856, hip: 0.032129 },
      residualSd: 6.31,
    },
    hand: {
      intercept: 60.3979,
      coef: { height: 0.051729, chest: 0.048597, waist: -0.017859, hip: 0.025906 },
      residualSd: 8.06,
    },
    head: {
      intercept: 398.6255,
      coef: { height: 0.049462, chest: 0.047989, waist: -0.020218, hip: 0.056141 },
      residualSd: 13.75,
    },
    armLength: {
      intercept: -47.2692,
      coef: { height: 0.35935, chest: 0.043676, waist: -0.021673, hip: -0.006586 },
      residualSd: 17.53,
    },
    spineToWrist: {
      intercept: 12.2273,
      coef: { height: 0.374978, chest: 0.19073, waist: -0.089687, hip: 0.052819 },
      residualSd: 21.41,
    },
  },
  small: {
    chest: { intercept: 506.344, coef: { height: 0.314327 }, residualSd: 84.82 },
    waist: {
      intercept: -222.0015,
      coef: { height: -0.026485, chest: 1.142217 },
      residualSd: 51.73,
    },
    hip: { intercept: 6.7979, coef: { height: 0.152954, chest: 0.703026 }, residualSd: 40.93 },
    neckBase: {
      intercept: 148.6723,
      coef: { height: 0.035446, chest: 0.211168 },
      residualSd: 16.91,
    },
    shoulder: { intercept: 38.374, coef: { height: 0.061851, chest: 0.002643 }, residualSd: 9.6 },
    acrossBack: {
      intercept: 121.9725,
      coef: { height: 0.010182, chest: 0.274958 },
      residualSd: 25.45,
    },
    napeToWaist: {
      intercept: 35.4858,
      coef: { height: 0.177155, chest: 0.1238 },
      residualSd: 20.85,
    },
    napeToHip: {
      intercept: 81.6927,
      coef: { height: 0.278676, chest: 0.070929 },
      residualSd: 27.09,
    },
    scyeDepth: { intercept: 25.5996, coef: { height: 0.0602, chest: 0.082302 }, residualSd: 13.16 },
    upperArm: {
      intercept: 32.3915,
      coef: { height: -0.000936, chest: 0.30911 },
      residualSd: 21.25,
    },
    wrist: { intercept: 35.0026, coef: { height: 0.048659, chest: 0.052352 }, residualSd: 6.42 },
    hand: { intercept: 64.5387, coef: { height: 0.056165, chest: 0.046411 }, residualSd: 8.12 },
    head: { intercept: 403.4956, coef: { height: 0.058584, chest: 0.064364 }, residualSd: 13.88 },
    armLength: {
      intercept: -42.5025,
      coef: { height: 0.358917, chest: 0.01429 },
      residualSd: 17.58,
    },
    spineToWrist: {
      intercept: 32.4969,
      coef: { height: 0.385432, chest: 0.125421 },
      residualSd: 21.75,
    },
  },
  normal: {
    mean: [
      1756.13, 1058.342, 940.344, 1019.448, 434.408, 149.79, 430.854, 477.616, 168.535, 218.422,
      357.892, 175.86, 212.29, 574.497, 602.926, 842.104,
    ],
    covariance: [
      [4690.667],
      [1474.401, 7655.888],
      [1559.853, 8705.636, 12577.144],
      [1754, 5607.804, 7542.455, 5885.272],
      [477.612, 1668.938, 1982.375, 1315.876, 655.192],
      [294.02, 111.428, 28.828, 100.402, 9.565, 110.545],
      [453.161, 2120.061, 2317.822, 1485.33, 533.392, 84.85, 1235.09],
      [1013.507, 1208.999, 1781.121, 1117.564, 306.623, 49.803, 335.064, 763.501],
      [398.248, -255.093, -589.712, -42.996, -53.202, 40.619, -23.869, -131.662, 694.327],
      [403.723, 718.857, 849.283, 610.36, 194.754, 57.396, 240.947, 236.581, 15.582, 256.421],
      [
        451.36, 2365.134, 2622.578, 1962.419, 596.947, 36.577, 642.645, 321.945, -57.312, 238.443,
        1181.984,
      ],
      [
        305.431, 472.541, 559.369, 428.164, 138.957, 23.304, 134.206, 114.461, 4.308, 64.93,
        184.487, 80.827,
      ],
      [
        331.878, 438.124, 474.536, 381.018, 132.725, 24.727, 127.229, 107.022, 16.115, 59.194,
        178.845, 70.994, 104.804,
      ],
      [
        369.698, 579.14, 664.08, 533.778, 183.512, 23.594, 175.65, 121.159, 27.032, 72.185, 209.507,
        60.073, 63.529, 251.446,
      ],
      [
        1704.629, 638.593, 618.499, 672.998, 178.798, 117.761, 170.375, 322.527, 66.126, 139.446,
        202.864, 118.639, 136.136, 136.286, 929.673,
      ],
      [
        1992.854, 1528.492, 1515.715, 1361.682, 398.15, 192.957, 543.734, 455.512, 95.809, 258.315,
        507.202, 190.491, 208.045, 226.391, 994.371, 1432.611,
      ],
    ],
  },
};

const pooled: Group = {
  validRange: {
    height: [1509.7, 1915.3],
    chest: [807, 1259.3],
    waist: [693.7, 1192.7],
    hip: [862, 1217],
  },
  full: {
    chest: {
      intercept: 1.841,
      coef: { height: 0.237199, waist: 0.727772, hip: -0.051282 },
      residualSd: 44.41,
    },
    waist: {
      intercept: -293.1515,
      coef: { height: -0.071506, chest: 0.733503, hip: 0.569411 },
      residualSd: 44.59,
    },
    hip: {
      intercept: 588.7282,
      coef: { height: -0.028991, chest: -0.053143, waist: 0.585455 },
      residualSd: 45.21,
    },
    neckBase: {
      intercept: 2.6001,
      coef: { height: 0.142857, chest: 0.247492, waist: 0.05703, hip: -0.136159 },
      residualSd: 19.29,
    },
    shoulder: {
      intercept: 10.7728,
      coef: { height: 0.074536, chest: 0.041236, waist: -0.02165, hip: -0.015477 },
      residualSd: 9.61,
    },
    acrossBack: {
      intercept: 26.8033,
      coef: { height: 0.081867, chest: 0.336545, waist: 0.009795, hip: -0.105707 },
      residualSd: 25.67,
    },
    napeToWaist: {
      intercept: 18.5759,
      coef: { height: 0.23325, chest: -0.0039, waist: 0.215656, hip: -0.148142 },
      residualSd: 19.26,
    },
    napeToHip: {
      intercept: -65.8151,
      coef: { height: 0.370099, chest: 0.102746, waist: 0.030464, hip: -0.077994 },
      residualSd: 28.16,
    },
    scyeDepth: {
      intercept: -31.8369,
      coef: { height: 0.100239, chest: 0.086442, waist: 0.03146, hip: -0.047539 },
      residualSd: 13.86,
    },
    upperArm: {
      intercept: -121.4603,
      coef: { height: 0.060932, chest: 0.320189, waist: -0.035294, hip: 0.061652 },
      residualSd: 21.73,
    },
    wrist: {
      intercept: -8.5374,
      coef: { height: 0.075033, chest: 0.061797, waist: 0.009377, hip: -0.022386 },
      residualSd: 6.89,
    },
    hand: {
      intercept: 9.0221,
      coef: { height: 0.09035, chest: 0.080933, waist: 0.001304, hip: -0.043052 },
      residualSd: 8.87,
    },
    head: {
      intercept: 384.9095,
      coef: { height: 0.065207, chest: 0.046358, waist: -0.012221, hip: 0.036432 },
      residualSd: 15.32,
    },
    armLength: {
      intercept: -61.7828,
      coef: { height: 0.367981, chest: 0.031, waist: -0.006674, hip: -0.008128 },
      residualSd: 17.51,
    },
    spineToWrist: {
      intercept: -70.326,
      coef: { height: 0.444459, chest: 0.204226, waist: -0.036943, hip: -0.050867 },
      residualSd: 21.98,
    },
  },
  small: {
    chest: { intercept: 60.0689, coef: { height: 0.561093 }, residualSd: 86.88 },
    waist: { intercept: 63.1187, coef: { height: -0.132028, chest: 1.054915 }, residualSd: 54.6 },
    hip: { intercept: 625.6814, coef: { height: -0.106288, chest: 0.564463 }, residualSd: 55.37 },
    neckBase: {
      intercept: -78.9925,
      coef: { height: 0.149799, chest: 0.230797 },
      residualSd: 20.28,
    },
    shoulder: { intercept: -0.2777, coef: { height: 0.079039, chest: 0.00966 }, residualSd: 9.78 },
    acrossBack: {
      intercept: -38.7171,
      coef: { height: 0.091809, chest: 0.287211 },
      residualSd: 26.26,
    },
    napeToWaist: {
      intercept: -60.5015,
      coef: { height: 0.220523, chest: 0.139978 },
      residualSd: 21.57,
    },
    napeToHip: {
      intercept: -112.6916,
      coef: { height: 0.374367, chest: 0.090858 },
      residualSd: 28.39,
    },
    scyeDepth: {
      intercept: -59.5953,
      coef: { height: 0.101138, chest: 0.092796 },
      residualSd: 14.03,
    },
    upperArm: {
      intercept: -85.1134,
      coef: { height: 0.059039, chest: 0.317757 },
      residualSd: 21.91,
    },
    wrist: { intercept: -21.9522, coef: { height: 0.076174, chest: 0.059052 }, residualSd: 6.97 },
    hand: { intercept: -17.8323, coef: { height: 0.094754, chest: 0.058008 }, residualSd: 9.17 },
    head: { intercept: 406.9328, coef: { height: 0.062948, chest: 0.05403 }, residualSd: 15.41 },
    armLength: {
      intercept: -67.2896,
      coef: { height: 0.369726, chest: 0.019372 },
      residualSd: 17.53,
    },
    spineToWrist: {
      intercept: -104.4844,
      coef: { height: 0.454743, chest: 0.136542 },
      residualSd: 22.39,
    },
  },
  normal: {
    mean: [
      1714.444, 1022.032, 914.921, 1020.356, 413.712, 145.103, 412.223, 460.635, 161.364, 208.641,
      340.863, 168.997, 203.903, 570.075, 586.384, 814.698,
    ],
    covariance: [
      [8105.632],
      [4548.017, 10098.626],
      [3727.601, 10052.727, 13092.988],
      [1705.658, 5216.903, 7023.065, 5827.797],
      [2263.886, 3012.02, 2810.919, 1141.823, 1445.477],
      [684.596, 457.026, 300.206, 100.005, 213.628, 154.128],
      [2050.409, 3317.985, 3074.231, 1348.118, 1252.103, 261.014, 1830.604],
      [2424.104, 2416.532, 2613.433, 1028.727, 1005.851, 216.112, 959.166, 1338.003],
      [1023.604, 203.639, -349.865, -102.031, 255.248, 105.137, 241.339, 111.734, 772.825],
      [1241.825, 1397.086, 1320.665, 565.832, 595.858, 150.776, 589.649, 573.356, 153.227, 451.892],
      [
        1923.713, 3477.417, 3416.781, 1885.746, 1249.983, 201.356, 1240.836, 919.35, 150.98,
        564.219, 1698.183,
      ],
      [
        886.009, 942.788, 866.469, 385.76, 416.826, 89.198, 384.272, 346.394, 106.133, 198.389,
        412.369, 171.709,
      ],
      [
        1031.857, 1016.738, 865.103, 334.587, 474.583, 107.112, 437.092, 391.396, 136.505, 223.204,
        456.775, 183.31, 240.896,
      ],
      [
        755.967, 831.922, 804.943, 479.554, 355.822, 71.772, 324.824, 264, 67.06, 155.275, 347.531,
        119.521, 137.235, 330.003,
      ],
      [
        3084.971, 1877.153, 1538.862, 695.137, 895.405, 277.207, 816.693, 887.959, 305.582, 477.315,
        799.354, 351.117, 416.217, 311.958, 1483.991,
      ],
      [
        4306.977, 3447.064, 2868.857, 1267.626, 1546.057, 454.523, 1550.811, 1387.34, 490.863,
        800.191, 1442.421, 569.488, 669.478, 493.843, 1918.493, 2930.507,
      ],
    ],
  },
};

/** `pooled` serves bodies whose sex is not given. */
export const PREDICTOR: Readonly<Record<GroupId, Group>> = { female, male, pooled };
