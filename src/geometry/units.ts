/**
 * Units live in the types, not in the names. A plain number may be given where a unit is wanted
 * (it is the caller's word for it), but a value of one unit is never taken for another.
 */
export type Mm = number & { readonly unit?: "mm" };
export type Radians = number & { readonly unit?: "rad" };
export type Degrees = number & { readonly unit?: "deg" };
/** 1 means unchanged: a band cut to half of its opening has ratio 0.5. */
export type Ratio = number & { readonly unit?: "ratio" };
export type Kilopascal = number & { readonly unit?: "kPa" };

/** Exactly, since the international yard and pound agreement of 1959 (NIST SP 811, appendix B). */
export const MM_PER_INCH = 25.4;
export const MM_PER_CM = 10;

export const degrees = (angle: Radians): Degrees => (angle * 180) / Math.PI;
export const radians = (angle: Degrees): Radians => (angle * Math.PI) / 180;
