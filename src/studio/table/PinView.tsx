import { memo } from "react";
import { fieldOf } from "../fields/fields.ts";
import { labelOf } from "../state/changes.ts";
import { printField, printValue, usePrint } from "../state/print.ts";
import { rangeNow } from "../state/refusing.ts";
import { sameValue } from "../state/sameValue.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { type Frame, standing, toPx } from "./frame.ts";
import { PinArt } from "./PinArt.tsx";
import { isUpright } from "./pinShape.ts";
import type { Pin } from "./pins.ts";
import { usePinKeys } from "./usePinKeys.ts";
import { usePulling } from "./usePulling.ts";

type Props = { readonly pin: Pin; readonly frame: Frame };

const sameProps = (before: Props, after: Props): boolean =>
  sameValue(before.pin, after.pin) && sameValue(before.frame, after.frame);

/** A number to be pulled: the pin's shaft points the way it grows. Drawn anew only where it moves. */
export const PinView = memo(function PinView({ pin, frame }: Props) {
  const { field, head } = pin;
  const foot = toPx(frame, pin.at);
  const say = useSay();
  const p = usePrint();
  const value = useStudio((s) => fieldOf(field).read(s.history.present)) ?? 0;
  const lit = useStudio((s) => s.lit === field);
  const { putBack, ...pulling } = usePulling(pin, frame.scale);
  const keys = usePinKeys(field, putBack);
  const least = useStudio((s) => rangeNow(field, s.history.present).least);
  const most = useStudio((s) => rangeNow(field, s.history.present).most);
  const shown = printValue(field, value, p);
  const end = value >= most ? "table.most" : value <= least ? "table.least" : null;
  const text = lit && end ? say(end, { value: shown }) : shown;
  return (
    <g
      className="pin"
      transform={standing(foot.x, foot.y)}
      tabIndex={0}
      role="slider"
      aria-label={labelOf(field)}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={printField(field, value, p)}
      aria-orientation={isUpright(pin.way) ? "vertical" : "horizontal"}
      data-pin={field}
      {...pulling}
      {...keys}
    >
      <PinArt leanX={head.x} leanY={head.y} text={text} />
    </g>
  );
}, sameProps);
