import { type ReactNode, useRef } from "react";
import type { Box } from "../../geometry/outline.ts";
import { usePrint } from "../state/print.ts";
import { Ground } from "../table/Ground.tsx";
import { ScaleBar } from "../table/ScaleBar.tsx";
import { useSize } from "../table/useSize.ts";
import type { Size } from "../table/view.ts";
import { useOwnSay } from "./ownSay.ts";

/** How millimetres become px on the table: px = at + mm × scale. */
export type Fit = { readonly scale: number; readonly x: number; readonly y: number };

const MARGIN = 44;
const FOOT = 40;
const MOST_SCALE = 3;

const fitted = (box: Box, { width, height }: Size): Fit => {
  const [wide, tall] = [Math.max(1, box.right - box.left), Math.max(1, box.bottom - box.top)];
  const room = {
    x: Math.max(40, width - 2 * MARGIN),
    y: Math.max(40, height - MARGIN - FOOT - 24),
  };
  const scale = Math.min(MOST_SCALE, room.x / wide, room.y / tall);
  return {
    scale,
    x: (width - wide * scale) / 2 - box.left * scale,
    y: MARGIN + Math.max(0, room.y - tall * scale) / 2 - box.top * scale,
  };
};

type Props = {
  /** What is drawn, in mm; null: nothing yet, and the words stand there. */
  readonly box: Box | null;
  readonly children: (fit: Fit) => ReactNode;
  readonly empty: string;
};

/** The drawing table of the door: bare paper, a strip of tape, and what is drawn fitted to it. */
export function OwnTable({ box, children, empty }: Props) {
  const say = useOwnSay();
  const { unit } = usePrint();
  const place = useRef<HTMLElement>(null);
  const size = useSize(place);
  const fit = box && size.width > 0 ? fitted(box, size) : null;
  const scale = fit?.scale ?? 0.65;
  return (
    <section ref={place} className="table" aria-label={say("own.table")} data-region>
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset does not go round a drawing */}
      <svg className="draw" role="group" aria-label={say("own.table")}>
        <Ground scale={scale} view={null} unit={unit} />
        {fit && children(fit)}
        {size.height > 300 ? (
          <ScaleBar x={26} y={size.height - 34} scale={scale} unit={unit} />
        ) : null}
      </svg>
      {fit ? null : (
        <div className="emptyTable">
          <p>{empty}</p>
        </div>
      )}
    </section>
  );
}
