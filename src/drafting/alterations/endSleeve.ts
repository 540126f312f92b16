import { crossingsOf } from "../../geometry/crossings.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, mapPath, reversed, startOf, straight } from "../../geometry/path.ts";
import type { Path } from "../../geometry/segment.ts";
import { take } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { ALTERATION } from "../data/alterationLimits.ts";
import type { SleeveEdges } from "../piece.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";
import type { Altered } from "./altered.ts";

/** How far above the wrist the sleeve ends, and whether its underarms were moved with the sides. */
export type SleeveChange = { readonly aboveWrist: Mm; readonly sidesMoved: boolean };

/** How long an underarm line is when it ends `above` mm higher; the whole where that is nothing. */
const lengthTo = (underarm: Path, above: Mm): Mm => {
  if (above === 0) return lengthOf(underarm);
  const crossings = crossingsOf(underarm, "y", endOf(underarm).y - above);
  return crossings[crossings.length - 1] ?? lengthOf(underarm);
};

/** Both underarms as they run down from the underarm points to the block's wrist. */
const underarmsOf = (sleeve: SleeveEdges, moved: boolean): readonly [Path, Path] => {
  if (!moved) return [sleeve.underarmFront, reversed(sleeve.underarmBack)];
  return [
    straight(endOf(sleeve.raglanFront), endOf(sleeve.underarmFront)),
    straight(startOf(sleeve.raglanBack), startOf(sleeve.underarmBack)),
  ];
};

/**
 * The sleeve ended above the wrist, both underarms cut to one length (method 3.4). Where neither
 * the sides were moved nor the sleeve is shortened nothing changes. Lengths in mm.
 */
export const endSleeve = (sleeve: SleeveEdges, change: SleeveChange): Altered<SleeveEdges> => {
  const { aboveWrist, sidesMoved } = change;
  const [front, back] = underarmsOf(sleeve, sidesMoved);
  const room = Math.min(endOf(front).y - startOf(front).y, endOf(back).y - startOf(back).y);
  const above = Math.min(aboveWrist, Math.max(0, room - ALTERATION.sleeveLeft));
  const rails = above < aboveWrist ? [endRail(aboveWrist, above)] : [];
  if (!sidesMoved && above === 0) return { altered: sleeve, rails };
  const length = (lengthTo(front, above) + lengthTo(back, above)) / 2;
  const underarmFront = take(front, length);
  const underarmBack = take(back, length);
  return {
    altered: {
      ...sleeve,
      underarmFront,
      wrist: straight(endOf(underarmFront), endOf(underarmBack)),
      underarmBack: reversed(underarmBack),
    },
    rails,
  };
};

const endRail = (wanted: Mm, used: Mm): Rail => ({
  id: "rail-end-sleeve",
  wanted,
  used,
  unit: "mm",
  stops: false,
  message: `The sleeve cannot end ${asMm(wanted)} above the wrist; its underarm leaves room for ${asMm(used)}. End it lower.`,
});

/** The sleeve moved so that its front underarm point lies on y = 0 (contract, "Frames"). */
export const framed = (sleeve: SleeveEdges): SleeveEdges => {
  const down = startOf(sleeve.underarmFront).y;
  if (down === 0) return sleeve;
  const moved = (path: Path): Path => mapPath(path, ({ x, y }) => ({ x, y: y - down }));
  return {
    neckline: moved(sleeve.neckline),
    raglanFront: moved(sleeve.raglanFront),
    underarmFront: moved(sleeve.underarmFront),
    wrist: moved(sleeve.wrist),
    underarmBack: moved(sleeve.underarmBack),
    raglanBack: moved(sleeve.raglanBack),
  };
};
