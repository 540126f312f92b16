import { memo } from "react";
import type { Unit } from "../units/unit.ts";
import { Unread } from "./Unread.tsx";

type Props = {
  readonly x: number;
  readonly y: number;
  readonly scale: number;
  readonly unit: Unit;
};

const LENGTHS: Readonly<Record<Unit, { mm: number; parts: number; text: string }>> = {
  mm: { mm: 200, parts: 20, text: "20 cm" },
  cm: { mm: 200, parts: 20, text: "20 cm" },
  in: { mm: 203.2, parts: 8, text: "8 in" },
};
const WIDEST = 320;

/** A strip of tape that lies on the table: measure the drawing by it. */
export const ScaleBar = memo(function ScaleBar({ x, y, scale, unit }: Props) {
  const { mm, parts, text } = LENGTHS[unit];
  const part = scale * mm > WIDEST ? 0.25 : 1;
  const width = mm * scale * part;
  const ticks = Array.from({ length: parts * part + 1 }, (_, i) => {
    const tall = i % 10 === 0 ? 16 : i % 5 === 0 ? 8 : 5;
    return `M${x + (i * width) / (parts * part)} ${y + 16}v${-tall}`;
  }).join("");
  const shown = part === 1 ? text : unit === "in" ? "2 in" : "5 cm";
  return (
    <Unread>
      <rect className="tapeBit" data-scale-bar={mm * part} x={x} y={y} width={width} height="16" />
      <path className="tapeTick" d={ticks} />
      <text className="label halo" x={x + width + 8} y={y + 13}>
        {shown}
      </text>
    </Unread>
  );
});
