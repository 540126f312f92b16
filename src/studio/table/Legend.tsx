import { memo } from "react";
import { useSay } from "../words/say.ts";
import { Unread } from "./Unread.tsx";

const LINES = [
  ["cut", "table.new"],
  ["old", "table.old"],
  ["seam", "table.seam"],
] as const;

/** What the lines mean, while old lies under new. */
export const Legend = memo(function Legend({ x }: { readonly x: number }) {
  const say = useSay();
  let at = x;
  return (
    <Unread>
      {LINES.map(([line, key]) => {
        const text = say(key);
        const here = at;
        at += 50 + text.length * 7 + 22;
        return (
          <g key={line}>
            <path className={line} d={`M${here} 27h38`} />
            <text className="label halo" x={here + 48} y={31}>
              {text}
            </text>
          </g>
        );
      })}
    </Unread>
  );
});
