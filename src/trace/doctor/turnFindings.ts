import { LIMITS } from "../../checks/data/limits.ts";
import { atMost, checkOf, verdictOf } from "../../checks/verdict.ts";
import { cornerOf, drawNeckEdge } from "../../drafting/block/neckEdge.ts";
import type { Block, BodyEdges } from "../../drafting/piece.ts";
import { asDegrees } from "../../drafting/words.ts";
import { endOf, endTangent, startOf, startTangent } from "../../geometry/path.ts";
import { turn } from "../../geometry/point.ts";
import { type Degrees, degrees, type Radians } from "../../geometry/units.ts";
import { type Finding, leave, type Remedy } from "./remedy.ts";
import { endTurned, startTurned } from "./reshape.ts";

type Turn = {
  readonly id: string;
  readonly over: string;
  readonly value: Degrees;
  readonly limit: { readonly sound: Degrees; readonly attend: Degrees };
  readonly remedies: readonly Remedy[];
};

const turnFinding = ({ id, over, value, limit, remedies }: Turn): Finding => {
  const verdict = verdictOf(atMost(value, limit.sound), atMost(value, limit.attend));
  const check = checkOf(
    { id, verdict, value, limit: limit.sound, unit: "deg" },
    {
      measured: `${over} ${asDegrees(value)} off straight; the limit is ${asDegrees(limit.sound)}.`,
      change: "Choose what to correct, or leave it as it is drawn.",
    },
  );
  return { ...check, remedies: verdict === "sound" ? [] : remedies };
};

/** How far two corners sewn together turn off straight; above nought the seam line peaks. */
const over = (one: Radians, other: Radians): Radians => one + other - Math.PI;

const necklineTurn = ({ front, back, sleeve }: Block): Finding => {
  const frontTurn = over(
    cornerOf(front.neckline, front.raglan),
    cornerOf(sleeve.neckline, sleeve.raglanFront),
  );
  const backTurn = over(
    cornerOf(back.neckline, back.raglan),
    cornerOf(sleeve.raglanBack, sleeve.neckline),
  );
  const redrawn: Remedy = {
    id: "sleeve",
    words:
      "Draw the sleeve's neck edge anew between its corners, so that the neckline runs straight on over both raglan seams.",
    apply: (block) => ({ ...block, sleeve: { ...block.sleeve, neckline: [neckEdgeOf(block)] } }),
  };
  return turnFinding({
    id: "neckline-turn",
    over: "Over a raglan seam the neckline runs on",
    value: degrees(Math.max(Math.abs(frontTurn), Math.abs(backTurn))),
    limit: LIMITS.turn,
    remedies: [leave("Leave the neckline; the band bridges a small turn."), redrawn],
  });
};

const neckEdgeOf = ({ front, back, sleeve }: Block) =>
  drawNeckEdge({
    back: endOf(sleeve.raglanBack),
    front: startOf(sleeve.raglanFront),
    backRaglan: endTangent(sleeve.raglanBack),
    frontRaglan: startTangent(sleeve.raglanFront),
    backCorner: cornerOf(back.neckline, back.raglan),
    frontCorner: cornerOf(front.neckline, front.raglan),
  });

const bodyTurn = ({ front, back }: Block): Radians =>
  over(cornerOf(front.raglan, front.side), cornerOf(back.raglan, back.side));

const sleeveTurn = ({ sleeve }: Block): Radians =>
  over(
    cornerOf(sleeve.raglanFront, sleeve.underarmFront),
    cornerOf(sleeve.underarmBack, sleeve.raglanBack),
  );

/** Both raglans of the body turned at the underarm until the line runs straight over the side. */
const bodyStraight = (block: Block): Block => {
  const by = bodyTurn(block) / 2;
  const turned = (body: BodyEdges): BodyEdges => ({ ...body, raglan: endTurned(body.raglan, by) });
  return { ...block, front: turned(block.front), back: turned(block.back) };
};

/** The same on the sleeve. */
const sleeveStraight = (block: Block): Block => {
  const by = sleeveTurn(block) / 2;
  const { sleeve } = block;
  return {
    ...block,
    sleeve: {
      ...sleeve,
      raglanFront: endTurned(sleeve.raglanFront, by),
      raglanBack: startTurned(sleeve.raglanBack, -by),
    },
  };
};

const underarmTurns = (block: Block): readonly Finding[] => [
  turnFinding({
    id: "underarm-turn-body",
    over: "Over the side seam the body's raglan line runs on",
    value: degrees(Math.abs(bodyTurn(block))),
    limit: LIMITS.turn,
    remedies: [
      leave("Leave it: the raglan line keeps its turn under the arm."),
      {
        id: "body",
        words:
          "Turn the ends of both raglans at the underarm, so that the line runs straight over the side; lengths change a little.",
        apply: bodyStraight,
      },
    ],
  }),
  turnFinding({
    id: "underarm-turn-sleeve",
    over: "Over the underarm seam the sleeve's raglan line runs on",
    value: degrees(Math.abs(sleeveTurn(block))),
    limit: LIMITS.turn,
    remedies: [
      leave("Leave it: the raglan line keeps its turn under the arm."),
      {
        id: "sleeve",
        words:
          "Turn the ends of both raglans at the underarm, so that the line runs straight over the seam; lengths change a little.",
        apply: sleeveStraight,
      },
    ],
  }),
];

const LEVEL = { x: 1, y: 0 };
const BACK_LEVEL = { x: -1, y: 0 };
/** How far off a right angle an edge may meet the fold. Ours: 2° show as a peak of 1 mm in 30. */
const AT_FOLD = { sound: 2, attend: 5 } as const;

/** Neckline and hem of a half at its fold, where they must be square to it. */
const foldTurns = (block: Block, half: "front" | "back"): readonly Finding[] => {
  const body = block[half];
  const neckline = turn(LEVEL, startTangent(body.neckline));
  const hem = turn(BACK_LEVEL, endTangent(body.hem));
  const change =
    (edge: "neckline" | "hem") =>
    (whole: Block): Block => {
      const now = whole[half];
      const path =
        edge === "neckline"
          ? startTurned(now.neckline, -turn(LEVEL, startTangent(now.neckline)))
          : endTurned(now.hem, -turn(BACK_LEVEL, endTangent(now.hem)));
      return { ...whole, [half]: { ...now, [edge]: path } };
    };
  const finding = (edge: "neckline" | "hem", value: Radians): Finding =>
    turnFinding({
      id: `${half}-${edge}-square`,
      over: `At the fold the ${half}'s ${edge} is`,
      value: degrees(Math.abs(value)),
      limit: AT_FOLD,
      remedies: [
        leave("Leave it: unfolded, the edge has a small peak or dip there."),
        {
          id: "body",
          words: `Turn the ${half}'s ${edge} at the fold until it is square to it.`,
          apply: change(edge),
        },
      ],
    });
  return [finding("neckline", neckline), finding("hem", hem)];
};

/** How the block's edges run on over its seams and at its folds, in degrees off straight. */
export const turnFindings = (block: Block): readonly Finding[] => [
  necklineTurn(block),
  ...underarmTurns(block),
  ...foldTurns(block, "front"),
  ...foldTurns(block, "back"),
];
