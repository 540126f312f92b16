import type { Block, SleeveEdges } from "../../drafting/piece.ts";
import { asMm } from "../../drafting/words.ts";
import { lengthOf } from "../../geometry/length.ts";
import { endOf, reversed, startOf } from "../../geometry/path.ts";
import { take } from "../../geometry/split.ts";
import type { Mm } from "../../geometry/units.ts";
import { leave, type Remedy } from "./remedy.ts";
import { toLength, withEnds, withRaglan, withSide } from "./reshape.ts";

type Half = "front" | "back";

/** The sleeve's raglan on one side made as long as the body's: its neck corner goes up or down. */
const sleeveRaglan = (block: Block, half: Half): SleeveEdges => {
  const { sleeve } = block;
  const wanted = lengthOf(block[half].raglan);
  if (half === "front") {
    const raglanFront = toLength(sleeve.raglanFront, endOf(sleeve.raglanFront).y, wanted);
    if (!raglanFront) return sleeve;
    const neckline = withEnds(sleeve.neckline, startOf(sleeve.neckline), startOf(raglanFront));
    return { ...sleeve, raglanFront, neckline };
  }
  const raglanBack = toLength(sleeve.raglanBack, startOf(sleeve.raglanBack).y, wanted);
  if (!raglanBack) return sleeve;
  const neckline = withEnds(sleeve.neckline, endOf(raglanBack), endOf(sleeve.neckline));
  return { ...sleeve, raglanBack, neckline };
};

const bodyRaglan = (block: Block, half: Half): Block => {
  const body = block[half];
  const { raglanFront, raglanBack } = block.sleeve;
  const wanted = lengthOf(half === "front" ? raglanFront : raglanBack);
  const raglan = toLength(body.raglan, startOf(body.raglan).y, wanted);
  return raglan ? { ...block, [half]: withRaglan(body, raglan) } : block;
};

/** What can be done where a body's raglan and the sleeve's differ by `difference` (body less sleeve). */
export const raglanRemedies = (half: Half, difference: number): readonly Remedy[] => [
  leave(`Leave both and ease ${asMm(Math.abs(difference))} in while sewing.`),
  {
    id: "sleeve",
    words: `Make the sleeve's ${half} cap ${difference > 0 ? "higher" : "lower"}, so that its raglan is as long as the body's; its underarm stays.`,
    apply: (block) => ({ ...block, sleeve: sleeveRaglan(block, half) }),
  },
  {
    id: "body",
    words: `${difference > 0 ? "Raise" : "Lower"} the ${half}'s underarm, so that its raglan is as long as the sleeve's; the side keeps its length and the hem goes with it.`,
    apply: (block) => bodyRaglan(block, half),
  },
];

/** What can be done where the side seams differ (front less back). */
export const sideRemedies = (difference: number): readonly Remedy[] => [
  leave(`Leave both and ease ${asMm(Math.abs(difference))} in while sewing.`),
  {
    id: "body",
    words:
      "Give both sides the mean of the two lengths at the hem; the hem goes with them and stays square at the fold.",
    apply: (block) => {
      const mean = (lengthOf(block.front.side) + lengthOf(block.back.side)) / 2;
      return { ...block, front: withSide(block.front, mean), back: withSide(block.back, mean) };
    },
  },
  {
    id: "front",
    words: "Make the front's side as long as the back's at the hem; the back stays.",
    apply: (block) => ({ ...block, front: withSide(block.front, lengthOf(block.back.side)) }),
  },
  {
    id: "back",
    words: "Make the back's side as long as the front's at the hem; the front stays.",
    apply: (block) => ({ ...block, back: withSide(block.back, lengthOf(block.front.side)) }),
  },
];

/** The sleeve with both underarms as long as asked, cut or run on at the wrist. */
const withUnderarms = (sleeve: SleeveEdges, length: Mm): SleeveEdges => {
  const underarmFront = take(sleeve.underarmFront, length);
  const underarmBack = reversed(take(reversed(sleeve.underarmBack), length));
  const wrist = withEnds(sleeve.wrist, endOf(underarmFront), startOf(underarmBack));
  return { ...sleeve, underarmFront, underarmBack, wrist };
};

/** What can be done where the sleeve's two underarms differ (front less back). */
export const underarmRemedies = (difference: number): readonly Remedy[] => [
  leave(`Leave both and ease ${asMm(Math.abs(difference))} in while sewing.`),
  {
    id: "sleeve",
    words:
      "Give both underarms the mean of the two lengths at the wrist; the wrist goes with them.",
    apply: ({ sleeve, ...body }) => {
      const mean = (lengthOf(sleeve.underarmFront) + lengthOf(sleeve.underarmBack)) / 2;
      return { ...body, sleeve: withUnderarms(sleeve, mean) };
    },
  },
  {
    id: "front",
    words: "Make the front underarm as long as the back one at the wrist; the back one stays.",
    apply: ({ sleeve, ...body }) => ({
      ...body,
      sleeve: withUnderarms(sleeve, lengthOf(sleeve.underarmBack)),
    }),
  },
  {
    id: "back",
    words: "Make the back underarm as long as the front one at the wrist; the front one stays.",
    apply: ({ sleeve, ...body }) => ({
      ...body,
      sleeve: withUnderarms(sleeve, lengthOf(sleeve.underarmFront)),
    }),
  },
];
