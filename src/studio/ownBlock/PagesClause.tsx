import { placesByMarks } from "../../trace/files/pageMarks.ts";
import { Clause } from "../page/Clause.tsx";
import { pagesInRows, withPlaces } from "./drawing.ts";
import { changeDrawing } from "./drawingChanges.ts";
import type { Drawing } from "./ownBlock.ts";
import { useOwnSay } from "./ownSay.ts";

type Props = {
  readonly drawing: Drawing;
  readonly arranging: boolean;
  readonly setArranging: (on: boolean) => void;
};

/** Each page, on the table or left out. */
function PageList({ drawing }: { readonly drawing: Drawing }) {
  const say = useOwnSay();
  const { pages, places } = drawing;
  const turn = (page: number, on: boolean) => {
    const spare = pagesInRows(pages).find((place) => place.page === page);
    const next = on
      ? [...places, ...(spare ? [spare] : [])]
      : places.filter((place) => place.page !== page);
    changeDrawing(withPlaces(drawing, next), say("own.step.pages"));
  };
  return (
    <ul className="pageList">
      {pages.map(({ page, lines }) => (
        <li key={page}>
          <label>
            <input
              type="checkbox"
              checked={places.some((place) => place.page === page)}
              onChange={(event) => turn(page, event.target.checked)}
            />{" "}
            {say("own.pages.page", { page, lines: lines.length })}
          </label>
        </li>
      ))}
    </ul>
  );
}

/** How the pages of a PDF lie together: by the tool's own marks, or by hand. */
export function PagesClause({ drawing, arranging, setArranging }: Props) {
  const say = useOwnSay();
  const { pages, places } = drawing;
  const byMarks = placesByMarks(pages);
  return (
    <Clause
      text={say("own.pages", { count: pages.length, laid: places.length })}
      note={say(byMarks ? "own.pages.marked" : arranging ? "own.pages.how" : "own.pages.byHand")}
    >
      <div className="row">
        <button type="button" className="go quiet" onClick={() => setArranging(!arranging)}>
          {say(arranging ? "own.pages.done" : "own.pages.arrange")}
        </button>
        {byMarks && arranging ? (
          <button
            type="button"
            className="plainLink"
            onClick={() => changeDrawing(withPlaces(drawing, byMarks), say("own.step.pages"))}
          >
            {say("own.pages.byMarks")}
          </button>
        ) : null}
        {arranging ? (
          <button
            type="button"
            className="plainLink"
            onClick={() =>
              changeDrawing(withPlaces(drawing, pagesInRows(pages)), say("own.step.pages"))
            }
          >
            {say("own.pages.rows")}
          </button>
        ) : null}
      </div>
      {arranging ? <PageList drawing={drawing} /> : null}
    </Clause>
  );
}
