import { MEASURE_IDS, type MeasureId } from "../../drafting/measures.ts";
import { heldBody, type Work } from "../../project/work.ts";
import { useMade } from "../state/made.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { px } from "./frame.ts";
import { Ground } from "./Ground.tsx";
import type { Size } from "./view.ts";

/** Height stands on the wall, not on the tape: it would make all others short. */
const SHOWN: readonly MeasureId[] = MEASURE_IDS.filter((id) => id !== "height");
const LABELS = 190;
const FIGURES = 86;
const LONGEST = 2000;

type RowProps = {
  readonly id: MeasureId;
  readonly y: number;
  readonly tall: number;
  readonly left: number;
  readonly scale: number;
  readonly value: number | null;
  readonly guess: boolean;
  readonly others: readonly number[];
};

const ticksOf = (value: number, left: number, foot: number, scale: number): string =>
  Array.from({ length: Math.floor((value - 1) / 10) }, (_, i) => {
    const mm = (i + 1) * 10;
    return `M${px(left + mm * scale)} ${foot}v${mm % 100 === 0 ? -9 : mm % 50 === 0 ? -7 : -4}`;
  }).join("");

/** One measure as a cut length of tape, so that a slip (96 for 960) is seen at once. */
function TapeRow({ id, y, tall, left, scale, value, guess, others }: RowProps) {
  const say = useSay();
  const p = usePrint();
  const lit = useStudio((s) => s.lit === `measures.${id}`);
  const end = left + (value ?? 0) * scale;
  const foot = y + tall;
  return (
    <g className={`tapeRow${lit ? " lit" : ""}`}>
      <text
        className={`${lit ? "pieceName" : "figSeam"} halo`}
        textAnchor="end"
        x={left - 16}
        y={y + tall * 0.7}
      >
        {say(`name.${id}`)}
      </text>
      {value === null ? null : (
        <>
          <rect
            className={`tapeBit${guess ? " guess" : ""}`}
            x={left}
            y={y}
            width={px(end - left)}
            height={tall}
          />
          <path className="tapeTick" d={ticksOf(value, left, foot, scale)} />
          <rect className="tapeEnd" x={left - 5} y={y - 1} width="7" height={tall + 2} />
          {Array.from({ length: tall < 18 ? 0 : Math.floor((value - 20) / 100) }, (_, i) => (
            <text
              // biome-ignore lint/suspicious/noArrayIndexKey: a tape's numbers are its order
              key={i}
              className="tapeNo"
              textAnchor="middle"
              x={px(left + (i + 1) * 100 * scale)}
              y={foot - 12}
            >
              {(i + 1) * 10}
            </text>
          ))}
          <text className="fig halo" x={px(end + 12)} y={y + tall * 0.72}>
            {guess ? `≈ ${p.length(Math.round(value)).replace(/^≈\s?/u, "")}` : p.length(value)}
          </text>
        </>
      )}
      {others.map((other) => (
        <path key={other} className="choirTick" d={`M${px(left + other * scale)} ${foot + 2}v6`} />
      ))}
    </g>
  );
}

const othersOf = (work: Work, id: MeasureId): readonly number[] => [
  ...new Set(work.bodies.flatMap((body, i) => (i === work.held ? [] : (body.measures[id] ?? [])))),
];

/** Every measure at one scale; what is estimated lies as a pale length. */
export function Tapes({ size }: { readonly size: Size }) {
  const say = useSay();
  const { unit } = usePrint();
  const work = useStudio((s) => s.history.present);
  const made = useMade();
  const body = heldBody(work);
  const narrow = size.width < 480;
  const left = narrow ? 150 : LABELS + 16;
  const values = SHOWN.map((id) => ({
    id,
    given: body.measures[id] ?? null,
    value: body.measures[id] ?? made?.body.measures[id] ?? null,
  }));
  const longest = Math.min(LONGEST, Math.max(700, ...values.map(({ value }) => value ?? 0)));
  const scale = (size.width - left - FIGURES) / longest;
  const row = Math.min(58, (size.height - (narrow ? 12 : 84)) / SHOWN.length);
  const tall = Math.min(26, row * 0.62);
  return (
    <svg className="draw" role="img" aria-label={say("measures.tapes")}>
      <Ground scale={scale} view={null} unit={unit} />
      {values.map(({ id, given, value }, i) => (
        <TapeRow
          key={id}
          id={id}
          y={(narrow ? 6 : 36) + i * row}
          tall={tall}
          left={left}
          scale={scale}
          value={value}
          guess={given === null}
          others={narrow ? [] : othersOf(work, id)}
        />
      ))}
      {work.bodies.length > 1 && !narrow ? (
        <g>
          <path className="choirTick" d={`M${left} ${size.height - 36}v9m7 -9v9m12 -9v9`} />
          <text className="label halo" x={left + 30} y={size.height - 27}>
            {say("measures.others")}
          </text>
        </g>
      ) : null}
    </svg>
  );
}
