import { OwnTable } from "../ownBlock/OwnTable.tsx";

/** The table as it is laid out, mm: a piece of about a block's size, a mark beyond each corner. */
const BOX = { left: 0, top: 0, right: 760, bottom: 900 };
const MARKS = [
  { name: "A", x: 90, y: 100 },
  { name: "B", x: 670, y: 90 },
  { name: "C", x: 680, y: 800 },
  { name: "D", x: 80, y: 810 },
] as const;
/** Neckline, raglan, side, hem and fold of any half front. */
const PIECE = "M215 235C252 232 268 205 282 152C380 240 440 345 525 345L512 742L215 742Z";

type Mark = (typeof MARKS)[number];

const pairs = MARKS.flatMap((from, i) => MARKS.slice(i + 1).map((to) => ({ from, to })));

function MarkPicture({ mark, scale }: { readonly mark: Mark; readonly scale: number }) {
  // Outside of the four marks, where no distance runs over the letter.
  const below = mark.y > (BOX.top + BOX.bottom) / 2;
  return (
    <g transform={`translate(${mark.x * scale} ${mark.y * scale})`}>
      <rect
        className="layPage"
        x={-60 * scale}
        y={-60 * scale}
        width={120 * scale}
        height={120 * scale}
      />
      <circle className="layRing" r={20 * scale} strokeWidth={8 * scale} />
      <circle className="layDisc" r={10 * scale} />
      <text className="fig" y={below ? 60 * scale + 15 : -60 * scale - 5} textAnchor="middle">
        {mark.name}
      </text>
    </g>
  );
}

/** Before there is a picture: how piece and marks are laid, and which distances are measured. */
export function LayingPicture() {
  return (
    <OwnTable box={BOX} empty="">
      {({ scale, x, y }) => (
        <g transform={`translate(${x} ${y})`}>
          <g transform={`scale(${scale})`}>
            <path className="piece" d={PIECE} />
            <path className="cut" d={PIECE} />
          </g>
          {pairs.map(({ from, to }) => (
            <path
              key={`${from.name}${to.name}`}
              className="layTape"
              d={`M${from.x * scale} ${from.y * scale}L${to.x * scale} ${to.y * scale}`}
            />
          ))}
          {MARKS.map((mark) => (
            <MarkPicture key={mark.name} mark={mark} scale={scale} />
          ))}
        </g>
      )}
    </OwnTable>
  );
}
