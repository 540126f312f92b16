import { memo } from "react";
import { point } from "../../geometry/point.ts";
import { px } from "./frame.ts";
import { pinShape } from "./pinShape.ts";

type Props = { readonly leanX: number; readonly leanY: number; readonly text: string };

/** A dressmaker's pin: a red head to take hold of, its number beside it. Its group moves it. */
export const PinArt = memo(function PinArt({ leanX, leanY, text }: Props) {
  const { head, glint, label, shaft, underline } = pinShape(point(leanX, leanY), text);
  const at = { cx: px(head.x), cy: px(head.y) };
  return (
    <>
      <path className="pinShaft" d={shaft} />
      <circle className="ring" {...at} r="12" />
      <circle className="pinHead" {...at} r="6.5" />
      <circle className="pinGlint" cx={px(glint.x)} cy={px(glint.y)} r="1.6" />
      <circle className="pinTarget" {...at} r="16" />
      <text className="fig edit halo" x={px(label.x)} y={px(label.y)}>
        {text}
      </text>
      <path className="editLine" d={underline} />
    </>
  );
});
