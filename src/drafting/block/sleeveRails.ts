import type { Mm } from "../../geometry/units.ts";
import type { Rail } from "../rail.ts";
import { asMm } from "../words.ts";

/** Wanted and used, in that order. */
type Held = readonly [Mm, Mm];

const rail = (id: Rail["id"], [wanted, used]: Held, message: string): Rail => ({
  id,
  wanted,
  used,
  unit: "mm",
  stops: false,
  message,
});

/** What was held while the sleeve was drawn (method 2.5): none where wanted and used agree. */
export const sleeveRails = (held: {
  readonly width: Held;
  readonly wrist: Held;
  readonly length: Held;
  readonly neck: Held | null;
}): readonly Rail[] => {
  const { width, wrist, length, neck } = held;
  const rails: Rail[] = [];
  if (width[1] < width[0]) {
    rails.push(
      rail(
        "rail-sleeve-width",
        width,
        `Half the sleeve would be ${asMm(width[0])} wide; the raglan seams leave room for ${asMm(width[1])}. Give the upper arm less ease, or the chest more.`,
      ),
    );
  }
  if (wrist[1] < wrist[0]) {
    rails.push(
      rail(
        "rail-wrist",
        wrist,
        `Half the wrist would be ${asMm(wrist[0])} wide; the sleeve above leaves room for ${asMm(wrist[1])}. Measure wrist and hand again, or give the upper arm more ease.`,
      ),
    );
  }
  if (length[1] > length[0]) {
    rails.push(
      rail(
        "rail-sleeve-length",
        length,
        `The sleeve below the underarm would be ${asMm(length[0])}; the least is ${asMm(length[1])}. Measure shoulder and arm length again.`,
      ),
    );
  }
  if (neck) {
    rails.push({
      ...rail(
        "rail-sleeve-neck",
        neck,
        `The sleeve's neck edge should be ${asMm(neck[0])} and can only be drawn ${asMm(neck[1])}; it will not fit the neckline. Measure neck base, shoulder and upper arm again.`,
      ),
      stops: true,
    });
  }
  return rails;
};
