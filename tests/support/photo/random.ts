/** Numbers from 0 up to 1 that look random and are the same every time (mulberry32, from memory). */
export const randomFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};

/** Numbers round nought with a deviation of 1, nearly normal: the sum of six. */
export const normalFrom =
  (random: () => number): (() => number) =>
  () => {
    let sum = -3;
    for (let i = 0; i < 6; i++) sum += random();
    return sum * Math.SQRT2;
  };
