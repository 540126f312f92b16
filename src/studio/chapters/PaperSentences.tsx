import { useMemo } from "react";
import type { Piece } from "../../drafting/piece.ts";
import { TEST_SQUARE } from "../../export/data/paper.ts";
import { isCorrected } from "../../export/madeFor.ts";
import { paperOf } from "../../export/paperSize.ts";
import { plainCount } from "../../export/plainRows.ts";
import { wantedFaults } from "../../export/printFaults.ts";
import type { Sheets } from "../../export/sheets.ts";
import { isWhole, wantedPages } from "../../export/wanted.ts";
import { isOwnSize } from "../fields/printFields.ts";
import { Clause } from "../page/Clause.tsx";
import { DateSlot } from "../page/DateSlot.tsx";
import { packAgain, turnPiece } from "../state/layingPieces.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useStill } from "../state/useStill.ts";
import { overlaps } from "../table/laying.ts";
import { useSay } from "../words/say.ts";
import { useWanted } from "./WantedSlot.tsx";

type Props = { readonly pieces: readonly Piece[]; readonly sheets: Sheets };

/** What the packing saves; while a piece is dragged it is told as it was. */
const useRows = ({ pieces, sheets }: Props): string => {
  const say = useSay();
  const still = useStill(sheets);
  const plain = useMemo(() => plainCount(pieces, still), [pieces, still]);
  const saved = plain - still.pages.length;
  if (saved === 0) return say("paper.noFewer");
  return saved > 0
    ? say("paper.fewer", { plain, saved })
    : say("paper.more", { plain, more: -saved });
};

/** Which paper, how it lies, and how many sheets that takes. */
function PaperClause(props: Props) {
  const say = useSay();
  const rows = useRows(props);
  const { sheets } = props;
  const { paper } = useStudio((s) => s.history.present);
  const isRoll = paperOf(paper).height === null;
  const note = say("paper.printNote", {
    count: sheets.count,
    sheets: sheets.pages.length,
    rows,
  });
  return (
    <>
      <Clause
        text={say(isRoll ? "paper.printRoll" : "paper.print")}
        given={{ "paper.date": <DateSlot /> }}
        note={note}
      />
      {isOwnSize(paper) ? <Clause text={say("paper.size")} /> : null}
    </>
  );
}

/** What the printer leaves bare, how sheets are joined, and how true the printer is. */
function PrinterClauses({ sheets }: Pick<Props, "sheets">) {
  const say = useSay();
  const p = usePrint();
  const { print } = sheets;
  const { along, across } = print.square;
  const drawn = (measured: number) => p.percent(TEST_SQUARE / measured);
  const corrected = say("paper.corrected", { along: drawn(along), across: drawn(across) });
  return (
    <>
      <Clause text={say("paper.margins")} />
      <Clause text={say("paper.joined")} note={say(`paper.joinNote.${print.join}`)} />
      <Clause
        text={say("paper.measured")}
        note={isCorrected(print) ? corrected : say("paper.true")}
      />
    </>
  );
}

/** Which sheets are printed. */
function WantedClause({ sheets }: Pick<Props, "sheets">) {
  const say = useSay();
  const { slot, told } = useWanted(sheets);
  const all = sheets.pages.length;
  const wanted = wantedPages(sheets).length;
  const note = isWhole(sheets) ? say("paper.wantedNote") : say("paper.wantedSome", { wanted, all });
  const [gone] = wantedFaults(sheets);
  return (
    <Clause text={say("paper.wanted")} given={{ wanted: slot }} note={note}>
      {told === null ? null : (
        <p className="refuse" id="wantedRefused" role="alert">
          {told}
        </p>
      )}
      {gone ? (
        <p className="refuse" role="alert">
          {say("paper.wantedGone", { names: gone.value })}
        </p>
      ) : null}
    </Clause>
  );
}

/** Whether the pieces lie as packed or by hand, with what is under another. */
function LieClause({ pieces, sheets }: Props) {
  const say = useSay();
  const held = useStudio((s) => s.heldPiece);
  const still = useStill(sheets);
  const over = useMemo(() => overlaps(pieces, still.placements), [pieces, still]);
  const isLaid = sheets.print.placed.length > 0;
  const how = <b data-lie>{say(isLaid ? "paper.lie.laid" : "paper.lie.packed")}</b>;
  const name = (piece: Piece["name"]) => say(`piece.${piece}`);
  return (
    <Clause text={say("paper.lie")} given={{ how }} note={say("paper.lieNote")}>
      {over.map(([one, other]) => (
        <p key={`${one} ${other}`} className="refuse" role="alert">
          {say("paper.over", { one: name(one), other: name(other) })}
        </p>
      ))}
      {held || isLaid ? (
        <div className="row">
          {held ? (
            <button
              type="button"
              className="go quiet"
              onClick={() => turnPiece(pieces, sheets, held)}
            >
              {say("paper.turnPiece", { piece: name(held) })}
            </button>
          ) : null}
          {isLaid ? (
            <button type="button" className="go quiet" onClick={packAgain}>
              {say("paper.packAgain")}
            </button>
          ) : null}
        </div>
      ) : null}
    </Clause>
  );
}

/** Everything that is chosen about paper and printer, as sentences. */
export function PaperSentences({ pieces, sheets }: Props) {
  const say = useSay();
  return (
    <div className="clauses">
      <PaperClause pieces={pieces} sheets={sheets} />
      <PrinterClauses sheets={sheets} />
      <WantedClause sheets={sheets} />
      <LieClause pieces={pieces} sheets={sheets} />
      <Clause text={say("paper.square")} />
    </div>
  );
}
