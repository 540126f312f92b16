import type { Check } from "../checks/check.ts";
import type { Mm } from "../geometry/units.ts";
import { boxRun, joinArt, ruled } from "./pageArt.ts";
import { heading, heightOf, hung, type Part, paragraph, space, stacked } from "./stack.ts";

const STOP_SIZE: Mm = 3.3;
const STOP_SMALL: Mm = 2.6;
const ATTEND_SIZE: Mm = 2.9;
const ATTEND_SMALL: Mm = 2.5;
const PAD: Mm = 3;
const FRAME: Mm = 0.8;

const withVerdict = (checks: readonly Check[], verdict: Check["verdict"]): readonly string[] =>
  checks.filter((check) => check.verdict === verdict).map(({ message }) => message);

/** A thick frame round a part. */
const framed =
  (part: Part, width: Mm): Part =>
  (left, top) => {
    const inner = part(left + PAD, top + PAD - 1);
    const bottom = inner.bottom + PAD - 1;
    const box = { left, top, right: left + width, bottom };
    const inset = FRAME / 2;
    const frame = boxRun({
      left: box.left + inset,
      top: box.top + inset,
      right: box.right - inset,
      bottom: box.bottom - inset,
    });
    return {
      art: joinArt({ shapes: [ruled([frame], FRAME)], words: [] }, inner.art),
      bottom,
    };
  };

const stopPart = (messages: readonly string[], size: Mm, width: Mm): Part =>
  framed(
    stacked(
      heading("Stop: this cannot be sewn or worn as it is drawn.", size * 1.3),
      ...messages.map((text) => hung("–", text, size, width - 2 * PAD)),
    ),
    width,
  );

/** Every reason why the pattern cannot be sewn as drawn, in a frame; smaller where they are many. */
export const stopList = (checks: readonly Check[], width: Mm, room: Mm): Part | null => {
  const messages = withVerdict(checks, "stop");
  if (messages.length === 0) return null;
  const large = stopPart(messages, STOP_SIZE, width);
  return heightOf(large) <= room ? large : stopPart(messages, STOP_SMALL, width);
};

const attendPart = (messages: readonly string[], left: number, size: Mm, width: Mm): Part =>
  stacked(
    heading("Look at these before you cut", 3.6),
    ...messages.map((text) => hung("–", text, size, width)),
    ...(left > 0 ? [paragraph(`And ${left} more: the report has them all.`, size, width)] : []),
    space(1),
  );

/** What asks for a look: smaller where it is much, and as many as there is room for. */
export const attendList = (checks: readonly Check[], width: Mm, room: Mm): Part | null => {
  const messages = withVerdict(checks, "attend");
  const large = attendPart(messages, 0, ATTEND_SIZE, width);
  if (messages.length > 0 && heightOf(large) <= room) return large;
  for (let shown = messages.length; shown > 0; shown--) {
    const left = messages.length - shown;
    const part = attendPart(messages.slice(0, shown), left, ATTEND_SMALL, width);
    if (heightOf(part) <= room) return part;
  }
  return null;
};
