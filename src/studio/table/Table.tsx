import { useRef } from "react";
import { Late, late } from "../guide/Late.tsx";
import { blockOf, useMade } from "../state/made.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { Board } from "./Board.tsx";
import { FactsView } from "./FactsView.tsx";
import { Figure } from "./Figure.tsx";
import { Ground } from "./Ground.tsx";
import { PaperTable } from "./PaperTable.tsx";
import { ScaleBar } from "./ScaleBar.tsx";
import { Tapes } from "./Tapes.tsx";
import { Tools } from "./Tools.tsx";
import { useSize } from "./useSize.ts";
import type { Size } from "./view.ts";

const MakingPictures = late(() =>
  import("../guide/MakingPictures.tsx").then(({ MakingPictures: pictures }) => ({
    default: pictures,
  })),
);

/** Bare pattern paper: nothing can be drafted yet. */
function Empty({ size }: { readonly size: Size }) {
  const say = useSay();
  const { unit } = usePrint();
  return (
    <>
      <svg className="draw" aria-hidden="true">
        <Ground scale={0.65} view={null} unit={unit} />
        <ScaleBar x={26} y={size.height - 34} scale={0.65} unit={unit} />
      </svg>
      <div className="emptyTable">
        <b>{say("table.empty")}</b>
        <p>{say("table.emptyText")}</p>
      </div>
    </>
  );
}

function OnTable({ size }: { readonly size: Size }) {
  const made = useMade();
  const chapter = useStudio((s) => s.chapter);
  const figure = useStudio((s) => s.figureShown);
  const reading = useStudio((s) => s.readingFacts);
  const drafted = useStudio((s) => blockOf(s.history.present) === null);
  if (chapter === "measures") return figure ? <Figure size={size} /> : <Tapes size={size} />;
  if (!made) return <Empty size={size} />;
  if (chapter === "paper") return <PaperTable made={made} size={size} />;
  if (chapter === "making") {
    return (
      <Late>
        <MakingPictures garment={made.garment} size={size} />
      </Late>
    );
  }
  return (
    <>
      {reading ? (
        <FactsView garment={made.garment} />
      ) : (
        <Board garment={made.garment} drafted={drafted} size={size} />
      )}
      <Tools size={size} />
    </>
  );
}

/** The drafting table: it takes what room the page leaves. */
export function Table() {
  const say = useSay();
  const place = useRef<HTMLElement>(null);
  const size = useSize(place);
  return (
    <section ref={place} className="table" aria-label={say("table.name")} data-region>
      {size.width > 0 ? <OnTable size={size} /> : null}
    </section>
  );
}
