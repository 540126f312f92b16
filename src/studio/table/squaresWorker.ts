import { drawLayout } from "../../export/drawing.ts";
import type { SquaresJob } from "./useSquares.ts";

addEventListener("message", ({ data }: MessageEvent<SquaresJob>) => {
  postMessage(drawLayout(data.subject, data.sheets).squares);
});
