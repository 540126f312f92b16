import { look } from "./eye.ts";
import { pieceNow } from "./piece.ts";
import { addAfter, dropLast, dropPoint, turnBend, turnCorner } from "./traceActions.ts";

/** After a point was taken away or added, the focus goes where the work goes on. */
const focusPoint = (i: number): void => {
  look({ held: `point.${i}` });
  requestAnimationFrame(() =>
    document.querySelector<SVGGElement>(`[data-grip="point.${i}"]`)?.focus(),
  );
};

/** What the keys do with a point in hand; false where a key means nothing to it. */
export const pointKey = (i: number, key: string): boolean => {
  switch (key) {
    case "Delete":
      dropPoint(i);
      focusPoint(Math.max(0, Math.min(i, pieceNow().pen.points.length - 1)));
      return true;
    case "Backspace":
      if (pieceNow().pen.isClosed) dropPoint(i);
      else dropLast();
      focusPoint(Math.max(0, Math.min(i, pieceNow().pen.points.length - 1)));
      return true;
    case "c":
    case "C":
      turnCorner(i);
      return true;
    case "b":
    case "B":
      turnBend(i);
      return true;
    case "a":
    case "A":
      addAfter(i);
      focusPoint(i + 1);
      return true;
    default:
      return false;
  }
};
