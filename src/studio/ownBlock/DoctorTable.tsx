import type { Block } from "../../drafting/piece.ts";
import { examine } from "../../trace/doctor/examine.ts";
import { BlockPieces, laidOut } from "./BlockPieces.tsx";
import { edgesOfFinding } from "./findingEdges.ts";
import { OwnTable } from "./OwnTable.tsx";
import { useOwnSay } from "./ownSay.ts";
import { useOwn } from "./state.ts";

type Props = {
  /** With the remedies done so far, and as it was brought in. */
  readonly block: Block;
  readonly before: Block;
};

/** The block with the remedy that is tried, the lines as they are dashed under it. */
export function DoctorTable({ block, before }: Props) {
  const say = useOwnSay();
  const trial = useOwn((s) => s.trial);
  const lit = useOwn((s) => s.lit);
  const remedy = trial
    ? examine(block)
        .find(({ id }) => id === trial.finding)
        ?.remedies.find(({ id }) => id === trial.remedy)
    : undefined;
  const shown = remedy ? remedy.apply(block) : block;
  const old = remedy ? [block] : before === block ? [] : [before];
  const { places, box } = laidOut([shown, ...old]);
  return (
    <OwnTable box={box} empty={say("own.empty")}>
      {(fit) => (
        <BlockPieces
          block={shown}
          old={old}
          fit={fit}
          places={places}
          lit={edgesOfFinding(trial?.finding ?? lit ?? "")}
          nameOf={(piece) => say(`own.piece.${piece}`)}
        />
      )}
    </OwnTable>
  );
}
