const BARS = Array.from({ length: 12 }, (_, i) => {
  const x = 13.5 + i * 2.45;
  return `M${x} 9.5v3.4M${x} 15.1v3.4`;
}).join("");
const HOLES = [
  [-1, -1],
  [1, -1],
  [-1, 1],
  [1, 1],
] as const;

/** A four-hole button: larger and sewn with red thread where it is done up. */
export function Disc({ on }: { readonly on: boolean }) {
  const spread = on ? 2.5 : 2;
  return (
    <>
      <circle className="disc" r={on ? 9.5 : 7.5} />
      <circle className="rim" r={on ? 6.9 : 5.2} />
      {on ? <path className="thread" d="M-2.5 -2.5L2.5 2.5M2.5 -2.5L-2.5 2.5" /> : null}
      {HOLES.map(([x, y]) => (
        <circle
          key={`${x}${y}`}
          className="hole"
          cx={x * spread}
          cy={y * spread}
          r={on ? 1 : 1.1}
        />
      ))}
    </>
  );
}

/** A button through its buttonhole, or lying beside an empty one. */
export function ButtonArt({ on }: { readonly on: boolean }) {
  return (
    <svg className="buttonArt" width="44" height="28" viewBox="0 0 44 28" aria-hidden="true">
      <path className="bar" d={`${BARS}M11.5 9.5v9M42.5 9.5v9`} />
      <path className="slit" d="M12.5 14H41.5" />
      <g transform={`translate(${on ? 27 : 8} 14)`}>
        <Disc on={on} />
      </g>
    </svg>
  );
}
