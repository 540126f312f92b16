import { PAPERS } from "../../export/data/paper.ts";
import { makeFile } from "../files/exporting.ts";
import { chooseLarge, LARGE_PAPERS, useLarge } from "../files/largePaper.ts";
import { Clause } from "../page/Clause.tsx";
import { useSay } from "../words/say.ts";

function LargePaperSlot() {
  const say = useSay();
  const paper = useLarge();
  return (
    <span className="w">
      <select
        aria-label={say("large.paper")}
        data-large-paper
        value={paper}
        onChange={(event) => chooseLarge(event.target.value)}
      >
        {LARGE_PAPERS.map((name) => (
          <option key={name} value={name}>
            {PAPERS[name].height === null
              ? say("paper.roll", { width: PAPERS[name].width })
              : PAPERS[name].title}
          </option>
        ))}
      </select>
    </span>
  );
}

type Props = { readonly blocked: boolean };

/** The same pattern on one large page: for a copy shop, and for a projector. */
export function LargeFiles({ blocked }: Props) {
  const say = useSay();
  return (
    <>
      <Clause
        text={say("large.copyShop")}
        given={{ large: <LargePaperSlot /> }}
        note={say("large.copyShopNote")}
      >
        <div className="row">
          <button
            type="button"
            className="go quiet"
            disabled={blocked}
            onClick={() => makeFile("copyShop")}
          >
            {say("large.makeCopyShop")}
          </button>
        </div>
      </Clause>
      <Clause text={say("large.projector")} note={say("large.projectorNote")}>
        <div className="row">
          <button
            type="button"
            className="go quiet"
            disabled={blocked}
            onClick={() => makeFile("projector")}
          >
            {say("large.makeProjector")}
          </button>
        </div>
      </Clause>
    </>
  );
}
