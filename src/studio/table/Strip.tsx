import type { Garment } from "../../bands/garment.ts";
import type { Chapter } from "../chapters/chapters.ts";
import { loadFor, scrapWidth } from "../fields/tableTest.ts";
import { Ladder } from "./Ladder.tsx";
import { TestPictures } from "./TestPictures.tsx";
import type { Size } from "./view.ts";

type Props = {
  readonly chapter: Chapter;
  readonly garment: Garment;
  readonly size: Size;
  readonly height: number;
};

const ABOVE_RULER = 44;

/** What stands under the pieces: how far the bands stretch, or how the rib is tried on a table. */
export function Strip({ chapter, garment, size, height }: Props) {
  const top = size.height - height - ABOVE_RULER;
  if (chapter === "ribs") return <Ladder garment={garment} top={top} width={size.width} />;
  if (chapter !== "cloth") return null;
  const load = loadFor(scrapWidth(garment));
  return <TestPictures top={top} width={size.width} load={load} />;
}
