import { useMemo, useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import { useStudio } from "../state/store.ts";
import { linesOfCheck, linesOfField, type Place, partnersOf } from "./lines.ts";

/** Which lines are drawn heavier just now, and why. */
export const useLights = (garment: Garment) => {
  const [under, setUnder] = useState<Place | null>(null);
  const field = useStudio((s) => s.lit);
  const check = useStudio((s) => s.openCheck);
  const partners = partnersOf(garment.seams, under).join(" ");
  return useMemo(
    () => ({
      lit: under === null ? linesOfField(field) : [under],
      partners: partners.split(" "),
      checked: linesOfCheck(check),
      hover: setUnder,
    }),
    [under, field, check, partners],
  );
};
