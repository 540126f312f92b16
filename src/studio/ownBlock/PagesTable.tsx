import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import type { Box } from "../../geometry/outline.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Point } from "../../geometry/point.ts";
import type { PagePlace, PdfPageLines } from "../../trace/files/drawing.ts";
import { withPlaces } from "./drawing.ts";
import { changeDrawing } from "./drawingChanges.ts";
import { type Fit, OwnTable } from "./OwnTable.tsx";
import type { Drawing } from "./ownBlock.ts";
import { type OwnSay, useOwnSay } from "./ownSay.ts";
import { snapOf } from "./pageSnap.ts";
import { dropOwnGesture, own } from "./state.ts";

/** A page let go this near to where its lines meet comes to lie there, in px. */
const SNAP = 14;
/** How far S looks, mm. */
const SNAP_BY_KEY = 25;

const moveTo = (page: number, to: Point, say: OwnSay, gesture: string): void => {
  const { drawing } = own();
  if (!drawing) return;
  const places = drawing.places.map((place) => (place.page === page ? { page, ...to } : place));
  changeDrawing(withPlaces(drawing, places), say("own.step.page", { page }), gesture);
};

const snap = (page: number, within: number, say: OwnSay, gesture: string): void => {
  const { drawing } = own();
  const mine = drawing?.places.find((place) => place.page === page);
  if (!drawing || !mine) return;
  const by = snapOf(drawing.pages, drawing.places, page, within);
  if (by) moveTo(page, { x: mine.x + by.x, y: mine.y + by.y }, say, gesture);
};

const WAYS: Readonly<Record<string, Point>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

type Hold = { readonly from: PagePlace; readonly x: number; readonly y: number; gesture: string };

let gestures = 0;

type Props = { readonly page: PdfPageLines; readonly place: PagePlace; readonly fit: Fit };

/** A page on the table: dragged, moved by arrow keys, and laid to its neighbours by S. */
function PageSheet({ page, place, fit }: Props) {
  const say = useOwnSay();
  const hold = useRef<Hold | null>(null);
  const keys = useRef("");
  const onPointerDown = (event: PointerEvent<SVGGElement>) => {
    event.currentTarget.setPointerCapture(event.pointerId);
    event.currentTarget.focus();
    hold.current = {
      from: place,
      x: event.clientX,
      y: event.clientY,
      gesture: `page-${++gestures}`,
    };
  };
  const onPointerMove = (event: PointerEvent) => {
    const { current } = hold;
    if (!current) return;
    const by = { x: event.clientX - current.x, y: event.clientY - current.y };
    const to = { x: current.from.x + by.x / fit.scale, y: current.from.y + by.y / fit.scale };
    moveTo(page.page, to, say, current.gesture);
  };
  const letGo = () => {
    if (hold.current) snap(page.page, SNAP / fit.scale, say, hold.current.gesture);
    hold.current = null;
  };
  const onKeyDown = (event: KeyboardEvent) => {
    if (event.key === "Escape" && hold.current) {
      dropOwnGesture(hold.current.gesture);
      hold.current = null;
      return;
    }
    const way = WAYS[event.key];
    if (way) {
      event.preventDefault();
      if (keys.current === "") keys.current = `keys-${++gestures}`;
      const by = event.shiftKey ? 0.1 : 1;
      moveTo(page.page, { x: place.x + by * way.x, y: place.y + by * way.y }, say, keys.current);
    }
    if (event.key.toLowerCase() === "s" && !event.ctrlKey && !event.metaKey) {
      event.preventDefault();
      snap(page.page, SNAP_BY_KEY, say, `snap-${++gestures}`);
    }
  };
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset does not go into a drawing
    // biome-ignore lint/a11y/noInteractiveElementToNoninteractiveRole: a group of a drawing is no control
    <g
      className="pageSheet"
      role="group"
      tabIndex={0}
      data-page={page.page}
      aria-label={say("own.pages.move", { page: page.page })}
      transform={`translate(${fit.x + place.x * fit.scale} ${fit.y + place.y * fit.scale}) scale(${fit.scale})`}
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={letGo}
      onPointerCancel={letGo}
      onKeyDown={onKeyDown}
      onBlur={() => {
        keys.current = "";
      }}
    >
      <rect className="sheet" width={page.width} height={page.height} />
      <path className="seam" d={page.lines.map(({ path }) => toPathData(path)).join("")} />
      <text className="pageNo" x={page.width / 2} y={page.height / 2} fontSize={34}>
        {page.page}
      </text>
    </g>
  );
}

const roundPages = ({ pages, places }: Drawing): Box | null => {
  const boxes = places.flatMap(({ page, x, y }) => {
    const size = pages.find((other) => other.page === page);
    return size ? [{ left: x, top: y, right: x + size.width, bottom: y + size.height }] : [];
  });
  if (boxes.length === 0) return null;
  return {
    left: Math.min(...boxes.map((b) => b.left)),
    top: Math.min(...boxes.map((b) => b.top)),
    right: Math.max(...boxes.map((b) => b.right)),
    bottom: Math.max(...boxes.map((b) => b.bottom)),
  };
};

/** The pages of a PDF on the table, to be laid where they belong. */
export function PagesTable({ drawing }: { readonly drawing: Drawing }) {
  const say = useOwnSay();
  // While a page is dragged the table keeps its fit: paper does not move under the hand.
  const box = useRef<Box | null>(null);
  box.current ??= roundPages(drawing);
  return (
    <OwnTable box={box.current} empty={say("own.empty")}>
      {(fit) =>
        drawing.places.map((place) => {
          const page = drawing.pages.find((other) => other.page === place.page);
          return page ? <PageSheet key={place.page} page={page} place={place} fit={fit} /> : null;
        })
      }
    </OwnTable>
  );
}
