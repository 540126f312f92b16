import { fieldOf } from "../fields/fields.ts";
import { labelOf } from "../state/changes.ts";
import { printField, printValue, usePrint } from "../state/print.ts";
import { rangeNow } from "../state/refusing.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import type { Frame } from "./frame.ts";
import { PinArt } from "./PinArt.tsx";
import { isUpright, pinPlace } from "./pinPlace.ts";
import type { Pin } from "./pins.ts";
import { usePinKeys } from "./usePinKeys.ts";
import { usePulling } from "./usePulling.ts";

type Props = { readonly pin: Pin; readonly frame: Frame };

/** A number to be pulled: the pin's shaft points the way it grows. */
export function PinView({ pin, frame }: Props) {
  const { field } = pin;
  const say = useSay();
  const p = usePrint();
  const value = useStudio((s) => fieldOf(field).read(s.history.present)) ?? 0;
  const lit = useStudio((s) => s.lit === field);
  const { putBack, ...pulling } = usePulling(pin, frame.scale);
  const keys = usePinKeys(field, putBack);
  const { least, most } = rangeNow(field, work());
  const shown = printValue(field, value, p);
  const end = value >= most ? "table.most" : value <= least ? "table.least" : null;
  const text = lit && end ? say(end, { value: shown }) : shown;
  return (
    <g
      className="pin"
      tabIndex={0}
      role="slider"
      aria-label={labelOf(field)}
      aria-valuemin={least}
      aria-valuemax={most}
      aria-valuenow={value}
      aria-valuetext={printField(field, value, p)}
      aria-orientation={isUpright(pin) ? "vertical" : "horizontal"}
      data-pin={field}
      {...pulling}
      {...keys}
    >
      <PinArt place={pinPlace(pin, frame, text)} text={text} />
    </g>
  );
}
