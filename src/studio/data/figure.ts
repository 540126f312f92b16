import type { KeptId, MeasureId } from "../../drafting/measures.ts";

/**
 * A plain standing figure on which the measures are shown, our own drawing: 1000 high, its middle at
 * x = 0, eight heads to the height (common practice in drawing). It is nobody's body and is no part
 * of a draft.
 */
export const FIGURE_HIGH = 1000;
/** The arms reach so far to each side. */
export const FIGURE_WIDE = 330;

/** The right half of the outline, from the crown to the crotch; the other is its mirror. */
export const HALF_OUTLINE =
  "M0 0C34 0 46 26 45 58C44 92 32 120 24 128L25 148C30 163 62 166 90 178C112 187 121 222 123 262C126 308 134 344 141 374C148 414 152 452 153 488C160 514 160 560 150 580C142 582 136 560 134 532L134 490C128 448 120 410 112 376C104 330 98 286 92 246C90 300 78 344 77 388C78 424 96 452 98 490C98 560 86 660 77 725C82 800 68 884 58 955L62 988L28 1000L26 984L31 952C26 884 36 800 31 725C26 640 12 566 0 508";

export type FigureSide = "front" | "back";
export type FigureId = MeasureId | KeptId;

/** Where the tape lies on one side of the figure, and where its name stands. */
export type FigureLine = {
  readonly id: FigureId;
  readonly side: FigureSide;
  readonly path: string;
  /** From here a fine line leads to the name; null: the name stands on the other side of the figure. */
  readonly from: { readonly x: number; readonly y: number } | null;
  readonly label: { readonly to: "left" | "right"; readonly y: number } | null;
};

const named = (
  id: FigureId,
  side: FigureSide,
  path: string,
  from: readonly [number, number],
  label: readonly ["left" | "right", number],
): FigureLine => ({
  id,
  side,
  path,
  from: { x: from[0], y: from[1] },
  label: { to: label[0], y: label[1] },
});
/** The same tape where it comes round the other side. */
const round = (id: FigureId, path: string): FigureLine => ({
  id,
  side: "back",
  path,
  from: null,
  label: null,
});

/** Where each measure is taken: `how.*` in the words says it, and is what these lines follow. */
export const FIGURE_LINES: readonly FigureLine[] = [
  named("height", "front", "M-176 0H-196M-186 0V1000M-176 1000H-196", [-186, 650], ["left", 650]),
  named("head", "front", "M-45 52Q0 66 45 52", [45, 52], ["right", 30]),
  round("head", "M-45 52Q0 40 45 52"),
  named("neckBase", "front", "M-27 150Q0 186 27 150", [20, 162], ["right", 92]),
  round("neckBase", "M-27 150Q0 164 27 150"),
  named("shoulder", "front", "M29 154C40 163 66 166 90 178", [66, 166], ["right", 152]),
  named("chest", "front", "M-91 262Q0 278 91 262", [91, 262], ["right", 262]),
  round("chest", "M-91 262Q0 248 91 262"),
  named("waist", "front", "M-77 388Q0 402 77 388", [77, 388], ["right", 388]),
  round("waist", "M-77 388Q0 376 77 388"),
  named("hip", "front", "M-98 482Q0 498 98 482", [98, 482], ["right", 446]),
  round("hip", "M-98 482Q0 468 98 482"),
  named("wrist", "front", "M134 490Q144 498 153 489", [153, 489], ["right", 506]),
  named("hand", "front", "M134 536Q146 544 158 536", [158, 536], ["right", 566]),
  named("upperArm", "front", "M-123 262Q-108 270 -94 262", [-123, 262], ["left", 262]),
  named("elbow", "front", "M-141 375Q-126 383 -112 376", [-141, 375], ["left", 375]),
  named("waistToHip", "front", "M-77 388C-78 424 -96 452 -98 484", [-86, 430], ["left", 460]),
  named("acrossBack", "back", "M-88 224H88", [-88, 224], ["left", 224]),
  named("scyeDepth", "back", "M-9 160V246M-20 246H2", [-9, 205], ["left", 140]),
  named("napeToWaist", "back", "M0 160V388", [0, 330], ["right", 330]),
  named("napeToHip", "back", "M9 160V482", [9, 440], ["right", 440]),
  named(
    "armLength",
    "back",
    "M-90 178C-112 187 -121 222 -123 262C-126 308 -134 344 -141 374C-148 414 -152 452 -153 488",
    [-141, 374],
    ["left", 374],
  ),
  named(
    "spineToWrist",
    "back",
    "M0 160L90 178C112 187 121 222 123 262C126 308 134 344 141 374C148 414 152 452 153 488",
    [123, 262],
    ["right", 230],
  ),
  named("torsoGirth", "back", "M-56 164C-60 300 -40 440 0 508", [-46, 420], ["left", 470]),
  { ...round("torsoGirth", "M-56 164C-60 300 -40 440 0 508"), side: "front" },
];
