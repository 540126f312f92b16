import type { Degrees, Kilopascal, Mm, Ratio } from "../geometry/units.ts";

/** Numbers and their units stay on one line. */
const JOIN = "\u00a0";

type Decimals = 0 | 1 | 2;

const SCALES = [1, 10, 100] as const;
/** What stands behind the whole number for every hundredth, end noughts left out. */
const HUNDREDTHS: readonly string[] = Array.from({ length: 100 }, (_, i) =>
  i === 0 ? "" : `.${String(i).padStart(2, "0").replace(/0$/, "")}`,
);
/** So near to a half, or so large, only the engine's own exact rule knows which way to round. */
const IN_DOUBT = 1e-6;
const LARGE = 1e9;

const byTheEngine = (value: number, decimals: Decimals): string => {
  const text = value.toFixed(decimals);
  const trimmed = text.includes(".") ? text.replace(/\.?0+$/, "") : text;
  return trimmed === "-0" ? "0" : trimmed;
};

/** A number with at most `decimals` decimals, end noughts left out: a hundred to a body's checks. */
const short = (value: number, decimals: Decimals): string => {
  const scale = SCALES[decimals];
  const scaled = Math.abs(value) * scale;
  if (!(scaled < LARGE) || Math.abs((scaled % 1) - 0.5) < IN_DOUBT) {
    return byTheEngine(value, decimals);
  }
  const units = Math.round(scaled);
  const whole = Math.floor(units / scale);
  const part = HUNDREDTHS[(units - whole * scale) * (100 / scale)] ?? "";
  return `${value < 0 && units > 0 ? "-" : ""}${whole}${part}`;
};

/** Lengths as a maker reads them: to a tenth of a millimetre. The only rounding (style: numbers). */
export const asMm = (value: Mm): string => `${short(value, 1)}${JOIN}mm`;
/** What is read off a rule with a fine eye: a printed test square, of which a hundredth counts. */
export const asHundredths = (value: Mm): string => `${short(value, 2)}${JOIN}mm`;
export const asPercent = (value: Ratio): string => `${short(value * 100, 0)}${JOIN}%`;
/** For shares of a limit or a whole, where a tenth of a per cent tells them apart. */
export const asFinePercent = (value: Ratio): string => `${short(value * 100, 1)}${JOIN}%`;
export const asDegrees = (value: Degrees): string => `${short(value, 1)}°`;
export const asKilopascal = (value: Kilopascal): string => `${short(value, 2)}${JOIN}kPa`;
export const asRatio = (value: Ratio): string => short(value, 2);
