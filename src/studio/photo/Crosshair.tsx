import type { KeyboardEvent } from "react";
import { type Point, plus } from "../../geometry/point.ts";
import { arrowOf, type Steps } from "./arrows.ts";
import { look, useEye } from "./eye.ts";
import { type Fit, toPx } from "./fit.ts";
import { usePhotoSay } from "./photoSay.ts";

/** In px of the screen: closer in, the same keys move it more finely over the picture. */
const STEPS: Steps = { plain: 10, shift: 1, ctrl: 60 };

type Props = {
  readonly fit: Fit;
  /** Where it stands until it is moved. */
  readonly middle: Point;
  readonly onTap: (at: Point) => void;
};

/** A tap without a pointer: arrows move the crosshair, Enter taps where it stands. */
export function Crosshair({ fit, middle, onTap }: Props) {
  const say = usePhotoSay();
  const at = useEye((s) => s.cursor) ?? middle;
  const { x, y } = toPx(fit, at);
  const onKeyDown = (event: KeyboardEvent): void => {
    const by = arrowOf(event, STEPS);
    if (by) look({ cursor: plus(at, { x: by.x / fit.scale, y: by.y / fit.scale }) });
    else if (event.key === "Enter" || event.key === " ") onTap(at);
    else return;
    event.preventDefault();
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing has no button of its own
    <g
      className="crosshair"
      tabIndex={0}
      role="button"
      aria-label={say("photo.crosshair")}
      data-crosshair
      transform={`translate(${x} ${y})`}
      onKeyDown={onKeyDown}
    >
      <path className="crossHalo" d="M-16 0h12M4 0h12M0 -16v12M0 4v12" />
      <path className="crossLine" d="M-16 0h12M4 0h12M0 -16v12M0 4v12" />
    </g>
  );
}
