import { useMemo } from "react";
import type { Garment } from "../../bands/garment.ts";
import { DEFAULT_CHOICES } from "../../drafting/data/defaults.ts";
import { toPathData } from "../../geometry/pathData.ts";
import { make } from "../../project/make.ts";
import { bodyOf, type WorkBody } from "../../project/work.ts";
import { choirWork } from "../data/choir.ts";
import { Ground } from "../table/Ground.tsx";

const VIEW = "0 0 270 250";

/** The garment of an invented body: the doors show the program's own drawing. */
const drawn = (body: WorkBody | undefined): Garment | null => {
  const whole = body && bodyOf(body);
  return whole ? make(whole, DEFAULT_CHOICES, null).garment : null;
};

const outline = (garment: Garment, name: "front" | "sleeve", skip: string): string =>
  garment.block[name].edges
    .filter((edge) => edge.name !== skip)
    .map(({ path }) => toPathData(path))
    .join("")
    .replace(/(?!^)M/gu, "L");

export function MeasuresPicture() {
  const garment = useMemo(() => drawn(choirWork().bodies[1]), []);
  if (!garment) return null;
  return (
    <svg viewBox={VIEW} preserveAspectRatio="xMidYMid slice" aria-hidden="true">
      <Ground scale={0.4} view={null} unit="mm" />
      <g transform="translate(46 34) scale(.3)">
        <path className="piece" d={`${outline(garment, "front", "")}Z`} />
        <path className="cut" d={outline(garment, "front", "centre")} />
        <path
          className="fold"
          d={toPathData(
            garment.block.front.edges.find((e) => e.name === "centre")?.path ??
              garment.block.front.cutLine,
          )}
        />
      </g>
      <g transform="translate(200 108) scale(.3)">
        <path className="piece" d={`${outline(garment, "sleeve", "")}Z`} />
        <path className="cut" d={`${outline(garment, "sleeve", "")}Z`} />
      </g>
      <path className="dim" d="M26 60V206" />
      <path className="dimEnd" d="M22 64l8 -8M22 210l8 -8" />
    </svg>
  );
}

export function BlockPicture() {
  const garment = useMemo(() => drawn(choirWork().bodies[5]), []);
  if (!garment) return null;
  const corners = garment.block.front.edges.flatMap(({ path }) =>
    path.flatMap((s) => (s.kind === "cubic" ? [s.start, s.startHandle, s.endHandle] : [s.start])),
  );
  return (
    <svg viewBox={VIEW} preserveAspectRatio="xMidYMid slice" aria-hidden="true">
      <Ground scale={0.4} view={null} unit="mm" />
      <g transform="rotate(-4 135 125)">
        <rect className="sheet sheetUsed" x="62" y="-12" width="152" height="280" />
        <g transform="translate(88 28) scale(.34)">
          <path className="old" d={`${outline(garment, "front", "")}Z`} />
          {corners.map(({ x, y }) => (
            <path key={`${x} ${y}`} className="cut" d={`M${x - 12} ${y}h24M${x} ${y - 12}v24`} />
          ))}
        </g>
      </g>
    </svg>
  );
}

export function ChoirPicture() {
  const garments = useMemo(() => choirWork().bodies.map(drawn), []);
  return (
    <svg viewBox={VIEW} preserveAspectRatio="xMidYMid slice" aria-hidden="true">
      <Ground scale={0.4} view={null} unit="mm" />
      {garments.map((garment, i) => {
        if (!garment) return null;
        const [column, row] = [i % 4, Math.floor(i / 4)];
        const half = outline(garment, "front", "centre");
        return (
          <g
            // biome-ignore lint/suspicious/noArrayIndexKey: singers stand in their order
            key={i}
            transform={`translate(${38 + column * 64.5} ${24 + row * 76}) scale(.084)`}
          >
            <path className="piece" d={`${half}Z`} />
            <path className="piece" d={`${half}Z`} transform="scale(-1 1)" />
            <path className="cut" style={{ strokeWidth: 1.2 }} d={half} />
            <path className="cut" style={{ strokeWidth: 1.2 }} d={half} transform="scale(-1 1)" />
          </g>
        );
      })}
    </svg>
  );
}
