import type { Block } from "../../drafting/piece.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { TapeMeasures } from "../../trace/tape/tapeMeasures.ts";
import { BlockPieces, laidOut } from "./BlockPieces.tsx";
import { blockNow, tapeOf } from "./blockNow.ts";
import { type Fit, OwnTable } from "./OwnTable.tsx";
import { OWN_PIECES, type OwnBlock } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { useOwn } from "./state.ts";
import { TAPE_FIELDS, tapeLine } from "./tapeLines.ts";
import { tapeSample } from "./tapeSample.ts";

type Shown = { readonly block: Block; readonly tape: TapeMeasures };

type LinesProps = Shown & {
  readonly fit: Fit;
  readonly places: ReturnType<typeof laidOut>["places"];
};

/** Where each length is taken, by the numbers of the sentences. */
function TapeLines({ block, tape, fit, places }: LinesProps) {
  const lit = useOwn((s) => s.lit);
  return TAPE_FIELDS.map((field, i) => {
    const { piece, paths, at } = tapeLine(field, block, tape);
    const place = places[OWN_PIECES.indexOf(piece)] ?? { x: 0, y: 0 };
    const [x, y] = [fit.x + place.x * fit.scale, fit.y + place.y * fit.scale];
    const isLit = lit === field;
    return (
      <g key={field} className={`tapeLine${isLit ? " isLit" : ""}`} data-tape-line={field}>
        <g transform={`translate(${x} ${y}) scale(${fit.scale})`}>
          {paths.map((path) => (
            <path key={toPathData(path)} className="tapeWay" d={toPathData(path)} />
          ))}
        </g>
        <g transform={`translate(${x + at.x * fit.scale} ${y + at.y * fit.scale})`}>
          <circle className="tapeDot" r="9" />
          <text className="tapeNumber" textAnchor="middle" y="4">
            {i + 1}
          </text>
        </g>
      </g>
    );
  });
}

/** The solved block; until it is, a usual one that shows where each length is taken. */
export function TapeTable({ now }: { readonly now: OwnBlock }) {
  const say = useOwnSay();
  const told = blockNow(now);
  const tape = tapeOf(now.tape);
  const solved: Shown | null =
    told && "found" in told && tape ? { block: told.found.block, tape } : null;
  const shown = solved ?? tapeSample(now.tape);
  const { places, box } = shown ? laidOut([shown.block]) : { places: [], box: null };
  return (
    <OwnTable box={box} empty={say("own.empty")}>
      {(fit) =>
        shown && (
          <g className={solved ? "" : "usual"}>
            <BlockPieces
              block={shown.block}
              old={[]}
              fit={fit}
              places={places}
              lit={[]}
              nameOf={(piece) => say(`own.piece.${piece}`)}
            />
            <TapeLines {...shown} fit={fit} places={places} />
          </g>
        )
      }
    </OwnTable>
  );
}
