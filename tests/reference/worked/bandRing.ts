import type { NecklineRing, Station } from "../../../src/bands/necklineRing.ts";
import type { Choices } from "../../../src/drafting/choices.ts";
import { DEFAULT_CHOICES } from "../../../src/drafting/data/defaults.ts";

/** An opening whose ring turns evenly, with marks at centre back, half way and centre front. */
export const evenRing = (opening: number, turning: number): NecklineRing => ({
  opening,
  turning,
  overFront: 0,
  overBack: 0,
  stations: [
    { to: "centre-back", way: 0, turning: 0 },
    { to: "half-way", way: opening / 4, turning: turning / 4 },
    { to: "centre-front", way: opening / 2, turning: turning / 2 },
  ],
});

/** The same opening with marks where the worked case has them. */
export const ringWith = (
  opening: number,
  turning: number,
  stations: readonly Station[],
): NecklineRing => ({ ...evenRing(opening, turning), stations });

type Changed = {
  readonly rib?: Partial<Choices["cloth"]["rib"]>;
  readonly neckband?: Partial<Choices["bands"]["neckband"]>;
  readonly allowance?: number;
};

/** The default choices with another rib or neckband. */
export const choicesWith = ({ rib, neckband, allowance }: Changed): Choices => ({
  ...DEFAULT_CHOICES,
  cloth: { ...DEFAULT_CHOICES.cloth, rib: { ...DEFAULT_CHOICES.cloth.rib, ...rib } },
  bands: {
    ...DEFAULT_CHOICES.bands,
    neckband: { ...DEFAULT_CHOICES.bands.neckband, ...neckband },
  },
  allowances: {
    ...DEFAULT_CHOICES.allowances,
    bands: allowance ?? DEFAULT_CHOICES.allowances.bands,
  },
});
