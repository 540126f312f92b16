import { endOf, startOf } from "../../geometry/path.ts";
import type { Made } from "../../project/make.ts";
import { openBringing } from "../ownBlock/bringing.ts";
import { Clause } from "../page/Clause.tsx";
import { otherBodySentence } from "../state/changes.ts";
import { blockOf, useMade } from "../state/made.ts";
import { usePrint } from "../state/print.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";

const edgeLength = ({ garment }: Made, piece: "front" | "back", edge: string): number =>
  garment.block[piece].edges.find(({ name }) => name === edge)?.length ?? 0;

const halfWidth = ({ garment }: Made): number => {
  const side = garment.block.front.edges.find(({ name }) => name === "side");
  return side ? startOf(side.path).x * 2 : 0;
};

const hemLevel = ({ garment }: Made): number => {
  const hem = garment.block.back.edges.find(({ name }) => name === "hem");
  return hem ? endOf(hem.path).y : 0;
};

function LengthClause({ made }: { readonly made: Made | null }) {
  const say = useSay();
  const p = usePrint();
  const length = made && hemLevel(made);
  return (
    <Clause
      text={say("block.length")}
      note={length === null ? null : say("block.lengthNote", { length: p.full(length) })}
    />
  );
}

/** An own block is for one body: with another on the table it says so, and that it is drafted. */
function OtherBody() {
  const sentence = useStudio((s) => otherBodySentence(s.history.present));
  return sentence === null ? null : <p className="doubt">{sentence}</p>;
}

export function Block() {
  const say = useSay();
  const p = usePrint();
  const made = useMade();
  const brought = useStudio((s) => s.history.present.block);
  const own = useStudio((s) => blockOf(s.history.present) !== null);
  return (
    <>
      <div className="clauses">
        <OtherBody />
        {own ? (
          <Clause
            text={say("block.own")}
            note={say("block.ownNote", { name: brought?.name ?? "" })}
          />
        ) : (
          <Clause
            text={say("block.draft")}
            note={
              made &&
              say("block.draftNote", {
                chest: p.full(made.garment.measures.chest),
                half: p.full(halfWidth(made)),
              })
            }
          />
        )}
        {own ? null : <LengthClause made={made} />}
      </div>
      {made ? (
        <p className="note">
          {say("block.neckNote", {
            length: p.full(made.garment.bands.neckband.opening),
            front: p.full(edgeLength(made, "front", "raglan")),
            back: p.full(edgeLength(made, "back", "raglan")),
          })}
        </p>
      ) : (
        <p className="refuse">{say(own ? "block.needsBody" : "block.none")}</p>
      )}
      <div className="row">
        <button type="button" className="go quiet" onClick={openBringing}>
          {say(brought ? "block.bringAgain" : "block.bring")}
        </button>
        <span className="note">{say("block.bringNote")}</span>
      </div>
      {made ? (
        <p className="note">
          <button type="button" className="plainLink" onClick={() => put({ readingFacts: true })}>
            {say("block.read")}
          </button>
        </p>
      ) : null}
    </>
  );
}
