import { useMemo } from "react";
import type { Garment } from "../../bands/garment.ts";
import { bandsForRib } from "../../guide/bandsFound.ts";
import type { RibFound } from "../../guide/readings.ts";
import { tell } from "../../guide/words/tell.ts";
import { useVoice } from "./voice.ts";

type Props = { readonly garment: Garment; readonly rib: RibFound };

/** What was found of the rib, and how each band changes with it. */
export function RibChanges({ garment, rib }: Props) {
  const voice = useVoice();
  const { sentences } = useMemo(() => bandsForRib(garment, rib), [garment, rib]);
  return (
    <ul className="ribChanges">
      {sentences.map((sentence) => (
        <li key={sentence.key} data-rib={sentence.key}>
          {tell(voice, sentence)}
        </li>
      ))}
    </ul>
  );
}
