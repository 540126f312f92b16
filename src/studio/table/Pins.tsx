import type { Garment } from "../../bands/garment.ts";
import type { Chapter } from "../chapters/chapters.ts";
import { PinView } from "./PinView.tsx";
import { pinsOf } from "./pins.ts";
import type { OnBoard } from "./useLaidOut.ts";

type Props = {
  readonly chapter: Chapter;
  readonly garment: Garment;
  readonly drafted: boolean;
  readonly held: readonly OnBoard[];
};

/** The numbers of the chapter that may be pulled. */
export function Pins({ chapter, garment, drafted, held }: Props) {
  return pinsOf(chapter, garment, drafted).map((pin) => {
    const at = held.find(({ piece }) => piece.name === pin.piece);
    return at ? <PinView key={pin.field} pin={pin} frame={at.frame} /> : null;
  });
}
