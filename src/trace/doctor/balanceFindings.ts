import { atMost, checkOf, verdictOf, within } from "../../checks/verdict.ts";
import { framed } from "../../drafting/alterations/endSleeve.ts";
import type { Block, SleeveEdges } from "../../drafting/piece.ts";
import { asMm } from "../../drafting/words.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, mapPath, startOf } from "../../geometry/path.ts";
import type { Point } from "../../geometry/point.ts";
import type { Path } from "../../geometry/segment.ts";
import type { Mm } from "../../geometry/units.ts";
import { type Finding, leave } from "./remedy.ts";

/** How far the two underarm points may stand off one level, and off the middle. Ours. */
const LEVEL = { sound: 1, attend: 6 } as const;
const MIDDLE = { sound: 4, attend: 15 } as const;
/** How much longer the back raglan is than the front one, usually. Ours, from the drafted blocks. */
const BACK_LONGER = { from: -2, to: 60, attendFrom: -25, attendTo: 100 } as const;

const moved = (sleeve: SleeveEdges, move: (p: Point) => Point): SleeveEdges => {
  const of = (path: Path): Path => mapPath(path, move);
  return framed({
    neckline: of(sleeve.neckline),
    raglanFront: of(sleeve.raglanFront),
    underarmFront: of(sleeve.underarmFront),
    wrist: of(sleeve.wrist),
    underarmBack: of(sleeve.underarmBack),
    raglanBack: of(sleeve.raglanBack),
  });
};

const underarms = (sleeve: SleeveEdges): readonly [Point, Point] => [
  startOf(sleeve.underarmFront),
  endOf(sleeve.underarmBack),
];

/** The sleeve turned until both underarm points are level. */
const levelled = (sleeve: SleeveEdges): SleeveEdges => {
  const [front, back] = underarms(sleeve);
  const by = -Math.atan2(front.y - back.y, front.x - back.x);
  const [c, s] = [Math.cos(by), Math.sin(by)];
  return moved(sleeve, ({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }));
};

const off = (
  id: string,
  value: Mm,
  limit: typeof LEVEL | typeof MIDDLE,
  measured: string,
): Finding => ({
  ...checkOf(
    {
      id,
      verdict: verdictOf(atMost(value, limit.sound), atMost(value, limit.attend)),
      value,
      limit: limit.sound,
      unit: "mm",
    },
    { measured, change: "Choose what to correct, or leave it." },
  ),
  remedies: [],
});

const levelFinding = ({ sleeve }: Block): Finding => {
  const [front, back] = underarms(sleeve);
  const value = Math.abs(front.y - back.y);
  const found = off(
    "sleeve-level",
    value,
    LEVEL,
    `The sleeve's two underarm points stand ${asMm(value)} off one level; the limit is ${asMm(LEVEL.sound)}.`,
  );
  if (found.verdict === "sound") return found;
  return {
    ...found,
    remedies: [
      leave("Leave the sleeve as it hangs."),
      {
        id: "sleeve",
        words:
          "Turn the whole sleeve until both underarm points are level; no line changes its length.",
        apply: (block) => ({ ...block, sleeve: levelled(block.sleeve) }),
      },
    ],
  };
};

const middleFinding = ({ sleeve }: Block): Finding => {
  const [front, back] = underarms(sleeve);
  const middle = (front.x + back.x) / 2;
  const value = Math.abs(middle);
  const found = off(
    "sleeve-middle",
    value,
    MIDDLE,
    `The sleeve's centre line stands ${asMm(value)} off the middle of its width; the limit is ${asMm(MIDDLE.sound)}.`,
  );
  if (found.verdict === "sound") return found;
  return {
    ...found,
    remedies: [
      leave("Leave the centre line where it is drawn."),
      {
        id: "sleeve",
        words: "Move the centre line to the middle of the sleeve; no line changes its length.",
        apply: (block) => {
          const [a, b] = underarms(block.sleeve);
          const by = (a.x + b.x) / 2;
          return { ...block, sleeve: moved(block.sleeve, ({ x, y }) => ({ x: x - by, y })) };
        },
      },
    ],
  };
};

const balanceFinding = ({ front, back }: Block): Finding => {
  const value = lengthOf(back.raglan) - lengthOf(front.raglan);
  const { from, to, attendFrom, attendTo } = BACK_LONGER;
  return {
    ...checkOf(
      {
        id: "raglan-balance",
        verdict: verdictOf(within(value, from, to), within(value, attendFrom, attendTo)),
        value,
        limit: from,
        unit: "mm",
      },
      {
        measured: `The back raglan is ${asMm(value)} longer than the front one; the range is ${asMm(from)} to ${asMm(to)}.`,
        change: "See whether front and back were taken for each other.",
      },
    ),
    remedies: [],
  };
};

/** Whether the sleeve hangs straight and its two sides belong to front and back. */
export const balanceFindings = (block: Block): readonly Finding[] => [
  levelFinding(block),
  middleFinding(block),
  balanceFinding(block),
];
