import { memo } from "react";
import { put, useStudio } from "../state/store.ts";
import { fitTable, zoomTable } from "../state/viewing.ts";
import { useSay } from "../words/say.ts";
import { CLOSER, type Size } from "./view.ts";

/** The table's own words: closer, further, fit, measure, read. */
export const Tools = memo(function Tools({ size }: { readonly size: Size }) {
  const say = useSay();
  const measuring = useStudio((s) => s.measuring);
  const reading = useStudio((s) => s.readingFacts);
  const dimensions = useStudio((s) => s.dimensions);
  const folded = useStudio((s) => s.pageFolded);
  const zoom = (by: number) => zoomTable(by, size.width / 2, size.height / 2);
  return (
    <div className="tableTools" role="toolbar" aria-label={say("table.tools")}>
      {reading ? null : (
        <>
          <button
            type="button"
            className="onlyNarrow"
            aria-pressed={folded}
            onClick={() => put({ pageFolded: !folded })}
          >
            {say(folded ? "page.unfold" : "page.fold")}
          </button>
          <button
            type="button"
            className="notOnOneLeaf"
            aria-label={say("table.further")}
            onClick={() => zoom(1 / CLOSER)}
          >
            −
          </button>
          <button
            type="button"
            className="notOnOneLeaf"
            aria-label={say("table.closer")}
            onClick={() => zoom(CLOSER)}
          >
            +
          </button>
          <button type="button" onClick={fitTable}>
            {say("table.fit")}
          </button>
          <button
            type="button"
            className="notNarrow"
            aria-pressed={dimensions}
            onClick={() => put({ dimensions: !dimensions })}
          >
            {say("table.dims")}
          </button>
          <button
            type="button"
            className="notOnOneLeaf"
            aria-pressed={measuring}
            onClick={() => put({ measuring: !measuring })}
          >
            {say("table.measure")}
          </button>
        </>
      )}
      <button
        type="button"
        aria-pressed={reading}
        onClick={() => put({ readingFacts: !reading, measuring: false })}
      >
        {say(reading ? "table.draw" : "table.read")}
      </button>
    </div>
  );
});
