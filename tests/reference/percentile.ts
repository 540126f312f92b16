/** The value that `share` of the values lie below, straight between neighbours. */
export const percentile = (values: readonly number[], share: number): number => {
  const sorted = [...values].sort((a, b) => a - b);
  const place = share * (sorted.length - 1);
  const [below, above] = [sorted[Math.floor(place)] ?? NaN, sorted[Math.ceil(place)] ?? NaN];
  return below + (above - below) * (place - Math.floor(place));
};
