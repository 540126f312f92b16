import type { Made } from "../../project/make.ts";
import { Clause } from "../page/Clause.tsx";
import { setNumber } from "../state/changes.ts";
import { useMade } from "../state/made.ts";
import { type Print, printField, usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { neckbandReason } from "./neckbandReason.ts";

const pressure = (value: number, p: Print): string => `${p.number(value, 2)}\u00a0kPa`;

function NeckClause({ made }: { readonly made: Made | null }) {
  const say = useSay();
  const p = usePrint();
  const own = useStudio((s) => s.history.present.choices.bands.neckband.ratio !== null);
  const band = made?.garment.bands.neckband;
  const note =
    band && made
      ? `${say("ribs.neckNote", {
          opening: p.full(band.opening),
          length: p.full(band.finishedLength),
          ratio: p.number(band.ratio, 2),
          cut: p.length(band.cutLength),
          height: p.full(band.cutHeight),
          gap: band.neckGap === null ? say("ribs.noGap") : p.full(band.neckGap),
          pressure: pressure(band.pressure, p),
        })} ${say(neckbandReason(made.garment), {
          ring: p.full(band.bodyRing),
          head: p.full(made.garment.measures.head),
        })}`
      : null;
  return <Clause text={say(own ? "ribs.neckOwn" : "ribs.neck")} note={note} />;
}

function ShareClause({ made }: { readonly made: Made | null }) {
  const say = useSay();
  const p = usePrint();
  const marks = made?.garment.bands.neckband.marks ?? [];
  const list = marks.map(({ at }) => p.length(at)).join(", ");
  return (
    <Clause
      text={say("ribs.share")}
      note={made ? say("ribs.marks", { list: `${list} ${p.unit}` }) : null}
    />
  );
}

function CuffClause({ made }: { readonly made: Made | null }) {
  const say = useSay();
  const p = usePrint();
  const cuff = made?.garment.bands.cuff;
  const note =
    cuff && made
      ? say("ribs.cuffNote", {
          wrist: p.full(made.garment.measures.wrist),
          cut: p.length(cuff.cutLength),
          height: p.full(cuff.cutHeight),
          depth: p.full(cuff.finishedDepth),
          pressure: pressure(cuff.pressure, p),
        })
      : null;
  return <Clause text={say("ribs.cuff")} note={note} />;
}

/** Whether the hem band hangs or holds a blouse, and the ease that would make it hold. */
function Blouse({ made }: { readonly made: Made }) {
  const say = useSay();
  const p = usePrint();
  const { finishedLength, holdsBlouseFrom } = made.garment.bands.hemBand;
  const slots = { length: p.full(finishedLength), holds: p.full(holdsBlouseFrom) };
  if (finishedLength <= holdsBlouseFrom + 0.05) {
    return <p className="note">{say("ribs.holds", slots)}</p>;
  }
  const ease = Math.floor(holdsBlouseFrom - made.garment.measures.hip);
  return (
    <p className="note">
      {say("ribs.hangs", slots)}{" "}
      <button type="button" className="plainLink" onClick={() => setNumber("hemBand.ease", ease)}>
        {say("ribs.blouse", { ease: printField("hemBand.ease", ease, p) })}
      </button>
    </p>
  );
}

function HemClause({ made }: { readonly made: Made | null }) {
  const say = useSay();
  const p = usePrint();
  const band = made?.garment.bands.hemBand;
  const note =
    band && made
      ? say("ribs.hemNote", {
          hip: p.full(made.garment.measures.hip),
          cut: p.length(band.cutLength),
          height: p.full(band.cutHeight),
          depth: p.full(band.finishedDepth),
          pressure: pressure(band.pressure, p),
        })
      : null;
  return (
    <Clause text={say("ribs.hem")} note={note}>
      {made ? <Blouse made={made} /> : null}
    </Clause>
  );
}

export function Ribs() {
  const say = useSay();
  const made = useMade();
  return (
    <>
      {made ? null : <p className="refuse">{say("block.none")}</p>}
      <div className="clauses">
        <Clause text={say("ribs.rib")} note={say("ribs.ribNote")} />
        <CuffClause made={made} />
        <HemClause made={made} />
        <NeckClause made={made} />
        <ShareClause made={made} />
      </div>
      <p className="note">{say("ribs.scrap")}</p>
    </>
  );
}
