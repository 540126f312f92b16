import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { Unread } from "./Unread.tsx";

type Props = { readonly top: number; readonly width: number; readonly load: number };

const TALL = 34;
/** The widest of the three pictures, in px. */
const WIDEST = 236;

/** Ticks at both ends of what was marked; the ribs between them stand wider the further it goes. */
function Band({ long, wide }: { readonly long: number; readonly wide: number }) {
  const inset = (long - wide) / 2;
  const ribs = Array.from({ length: 25 }, (_, i) => `M${(i * long) / 24} 0V${TALL}`).join("");
  return (
    <>
      <rect className="piece" width={long} height={TALL} />
      <path className="ribs" d={ribs} />
      <path className="cut" d={`M0 0H${long}V${TALL}H0Z`} />
      <path className="fold" d={`M0 0H${long}`} />
      <path
        className="editLine"
        style={{ stroke: "var(--ink)" }}
        d={`M${inset} -7v14M${inset + wide} -7v14`}
      />
    </>
  );
}

/** The three readings of the test on a table. */
export function TestPictures({ top, width, load }: Props) {
  const say = useSay();
  const p = usePrint();
  const step = (width - 80) / 3;
  const scale = Math.min(1, step / WIDEST);
  return (
    <Unread>
      {(["test.step.one", "test.step.two", "test.step.three"] as const).map((key, i) => (
        <g key={key} transform={`translate(${40 + i * step} ${top})`}>
          <text className="pieceName halo">{say(key)}</text>
        </g>
      ))}
      <g transform={`translate(40 ${top + 28}) scale(${scale})`}>
        <Band long={150} wide={108} />
        <path className="cut" d="M-3 -5v44M153 -5v44M153 17h30v12" />
        <path className="mkRib" d="M174 29h18l6 14v46h-30v-46z" />
        <text className="figSeam" textAnchor="middle" x="183" y="72">{`${load} g`}</text>
        <text className="fig halo" textAnchor="middle" x="75" y="58">
          {`${p.full(100)} → ?`}
        </text>
      </g>
      <g transform={`translate(${40 + step} ${top + 28}) scale(${scale})`}>
        <Band long={186} wide={150} />
        <g transform="translate(18 58)">
          <Band long={130} wide={92} />
        </g>
        <path className="dim" d="M93 38v16m-4 -6l4 6l4 -6" />
      </g>
      <g transform={`translate(${40 + 2 * step} ${top + 28}) scale(${scale})`}>
        <path className="old" d="M0 92A130 130 0 0 1 190 92" />
        <path className="mkRib" d="M16 92A112 112 0 0 1 174 92L152 112A84 84 0 0 0 38 112Z" />
        <path className="pinShaft" d="M16 92l-7 -12M95 57v-14M174 92l7 -12" />
        {[
          [9, 80],
          [95, 43],
          [181, 80],
        ].map(([x, y]) => (
          <circle key={x} className="rulerDot" cx={x} cy={y} r="4" />
        ))}
      </g>
    </Unread>
  );
}
