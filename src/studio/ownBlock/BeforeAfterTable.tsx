import { BlockPieces, laidOut } from "./BlockPieces.tsx";
import { BlockTable } from "./BlockTable.tsx";
import { blockNow } from "./blockNow.ts";
import { OwnTable } from "./OwnTable.tsx";
import type { OwnBlock } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";

/** The block as drawn, dashed, under the block without its turnings. */
export function BeforeAfterTable({ now }: { readonly now: OwnBlock }) {
  const say = useOwnSay();
  const told = blockNow(now);
  const drawn = now.turnings ? blockNow({ ...now, turnings: null }) : null;
  if (!told || "fault" in told) return <BlockTable />;
  const { block } = told.found;
  const old = drawn && "found" in drawn ? [drawn.found.block] : [];
  const { places, box } = laidOut([block, ...old]);
  return (
    <OwnTable box={box} empty={say("own.empty")}>
      {(fit) => (
        <BlockPieces
          block={block}
          old={old}
          fit={fit}
          places={places}
          lit={[]}
          nameOf={(piece) => say(`own.piece.${piece}`)}
        />
      )}
    </OwnTable>
  );
}
