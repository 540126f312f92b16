import { useState } from "react";
import type { Sheets } from "../../export/sheets.ts";
import { wantSheets } from "../state/layingPieces.ts";
import { readWanted, wantedText } from "../table/wantedSheets.ts";
import { useSay } from "../words/say.ts";

type Refused = { readonly typed: string; readonly part: string };

/** "1-4, 7", typed in the sentence; empty: all sheets. */
export const useWanted = (sheets: Sheets) => {
  const say = useSay();
  const [typed, setTyped] = useState<string | null>(null);
  const [refused, setRefused] = useState<Refused | null>(null);
  const { pages, print } = sheets;
  const take = () => {
    if (typed === null) return;
    const read = readWanted(typed, pages);
    setTyped(null);
    setRefused("bad" in read ? { typed, part: read.bad } : null);
    if ("names" in read) wantSheets(read.names);
  };
  const text = typed ?? refused?.typed ?? wantedText(print.only, pages);
  const slot = (
    <span className={`n text${refused ? " bad" : ""}`}>
      <input
        data-wanted
        autoComplete="off"
        spellCheck={false}
        aria-label={say("paper.wantedName")}
        aria-invalid={refused ? true : undefined}
        aria-describedby={refused ? "wantedRefused" : undefined}
        placeholder={say("paper.wantedAll")}
        size={Math.max(4, (text === "" ? say("paper.wantedAll") : text).length)}
        value={text}
        onChange={(event) => {
          setRefused(null);
          setTyped(event.target.value);
        }}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
          if (event.key !== "Escape") return;
          setTyped(null);
          setRefused(null);
        }}
      />
    </span>
  );
  const told = refused ? say("paper.wantedBad", { ...refused, all: pages.length }) : null;
  return { slot, told };
};
