import type { Mm } from "../../geometry/units.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";

const rail = (id: Rail["id"], wanted: Mm, used: Mm, message: string): Rail => ({
  id,
  wanted,
  used,
  unit: "mm",
  stops: false,
  message,
});

export const widthRail = (wanted: Mm, used: Mm): Rail =>
  rail(
    "rail-v-width",
    wanted,
    used,
    `The V cannot be ${asMm(wanted)} to each side; this neckline leaves room for ${asMm(used)}. Make it narrower.`,
  );

export const depthRail = (wanted: Mm, used: Mm): Rail =>
  rail(
    "rail-v-depth",
    wanted,
    used,
    `The V cannot be ${asMm(wanted)} deep on this front; it is drawn ${asMm(used)} deep. ${
      wanted > used
        ? "Make it shallower."
        : "Make it deeper or narrower, or it would cross the neckline."
    }`,
  );

export const allowanceRail = (wanted: Mm, used: Mm): Rail =>
  rail(
    "rail-v-allowance",
    wanted,
    used,
    `The V has no room for an allowance of ${asMm(wanted)}; it takes ${asMm(used)}. Make the allowance smaller or the V wider.`,
  );

/** Least and most depth cross: the V reaches the hem. */
export const tooDeepRail = (depth: Mm, most: Mm): Rail => ({
  ...rail(
    "rail-v-cut",
    depth,
    most,
    `The V needs a depth of ${asMm(depth)} and this front has room for ${asMm(most)}; it cannot be sewn as drawn. Make the V smaller, or the front longer.`,
  ),
  stops: true,
});

/** The line sewn beside a V that was cut away does not meet the neckline. */
export const cutRail = (allowance: Mm): Rail => ({
  ...rail(
    "rail-v-cut",
    allowance,
    0,
    `The V cut away, sewn ${asMm(allowance)} inside its edge, no longer meets the neckline; the limit is ${asMm(0)}. Make the V smaller, or use the method “true”.`,
  ),
  stops: true,
});
