import { useEffect, useState } from "react";
import type { Sheets } from "../../export/sheets.ts";
import type { SheetSubject } from "../../export/subject.ts";
import type { Box } from "../../geometry/outline.ts";

/** Squares are looked for once the sheets have stood still for so long; in ms. */
const STILL = 80;

export type SquaresJob = { readonly subject: SheetSubject; readonly sheets: Sheets };

type Found = { readonly sheets: Sheets; readonly squares: readonly Box[] };

/**
 * Where the file has the test square of each sheet, in the layout's frame; none while that is not
 * known. Setting every word and square takes a tenth of a second, and its code is needed nowhere
 * else on the page: a worker does it, from when a sheet is first looked at.
 */
export const useSquares = (subject: SheetSubject, sheets: Sheets): readonly Box[] => {
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => {
    let worker: Worker | null = null;
    const look = (): void => {
      worker = new Worker(new URL("./squaresWorker.ts", import.meta.url), { type: "module" });
      worker.onmessage = ({ data }: MessageEvent<readonly Box[]>) => {
        worker?.terminate();
        setFound({ sheets, squares: data });
      };
      worker.postMessage({ subject, sheets } satisfies SquaresJob);
    };
    const timer = setTimeout(look, STILL);
    return () => {
      clearTimeout(timer);
      worker?.terminate();
    };
  }, [subject, sheets]);
  return found?.sheets === sheets ? found.squares : [];
};
