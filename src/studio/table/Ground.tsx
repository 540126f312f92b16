import { memo } from "react";
import type { Unit } from "../units/unit.ts";
import { FITTED, type View } from "./view.ts";

type Props = { readonly scale: number; readonly view: View | null; readonly unit: Unit };

/** Spots and crosses stand so far apart at most, in px; closer in, the step is halved. */
const WIDEST = 120;
const CLOSEST = 34;

const stepFor = (scale: number, unit: Unit): number => {
  let step = unit === "in" ? 101.6 : 100;
  while (step * scale > WIDEST && step > 25.5) step /= 2;
  while (step * scale < CLOSEST) step *= 2;
  return step;
};

/** The printed pattern paper under the pieces: from spot to cross is a round length. */
export const Ground = memo(function Ground({ scale, view, unit }: Props) {
  const { zoom, x, y } = view ?? FITTED;
  const step = stepFor(scale * zoom, unit) * scale * zoom;
  const [a, b] = [step / 4, step * 0.75];
  return (
    <>
      <defs>
        <pattern
          id="spots"
          width={step}
          height={step}
          patternUnits="userSpaceOnUse"
          x={x + step / 2}
          y={y + step / 2}
        >
          <circle className="spot" cx={a} cy={a} r="1.3" />
          <path className="cross" d={`M${b - 3} ${b}h6M${b} ${b - 3}v6`} />
        </pattern>
      </defs>
      <rect className="ground" width="100%" height="100%" />
      <rect width="100%" height="100%" fill="url(#spots)" data-ground />
    </>
  );
});
