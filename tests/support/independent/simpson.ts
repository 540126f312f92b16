/** A function of one unknown. */
type Of = (t: number) => number;
type Panel = {
  readonly from: number;
  readonly to: number;
  readonly start: number;
  readonly middle: number;
  readonly end: number;
};

const DEEPEST = 46;
const PANELS = 16;

const bySimpson = ({ from, to, start, middle, end }: Panel): number =>
  ((to - from) * (start + 4 * middle + end)) / 6;

/** Halved until halving changes it by less than is allowed; then Richardson's last step. */
const panelIntegral = (of: Of, panel: Panel, allowed: number, depth: number): number => {
  const { from, to, start, middle, end } = panel;
  const centre = (from + to) / 2;
  const left = { from, to: centre, start, middle: of((from + centre) / 2), end: middle };
  const right = { from: centre, to, start: middle, middle: of((centre + to) / 2), end };
  const [whole, halves] = [bySimpson(panel), bySimpson(left) + bySimpson(right)];
  const change = halves - whole;
  if (depth >= DEEPEST || Math.abs(change) <= 15 * allowed) return halves + change / 15;
  return (
    panelIntegral(of, left, allowed / 2, depth + 1) +
    panelIntegral(of, right, allowed / 2, depth + 1)
  );
};

/**
 * The integral over [from, to] by Simpson's rule on halved panels (adaptive, with the test of
 * J. N. Lyness, J. ACM 16 (1969), from memory): another kind of rule than the program's own.
 */
export const simpson = (of: Of, from: number, to: number, allowed: number): number => {
  let sum = 0;
  for (let i = 0; i < PANELS; i++) {
    const [a, b] = [from + ((to - from) * i) / PANELS, from + ((to - from) * (i + 1)) / PANELS];
    const panel = { from: a, to: b, start: of(a), middle: of((a + b) / 2), end: of(b) };
    sum += panelIntegral(of, panel, allowed / PANELS, 0);
  }
  return sum;
};
