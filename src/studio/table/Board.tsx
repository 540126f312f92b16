import { type RefObject, useMemo, useRef, useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import type { Piece } from "../../drafting/piece.ts";
import { loadFor } from "../fields/tableTest.ts";
import { usePrint } from "../state/print.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { hasOldLines, hasTurnings, NARROW, piecesFor, rowsFor } from "./chapterPieces.ts";
import { frameOf } from "./frame.ts";
import { Ground } from "./Ground.tsx";
import { Ladder } from "./Ladder.tsx";
import { Legend } from "./Legend.tsx";
import { linesOfCheck, linesOfField, type Place, partnersOf } from "./lines.ts";
import { oldLinesOf } from "./oldLines.ts";
import { PieceView } from "./PieceView.tsx";
import { PinView } from "./PinView.tsx";
import { pinsOf } from "./pins.ts";
import { Ruler } from "./Ruler.tsx";
import { ScaleBar } from "./ScaleBar.tsx";
import { TestPictures } from "./TestPictures.tsx";
import { useArrangement } from "./useArrangement.ts";
import { usePanning } from "./usePanning.ts";
import type { Size } from "./view.ts";

type Props = { readonly garment: Garment; readonly drafted: boolean; readonly size: Size };

/** The ladders of the Ribs chapter stand under the pieces, so high. */
const LADDER = 168;
const LEGEND_FITS = 640;
const RIB_STEP = 5;

/** Which lines are drawn heavier just now, and why. */
const useLights = (garment: Garment) => {
  const [under, setUnder] = useState<Place | null>(null);
  const field = useStudio((s) => s.lit);
  const check = useStudio((s) => s.openCheck);
  const partners = partnersOf(garment.seams, under).join(" ");
  return useMemo(
    () => ({
      lit: under === null ? linesOfField(field) : [under],
      partners: partners.split(" "),
      checked: linesOfCheck(check),
      hover: setUnder,
    }),
    [under, field, check, partners],
  );
};

const useLaidOut = ({ garment, size }: Props) => {
  const chapter = useStudio((s) => s.chapter);
  const oldShown = useStudio((s) => s.oldLines) && hasOldLines(chapter);
  const dimensions = useStudio((s) => s.dimensions) && size.width >= NARROW;
  const view = useStudio((s) => s.view);
  const narrow = size.width < NARROW;
  const rows = rowsFor(chapter, piecesFor(chapter, garment), size.width);
  const oldOf = (piece: Piece) => (oldShown ? oldLinesOf(garment, piece.name) : []);
  const hasStrip = (chapter === "ribs" || chapter === "cloth") && size.height > 420;
  const ladder = hasStrip ? LADDER : 0;
  const bar = chapter === "block" || narrow || oldShown ? 0 : 14;
  const margins = {
    x: narrow ? 10 : 36,
    top: narrow ? 14 : oldShown || chapter !== "block" ? 52 : 28,
    bottom: (narrow ? 56 : 52) + ladder + bar,
  };
  const arrangement = useArrangement({ rows, oldOf, size, margins, dimensions });
  const held = rows
    .flat()
    .map((piece) => ({ piece, frame: frameOf(arrangement, piece.name, view) }));
  return { chapter, oldShown, oldOf, ladder, arrangement, held, narrow, view, dimensions };
};

/** Ribs run across a band: lines so far apart on the screen at every zoom. */
function RibPattern({ scale }: { readonly scale: number }) {
  const step = RIB_STEP / scale;
  return (
    <pattern id="ribLines" width={step} height={step} patternUnits="userSpaceOnUse">
      <path className="ribs" d={`M${step / 2} 0V${step}`} />
    </pattern>
  );
}

/** The pieces of a chapter, laid out and drawn, with what may be taken hold of. */
export function Board(props: Props) {
  const { garment, drafted, size } = props;
  const say = useSay();
  const print = usePrint();
  const board = useRef<SVGSVGElement>(null);
  const panning = usePanning(board);
  const measuring = useStudio((s) => s.measuring);
  const lights = useLights(garment);
  const { chapter, oldShown, oldOf, ladder, arrangement, held, narrow, view, dimensions } =
    useLaidOut(props);
  const scale = arrangement.scale * (view?.zoom ?? 1);
  const turnings = hasTurnings(chapter);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset does not go round a drawing
    <svg
      ref={board as RefObject<SVGSVGElement>}
      className={`draw${measuring ? " boardMeasuring" : ""}`}
      role="group"
      aria-label={say("table.name")}
      {...panning}
      onDoubleClick={() => put({ heldPiece: null })}
    >
      <Ground scale={arrangement.scale} view={view} unit={print.unit} />
      <RibPattern scale={scale} />
      {held.map(({ piece, frame }) => (
        <PieceView
          key={piece.name}
          piece={piece}
          frame={frame}
          old={oldOf(piece)}
          turnings={turnings}
          lights={lights}
          dimensions={dimensions}
          say={say}
          print={print}
        />
      ))}
      {oldShown && size.width > LEGEND_FITS ? <Legend x={40} /> : null}
      {narrow ? null : <ScaleBar x={26} y={size.height - 34} scale={scale} unit={print.unit} />}
      {ladder > 0 && chapter === "cloth" ? (
        <TestPictures
          top={size.height - ladder - 44}
          width={size.width}
          load={loadFor(garment.bands.neckband.finishedDepth)}
        />
      ) : null}
      {ladder > 0 && chapter === "ribs" ? (
        <Ladder garment={garment} top={size.height - ladder - 44} width={size.width} />
      ) : null}
      {measuring ? <Ruler held={held} say={say} print={print} /> : null}
      {pinsOf(chapter, garment, drafted).map((pin) => {
        const at = held.find(({ piece }) => piece.name === pin.piece);
        return at ? <PinView key={pin.field} pin={pin} frame={at.frame} /> : null;
      })}
    </svg>
  );
}
