import type { Degrees, Kilopascal, Mm, Ratio } from "../geometry/units.ts";

/** Numbers and their units stay on one line. */
const JOIN = "\u00a0";

/** A number with at most `decimals` decimals, end noughts left out. */
const short = (value: number, decimals: number): string => {
  const text = value.toFixed(decimals);
  const trimmed = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return trimmed === "-0" ? "0" : trimmed;
};

/** Lengths as a maker reads them: to a tenth of a millimetre. The only rounding (style: numbers). */
export const asMm = (value: Mm): string => `${short(value, 1)}${JOIN}mm`;
export const asPercent = (value: Ratio): string => `${short(value * 100, 0)}${JOIN}%`;
/** For shares of a limit or a whole, where a tenth of a per cent tells them apart. */
export const asFinePercent = (value: Ratio): string => `${short(value * 100, 1)}${JOIN}%`;
export const asDegrees = (value: Degrees): string => `${short(value, 1)}°`;
export const asKilopascal = (value: Kilopascal): string => `${short(value, 2)}${JOIN}kPa`;
export const asRatio = (value: Ratio): string => short(value, 2);
