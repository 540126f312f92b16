import { boundsOf } from "../../geometry/outline.ts";
import { pathOf } from "../../geometry/path.ts";
import { toPathData } from "../../geometry/pathData.ts";
import type { Path } from "../../geometry/segment.ts";
import { beside } from "./beside.ts";
import { ringOf } from "./naming.ts";
import { OwnTable } from "./OwnTable.tsx";
import { OWN_PIECES, type OwnBlock } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";
import { useOwn } from "./state.ts";

/** Pieces as they were brought in, turned the right side up. */
const broughtIn = ({ pieces }: OwnBlock) =>
  OWN_PIECES.flatMap((name) => {
    const piece = pieces[name];
    const ring = piece ? ringOf(piece.runs, piece.naming?.isTurnedOver ?? false) : [];
    const [first, ...more] = ring.flat();
    const path: Path | null = first ? [first, ...more] : null;
    return path ? [{ name, path, box: boundsOf(path) }] : [];
  });

/** The pieces that are brought in so far, side by side. */
export function BlockTable() {
  const say = useOwnSay();
  const pieces = broughtIn(useOwn((s) => s.history.present));
  const { places, box } = beside(pieces.map((piece) => piece.box));
  return (
    <OwnTable box={pieces.length > 0 ? box : null} empty={say("own.empty")}>
      {({ scale, x, y }) =>
        pieces.map(({ name, path }, i) => {
          const place = places[i] ?? { x: 0, y: 0 };
          return (
            <g
              key={name}
              transform={`translate(${x + place.x * scale} ${y + place.y * scale}) scale(${scale})`}
            >
              <path className="piece" d={`${toPathData(pathOf(path))}Z`} />
              <path className="cut" d={`${toPathData(pathOf(path))}Z`} />
            </g>
          );
        })
      }
    </OwnTable>
  );
}
