import { pointAt } from "../../../src/geometry/curve.ts";
import { boundsOf } from "../../../src/geometry/outline.ts";
import { mapPath } from "../../../src/geometry/path.ts";
import type { Point } from "../../../src/geometry/point.ts";
import type { Path } from "../../../src/geometry/segment.ts";
import type { MarkerName } from "../../../src/trace/photo/markerDesign.ts";
import { markerSheet } from "../../../src/trace/photo/markerSheet.ts";

/** A table seen from above, as greys on a grid of `step` mm from (left, top). */
export type Scene = {
  readonly grey: Uint8Array;
  readonly left: number;
  readonly top: number;
  readonly step: number;
  readonly width: number;
  readonly height: number;
};

export type Area = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

export const emptyTable = (
  { left, top, right, bottom }: Area,
  step: number,
  grey: number,
): Scene => {
  const width = Math.ceil((right - left) / step);
  const height = Math.ceil((bottom - top) / step);
  return { grey: new Uint8Array(width * height).fill(grey), left, top, step, width, height };
};

const flat = (path: Path, parts: number): readonly Point[] => [
  path[0].start,
  ...path.flatMap((s) =>
    s.kind === "line"
      ? [s.end]
      : Array.from({ length: parts }, (_, i) => pointAt(s, (i + 1) / parts)),
  ),
];

/** A closed path filled with a grey, its edge smooth to a part of a cell (four lines a row). */
export const fill = (scene: Scene, path: Path, grey: number): void => {
  const ring = flat(path, 64);
  const box = boundsOf(path);
  const lines = 4;
  const first = Math.max(0, Math.floor((box.top - scene.top) / scene.step));
  const last = Math.min(scene.height - 1, Math.ceil((box.bottom - scene.top) / scene.step));
  const cover = new Float64Array(scene.width + 2);
  for (let row = first; row <= last; row++) {
    cover.fill(0);
    for (let k = 0; k < lines; k++) {
      const y = scene.top + (row + (k + 0.5) / lines) * scene.step;
      const xs: number[] = [];
      for (let i = 0; i < ring.length; i++) {
        const a = ring[i];
        const b = ring[(i + 1) % ring.length];
        if (!a || !b || a.y <= y === b.y <= y) continue;
        xs.push(a.x + ((y - a.y) * (b.x - a.x)) / (b.y - a.y));
      }
      xs.sort((p, q) => p - q);
      for (let i = 0; i + 1 < xs.length; i += 2) {
        const from = ((xs[i] ?? 0) - scene.left) / scene.step;
        const to = ((xs[i + 1] ?? 0) - scene.left) / scene.step;
        for (let c = Math.max(0, Math.floor(from)); c < Math.min(scene.width, to); c++) {
          const part = Math.min(c + 1, to) - Math.max(c, from);
          cover[c] = (cover[c] ?? 0) + Math.max(0, part) / lines;
        }
      }
    }
    for (let c = 0; c < scene.width; c++) {
      const share = cover[c] ?? 0;
      if (share === 0) continue;
      const at = row * scene.width + c;
      scene.grey[at] = Math.round((scene.grey[at] ?? 0) * (1 - share) + grey * share);
    }
  }
};

/** A line drawn with a pen of some width. */
export const stroke = (
  scene: Scene,
  path: Path,
  pen: { readonly width: number; readonly grey: number },
): void => {
  const points = flat(path, 48);
  for (let i = 0; i + 1 < points.length; i++) {
    const a = points[i];
    const b = points[i + 1];
    if (a && b) strokeStraight(scene, a, b, pen);
  }
};

const strokeStraight = (
  scene: Scene,
  a: Point,
  b: Point,
  { width, grey }: { readonly width: number; readonly grey: number },
): void => {
  const reach = width / 2 + scene.step;
  const cell = (v: number, from: number): number => Math.floor((v - from) / scene.step);
  const [x0, x1] = [
    cell(Math.min(a.x, b.x) - reach, scene.left),
    cell(Math.max(a.x, b.x) + reach, scene.left),
  ];
  const [y0, y1] = [
    cell(Math.min(a.y, b.y) - reach, scene.top),
    cell(Math.max(a.y, b.y) + reach, scene.top),
  ];
  const dx = b.x - a.x;
  const dy = b.y - a.y;
  const size = dx * dx + dy * dy;
  for (let j = Math.max(0, y0); j <= Math.min(scene.height - 1, y1); j++) {
    for (let i = Math.max(0, x0); i <= Math.min(scene.width - 1, x1); i++) {
      const x = scene.left + (i + 0.5) * scene.step - a.x;
      const y = scene.top + (j + 0.5) * scene.step - a.y;
      const t = size > 0 ? Math.min(1, Math.max(0, (x * dx + y * dy) / size)) : 0;
      const away = Math.hypot(x - t * dx, y - t * dy);
      const share = Math.min(1, Math.max(0, 0.5 + (width / 2 - away) / scene.step));
      if (share === 0) continue;
      const at = j * scene.width + i;
      const inked = Math.round((scene.grey[at] ?? 0) * (1 - share) + grey * share);
      scene.grey[at] = Math.min(scene.grey[at] ?? 255, inked);
    }
  }
};

const PAPER = 235;
const INK = 30;

/** A marker sheet laid on the table: white paper 150 mm square with its mark, turned. */
export const layMark = (scene: Scene, name: MarkerName, at: Point, turn: number): void => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const placed = (path: Path): Path =>
    mapPath(path, ({ x, y }) => ({ x: at.x + c * x - s * y, y: at.y + s * x + c * y }));
  const sheet = markerSheet(name);
  const side = 75;
  const corners = [
    { x: -side, y: -side },
    { x: side, y: -side },
    { x: side, y: side },
    { x: -side, y: side },
  ] as const;
  fill(scene, placed(ringOf(corners)), PAPER);
  for (const { path, ink } of sheet.fills) fill(scene, placed(path), ink === "black" ? INK : PAPER);
  for (const path of sheet.strokes) stroke(scene, placed(path), { width: 0.3, grey: INK });
};

/** A closed ring of straights through points. */
export const ringOf = (points: readonly [Point, ...Point[]]): Path => {
  const [first, ...rest] = points;
  const all = [...rest, first];
  return [
    { kind: "line", start: first, end: rest[0] ?? first },
    ...rest.map((p, i) => ({ kind: "line" as const, start: p, end: all[i + 1] ?? first })),
  ];
};
