import type { Garment } from "../../bands/garment.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { px } from "./frame.ts";
import { rungsOf } from "./ladderRungs.ts";
import { Unread } from "./Unread.tsx";

type Props = { readonly garment: Garment; readonly top: number; readonly width: number };

const RUNG = 31;
const TICKS = 24;

/** Four tapes of one band, at one scale: their ticks spread as the rib does. */
export function Ladder({ garment, top, width }: Props) {
  const say = useSay();
  const p = usePrint();
  const held = useStudio((s) => s.heldPiece);
  const { band, rungs } = rungsOf(garment, held ?? "cuff");
  const longest = Math.max(...rungs.map(({ length }) => length));
  const room = Math.min(width - 260, 460);
  const left = 40;

  return (
    <Unread>
      <text className="pieceName halo" x={left} y={top}>
        {say("ribs.ladder", { band: say(`piece.${band}`).toLowerCase() })}
      </text>
      {rungs.map(({ key, length }, i) => {
        const y = top + 34 + i * RUNG;
        const wide = (length / longest) * room;
        const step = wide / TICKS;
        const ticks = Array.from(
          { length: TICKS - 1 },
          (_, t) => `M${px(left + (t + 1) * step)} ${y}v${(t + 1) % 6 === 0 ? -11 : -6}`,
        ).join("");
        const over = key.startsWith("ribs.over");
        return (
          <g key={key}>
            <path className="ribs" style={{ opacity: 1 }} d={ticks} />
            <path
              className={over ? "cut" : "seam"}
              d={`M${left} ${y - 16}v16H${px(left + wide)}v-16`}
            />
            <text className="fig halo" x={px(left + wide + 10)} y={y}>
              {p.length(length)}
            </text>
            <text className="label halo" x={px(left + wide + 64)} y={y}>
              {say(key)}
            </text>
          </g>
        );
      })}
    </Unread>
  );
}
