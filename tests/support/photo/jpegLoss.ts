import type { Picture } from "../../../src/trace/photo/picture.ts";

/** The luminance table of ITU-T T.81, annex K.1 (from memory); the usual scaling by quality. */
const TABLE = [
  16, 11, 10, 16, 24, 40, 51, 61, 12, 12, 14, 19, 26, 58, 60, 55, 14, 13, 16, 24, 40, 57, 69, 56,
  14, 17, 22, 29, 51, 87, 80, 62, 18, 22, 37, 56, 68, 109, 103, 77, 24, 35, 55, 64, 81, 104, 113,
  92, 49, 64, 78, 87, 103, 121, 120, 101, 72, 92, 95, 98, 112, 100, 103, 99,
];

const COSINES = Array.from({ length: 64 }, (_, k) => {
  const [u, x] = [k >> 3, k & 7];
  return (u === 0 ? Math.SQRT1_2 : 1) * 0.5 * Math.cos(((2 * x + 1) * u * Math.PI) / 16);
});

/** Rows of an 8 by 8 block turned by the cosines, and the block laid over: twice gives both ways. */
const turned = (block: Float64Array, back: boolean): Float64Array => {
  const result = new Float64Array(64);
  for (let r = 0; r < 8; r++) {
    for (let u = 0; u < 8; u++) {
      let sum = 0;
      for (let x = 0; x < 8; x++) {
        const cosine = back ? (COSINES[x * 8 + u] ?? 0) : (COSINES[u * 8 + x] ?? 0);
        sum += cosine * (block[r * 8 + x] ?? 0);
      }
      result[u * 8 + r] = sum;
    }
  }
  return result;
};

/** What saving as a JPEG of some quality (1 to 100) takes from a grey picture. */
export const jpegLoss = ({ grey, width, height }: Picture, quality: number): Picture => {
  const scale = quality < 50 ? 5000 / quality : 200 - 2 * quality;
  const steps = TABLE.map((v) => Math.min(255, Math.max(1, Math.floor((v * scale + 50) / 100))));
  const kept = new Uint8Array(grey);
  const block = new Float64Array(64);
  for (let top = 0; top + 8 <= height; top += 8) {
    for (let left = 0; left + 8 <= width; left += 8) {
      for (let k = 0; k < 64; k++) {
        block[k] = (grey[(top + (k >> 3)) * width + left + (k & 7)] ?? 0) - 128;
      }
      const waves = turned(turned(block, false), false);
      for (let k = 0; k < 64; k++) {
        const step = steps[k] ?? 1;
        waves[k] = Math.round((waves[k] ?? 0) / step) * step;
      }
      const again = turned(turned(waves, true), true);
      for (let k = 0; k < 64; k++) {
        const value = Math.round((again[k] ?? 0) + 128);
        kept[(top + (k >> 3)) * width + left + (k & 7)] = Math.min(255, Math.max(0, value));
      }
    }
  }
  return { grey: kept, width, height };
};
