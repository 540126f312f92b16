import { type KeyboardEvent, type ReactNode, useEffect, useRef } from "react";
import type { Box } from "../../geometry/outline.ts";
import type { Point } from "../../geometry/point.ts";
import { put, useStudio } from "../state/store.ts";
import { fitTable, zoomTable } from "../state/viewing.ts";
import { useSize } from "../table/useSize.ts";
import { CLOSER, type Size } from "../table/view.ts";
import { useSay } from "../words/say.ts";
import { Crosshair } from "./Crosshair.tsx";
import { type Fit, fitOf, fromPx } from "./fit.ts";
import { usePhotoSay } from "./photoSay.ts";
import { usePointer } from "./usePointer.ts";

type Props = {
  readonly label: string;
  readonly bitmap: ImageBitmap;
  /** Where the bitmap lies in the board's own units: the picture's pixels, or mm on the table. */
  readonly box: Box;
  readonly isFaint: boolean;
  readonly hint: string;
  readonly onTap: (at: Point, reach: number) => void;
  readonly onPull?: (from: Point, to: Point) => void;
  readonly children: (fit: Fit) => ReactNode;
  /** What lies over the board, beside the drawing. */
  readonly aside?: ReactNode;
};

/** What is drawn over a picture at half its strength stands out in every ground. */
const FAINT = 0.5;
/** A finger hits within so many px. */
const REACH = 12;

const paint = (
  canvas: HTMLCanvasElement,
  { bitmap, box, isFaint }: Pick<Props, "bitmap" | "box" | "isFaint">,
  { width, height }: Size,
  fit: Fit,
): void => {
  const dots = Math.min(2, devicePixelRatio || 1);
  const [wide, high] = [Math.round(width * dots), Math.round(height * dots)];
  if (canvas.width !== wide || canvas.height !== high) {
    canvas.width = wide;
    canvas.height = high;
  }
  const context = canvas.getContext("2d");
  if (!context) return;
  context.setTransform(dots, 0, 0, dots, 0, 0);
  context.clearRect(0, 0, width, height);
  context.globalAlpha = isFaint ? FAINT : 1;
  const { left, top, right, bottom } = box;
  context.drawImage(
    bitmap,
    fit.x + left * fit.scale,
    fit.y + top * fit.scale,
    (right - left) * fit.scale,
    (bottom - top) * fit.scale,
  );
};

function BoardTools({ size }: { readonly size: Size }) {
  const say = usePhotoSay();
  const studioSay = useSay();
  const folded = useStudio((s) => s.pageFolded);
  const zoom = (by: number) => zoomTable(by, size.width / 2, size.height / 2);
  return (
    <div className="tableTools" role="toolbar" aria-label={studioSay("table.tools")}>
      <button
        type="button"
        className="onlyLeaves"
        aria-pressed={folded}
        onClick={() => put({ pageFolded: !folded })}
      >
        {studioSay(folded ? "page.unfold" : "page.fold")}
      </button>
      <button type="button" aria-label={say("photo.further")} onClick={() => zoom(1 / CLOSER)}>
        −
      </button>
      <button type="button" aria-label={say("photo.closer")} onClick={() => zoom(CLOSER)}>
        +
      </button>
      <button type="button" onClick={fitTable}>
        {say("photo.fitTable")}
      </button>
    </div>
  );
}

const useBoardKeys =
  (size: Size) =>
  (event: KeyboardEvent): void => {
    if (event.defaultPrevented || event.ctrlKey || event.metaKey || event.altKey) return;
    const [x, y] = [size.width / 2, size.height / 2];
    if (event.key === "0") fitTable();
    else if (event.key === "+" || event.key === "=") zoomTable(CLOSER, x, y);
    else if (event.key === "-") zoomTable(1 / CLOSER, x, y);
    else return;
    event.preventDefault();
  };

/** A picture to work on: it can be moved and zoomed, and tapped by hand or by the crosshair. */
export function Board(props: Props) {
  const { label, bitmap, box, isFaint, hint, onTap, onPull, children, aside } = props;
  const place = useRef<HTMLElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const draw = useRef<SVGSVGElement>(null);
  const size = useSize(place);
  const view = useStudio((s) => s.view);
  const fit = fitOf(box, size, view);
  useEffect(() => {
    if (canvas.current && size.width > 0)
      paint(canvas.current, { bitmap, box, isFaint }, size, fit);
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: another picture is fitted anew
  useEffect(() => {
    fitTable();
    return fitTable;
  }, [label, bitmap]);
  const pointer = usePointer(draw, {
    onTap: (at) => onTap(fromPx(fit, at), REACH / fit.scale),
    onPull: onPull ? (from, to) => onPull(fromPx(fit, from), fromPx(fit, to)) : null,
  });
  const middle = fromPx(fit, { x: size.width / 2, y: size.height / 2 });
  return (
    <section
      ref={place}
      className="table photoBoard"
      aria-label={label}
      data-region
      onKeyDown={useBoardKeys(size)}
    >
      <canvas ref={canvas} className="shownPicture" />
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset does not go round a drawing */}
      <svg ref={draw} role="group" aria-label={label} {...pointer}>
        {size.width > 0 ? (
          <>
            {children(fit)}
            <Crosshair fit={fit} middle={middle} onTap={(at) => onTap(at, REACH / fit.scale)} />
          </>
        ) : null}
      </svg>
      <p className="boardHint">{hint}</p>
      {aside}
      <BoardTools size={size} />
    </section>
  );
}
