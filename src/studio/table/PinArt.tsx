import { px } from "./frame.ts";
import type { PinPlace } from "./pinPlace.ts";

type Props = { readonly place: PinPlace; readonly text: string };

/** A dressmaker's pin: a red head to take hold of, its number beside it. */
export function PinArt({ place, text }: Props) {
  const { head, glint, label, shaft, underline } = place;
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
}
