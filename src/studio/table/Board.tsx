import { type ReactNode, type RefObject, useEffect, useRef } from "react";
import type { Garment } from "../../bands/garment.ts";
import { usePrint } from "../state/print.ts";
import { put, useStudio } from "../state/store.ts";
import { tellFitted } from "../state/trueSize.ts";
import { useSay } from "../words/say.ts";
import { hasTurnings } from "./chapterPieces.ts";
import { Ground } from "./Ground.tsx";
import { Legend } from "./Legend.tsx";
import { PieceView } from "./PieceView.tsx";
import { Pins } from "./Pins.tsx";
import { RibPattern } from "./RibPattern.tsx";
import { Ruler } from "./Ruler.tsx";
import { ScaleBar } from "./ScaleBar.tsx";
import { Strip } from "./Strip.tsx";
import { useLaidOut } from "./useLaidOut.ts";
import { useLights } from "./useLights.ts";
import { usePanning } from "./usePanning.ts";
import type { Size } from "./view.ts";

type Props = { readonly garment: Garment; readonly drafted: boolean; readonly size: Size };

const LEGEND_FITS = 640;

/** The paper itself: it is moved and zoomed, and what was held is let go on it. */
function Paper({ children }: { readonly children: ReactNode }) {
  const say = useSay();
  const paper = useRef<SVGSVGElement>(null);
  const panning = usePanning(paper);
  const measuring = useStudio((s) => s.measuring);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset does not go round a drawing
    <svg
      ref={paper as RefObject<SVGSVGElement>}
      className={`draw${measuring ? " boardMeasuring" : ""}`}
      role="group"
      aria-label={say("table.name")}
      {...panning}
      onDoubleClick={() => put({ heldPiece: null })}
    >
      {children}
    </svg>
  );
}

/** The pieces of a chapter, laid out and drawn, with what may be taken hold of. */
export function Board({ garment, drafted, size }: Props) {
  const say = useSay();
  const print = usePrint();
  const measuring = useStudio((s) => s.measuring);
  const lights = useLights(garment);
  const on = useLaidOut(garment, size);
  const { chapter, held, scale, view } = on;
  const fitted = on.arrangement.scale;
  useEffect(() => {
    tellFitted({ scale: fitted, x: size.width / 2, y: size.height / 2 });
  }, [fitted, size.width, size.height]);
  const words = { say, print, dimensions: on.dimensions, turnings: hasTurnings(chapter), lights };
  return (
    <Paper>
      <Ground scale={on.arrangement.scale} view={view} unit={print.unit} />
      <RibPattern scale={scale} />
      {held.map(({ piece, frame }) => (
        <PieceView key={piece.name} piece={piece} frame={frame} old={on.oldOf(piece)} {...words} />
      ))}
      {on.oldShown && size.width > LEGEND_FITS ? <Legend x={40} /> : null}
      {on.narrow ? null : <ScaleBar x={26} y={size.height - 34} scale={scale} unit={print.unit} />}
      {on.ladder > 0 ? (
        <Strip chapter={chapter} garment={garment} size={size} height={on.ladder} />
      ) : null}
      {measuring ? <Ruler held={held} say={say} print={print} /> : null}
      <Pins chapter={chapter} garment={garment} drafted={drafted} held={held} />
    </Paper>
  );
}
