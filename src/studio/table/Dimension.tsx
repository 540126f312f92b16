import { px, standing } from "./frame.ts";

type End = { readonly x: number; readonly y: number };
type Props = { readonly from: End; readonly to: End; readonly text: string };

/** A dimension line with slashed ends; its figure sits in a gap. */
export function Dimension({ from, to, text }: Props) {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const long = Math.hypot(dx, dy) || 1;
  const [sx, sy] = [((dx + dy) / long) * 4, ((dy - dx) / long) * 4];
  const upright = Math.abs(dy) > Math.abs(dx);
  const mid = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const slash = ({ x, y }: End) => `M${px(x - sx)} ${px(y - sy)}L${px(x + sx)} ${px(y + sy)}`;
  return (
    <>
      <path className="dim" d={`M${px(from.x)} ${px(from.y)}L${px(to.x)} ${px(to.y)}`} />
      <path className="dimEnd" d={`${slash(from)}${slash(to)}`} />
      <g transform={upright ? standing(mid.x + 5, mid.y, -90) : standing(mid.x, mid.y + 5)}>
        <text className="fig halo" textAnchor="middle">
          {text}
        </text>
      </g>
    </>
  );
}
