import { drawRaglan } from "../../drafting/block/raglanLine.ts";
import { drawSleeve } from "../../drafting/block/sleeve.ts";
import { BLOCK } from "../../drafting/data/blockConstants.ts";
import type { Measures } from "../../drafting/measures.ts";
import type { Block, BodyEdges } from "../../drafting/piece.ts";
import { asMm } from "../../drafting/words.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, startTangent } from "../../geometry/path.ts";
import { along, type Point, point, stepped } from "../../geometry/point.ts";
import { cubic, line, type Path } from "../../geometry/segment.ts";
import { solve } from "../../geometry/solve.ts";
import { splitAt } from "../../geometry/split.ts";
import { type Mm, radians } from "../../geometry/units.ts";
import { faulty, found, type Told } from "../told.ts";
import { raglanByOffsets } from "./raglanByOffsets.ts";
import {
  type RaglanOffsets,
  TAPE_LENGTHS,
  TAPE_RANGES,
  TAPE_WORDS,
  type TapeMeasures,
} from "./tapeMeasures.ts";

/** A block by tape, and what had to be assumed, one sentence each. */
export type TapeBlock = { readonly block: Block; readonly assumed: readonly string[] };

/** Offsets that no smooth raglan meets to this were read off wrongly. Ours. */
const MOST_MISS: Mm = 4;
/** And a miss of this is told. */
const TOLD_MISS: Mm = 1;

const outOfRange = (tape: TapeMeasures): Told<never> | null => {
  for (const key of TAPE_LENGTHS) {
    const [least, most] = TAPE_RANGES[key];
    const value = tape[key];
    if (value >= least && value <= most) continue;
    return faulty(
      key,
      asMm(value),
      `The ${TAPE_WORDS[key]} is ${asMm(value)}; it must be from ${asMm(least)} to ${asMm(most)}.`,
      "Measure it again, and check its unit.",
    );
  }
  return null;
};

/** Lengths that no block can have together. */
const impossible = (tape: TapeMeasures): Told<never> | null => {
  const lean = Math.abs(tape.hemHalfWidth - tape.halfWidth);
  if (lean >= 0.7 * tape.sideLength) {
    return faulty(
      "hemHalfWidth",
      asMm(tape.hemHalfWidth),
      `The hem is ${asMm(lean)} off the width at the underarm over a side of ${asMm(tape.sideLength)}: the side would lie nearly flat.`,
      "Measure the half width of the hem and the side again.",
    );
  }
  if (tape.neckHalfWidth >= BLOCK.neckWidthMost * tape.halfWidth) {
    return faulty(
      "neckHalfWidth",
      asMm(tape.neckHalfWidth),
      `The half width of the neck is ${asMm(tape.neckHalfWidth)}; for a half width of ${asMm(tape.halfWidth)} it must be below ${asMm(BLOCK.neckWidthMost * tape.halfWidth)}.`,
      "Measure half of the neck, not the whole.",
    );
  }
  return null;
};

/** A neckline from the fold to the neck point, cut at its raglan corner (method 2.2, 5 and 6). */
const necklineOf = (
  depth: Mm,
  neckPoint: Point,
  handles: readonly [number, number],
  beyond: Mm,
): Path => {
  const slope = radians(BLOCK.slope);
  const down = point(-Math.sin(slope), Math.cos(slope));
  const whole: Path = [
    cubic(
      point(0, depth),
      point(handles[0] * neckPoint.x, depth),
      stepped(neckPoint, down, handles[1] * (depth - neckPoint.y)),
      neckPoint,
    ),
  ];
  return splitAt(whole, Math.max(0, lengthOf(whole) - beyond))[0];
};

/** The side from the underarm, its chord first, square to the hem, of a given length. */
const sideOf = (underarm: Point, half: Mm, length: Mm): Path => {
  const drawn = (height: Mm): Path => {
    const hem = point(half, underarm.y + height);
    return [cubic(underarm, along(underarm, hem, 1 / 3), point(hem.x, hem.y - height / 3), hem)];
  };
  const height = solve({ of: (h) => lengthOf(drawn(h)) - length, low: 1, high: length });
  return drawn(height ?? length);
};

type Raglan = { readonly path: Path; readonly miss: Mm };

const raglanOf = (
  corner: Point,
  underarm: Point,
  side: Path,
  offsets: RaglanOffsets | null,
): Raglan => {
  const t = startTangent(side);
  const reach = point(t.y, -t.x);
  if (!offsets) return { path: [drawRaglan(corner, underarm, reach, BLOCK.bodyRaglan)], miss: 0 };
  const { cubic: curve, miss } = raglanByOffsets(corner, underarm, reach, offsets);
  return { path: [curve], miss };
};

const bodyOf = (neckline: Path, raglan: Path, side: Path): BodyEdges => {
  const hem = endOf(side);
  const [start] = neckline;
  return {
    neckline,
    raglan,
    side,
    hem: [line(hem, point(0, hem.y))],
    centre: [line(point(0, hem.y), start.start)],
  };
};

/** A body that has nothing but what the sleeve is worked from. */
const sleeveBody = (tape: TapeMeasures, neckBase: Mm, long: Mm): Measures => ({
  height: 0,
  chest: 0,
  waist: 0,
  hip: 0,
  acrossBack: 0,
  napeToWaist: 0,
  napeToHip: 0,
  scyeDepth: 0,
  head: 0,
  spineToWrist: 0,
  shoulder: 0,
  hand: 0,
  neckBase,
  upperArm: tape.sleeveWidth,
  wrist: tape.wristWidth - BLOCK.wristOut,
  armLength: long,
});

const SHORTEST_SLEEVE: Mm = 150;
const LONGEST_SLEEVE: Mm = 1500;

/** The sleeve whose underarm has the length measured: its whole length is solved for. */
const sleeveOf = (tape: TapeMeasures, neckBase: Mm, front: BodyEdges, back: BodyEdges) => {
  const drawn = (long: Mm) =>
    drawSleeve({ body: sleeveBody(tape, neckBase, long), ease: 0, widened: 0 }, front, back);
  const long = solve({
    of: (l) => lengthOf(drawn(l).sleeve.underarmFront) - tape.underarmLength,
    low: SHORTEST_SLEEVE,
    high: LONGEST_SLEEVE,
  });
  return drawn(long ?? LONGEST_SLEEVE);
};

const missFault = (half: "front" | "back", miss: Mm): Told<never> =>
  faulty(
    `${half}Offsets`,
    asMm(miss),
    `The three offsets of the ${half} raglan lie on no smooth line: the nearest one misses them by ${asMm(miss)}, and ${asMm(MOST_MISS)} is the most.`,
    "Measure them again at a quarter, half and three quarters of the straight way from neck to underarm.",
  );

const sentences = (
  tape: TapeMeasures,
  front: Raglan,
  back: Raglan,
  neckBase: Mm,
): readonly string[] => [
  `Where the raglans meet the neckline was not measured: they stand ${asMm(BLOCK.cornerFront * neckBase)} (front) and ${asMm(BLOCK.cornerBack * neckBase)} (back) along it from the neck point, as a drafted block has them for this neck.`,
  `The nape was taken to lie ${asMm(BLOCK.backDrop)} above the back's neckline at the centre.`,
  "Front and back have the same width, side and hem, and the hem is straight.",
  "The sleeve's cap was solved so that its raglans are as long as the body's and its top as long as the neckline it replaces.",
  ...(tape.frontOffsets && tape.backOffsets
    ? []
    : ["A raglan without offsets was drawn as a drafted one."]),
  ...[front, back].flatMap(({ miss }, i) =>
    miss > TOLD_MISS
      ? [
          `The ${i === 0 ? "front" : "back"} raglan misses one of its offsets by ${asMm(miss)}: a smooth line was drawn nearest to all three.`,
        ]
      : [],
  ),
];

type Necks = { readonly front: Path; readonly back: Path };

/** Both necklines up to their raglan corners. */
const necksOf = (tape: TapeMeasures, neckBase: Mm): Necks => {
  const neckPoint = point(tape.neckHalfWidth, BLOCK.backDrop - tape.backNeckDepth);
  const depth = neckPoint.y + tape.frontNeckDepth;
  const { nf1, nf2, nb1, nb2, cornerFront, cornerBack } = BLOCK;
  return {
    front: necklineOf(depth, neckPoint, [nf1, nf2], cornerFront * neckBase),
    back: necklineOf(BLOCK.backDrop, neckPoint, [nb1, nb2], cornerBack * neckBase),
  };
};

/** The front raglan must fall by some part of its way across (method 2.3, 7). */
const tooLevel = ({ raglanDepth }: TapeMeasures, corner: Point, underarm: Point) =>
  corner.y + BLOCK.scyeLeast * (underarm.x - corner.x) <= underarm.y
    ? null
    : faulty(
        "raglanDepth",
        asMm(raglanDepth),
        `The underarm lies ${asMm(raglanDepth)} below the nape and the front raglan begins at ${asMm(corner.y)}: the raglan would run nearly level.`,
        "Measure the depth from the nape to the underarm, and the front neck depth, again.",
      );

/**
 * A block from the lengths that a tape gives (mm), solved so that its seams meet; what had to be
 * assumed is told. Refused where a length is out of range or the lengths cannot stand together.
 */
export const blockByTape = (tape: TapeMeasures): Told<TapeBlock> => {
  const wrong = outOfRange(tape) ?? impossible(tape);
  if (wrong) return wrong;
  const neckBase = BLOCK.neckDiv * Math.max(20, tape.neckHalfWidth - BLOCK.neckOut);
  const necks = necksOf(tape, neckBase);
  const underarm = point(tape.halfWidth, tape.raglanDepth);
  const level = tooLevel(tape, endOf(necks.front), underarm);
  if (level) return level;
  const side = sideOf(underarm, tape.hemHalfWidth, tape.sideLength);
  const front = raglanOf(endOf(necks.front), underarm, side, tape.frontOffsets);
  const back = raglanOf(endOf(necks.back), underarm, side, tape.backOffsets);
  if (front.miss > MOST_MISS) return missFault("front", front.miss);
  if (back.miss > MOST_MISS) return missFault("back", back.miss);
  const bodies = {
    front: bodyOf(necks.front, front.path, side),
    back: bodyOf(necks.back, back.path, side),
  };
  const { sleeve, rails } = sleeveOf(tape, neckBase, bodies.front, bodies.back);
  const [held] = rails;
  if (held) {
    const cure = "Measure the sleeve's widths and length again.";
    return faulty("sleeve", asMm(tape.sleeveWidth), held.message, cure);
  }
  return found({ block: { ...bodies, sleeve }, assumed: sentences(tape, front, back, neckBase) });
};
