import { FITTED, moved, type View, zoomed } from "../table/view.ts";
import { put, studio } from "./store.ts";

const viewNow = (): View => studio().view ?? FITTED;
export const fitTable = (): void => put({ view: null });
export const moveTable = (x: number, y: number): void => put({ view: moved(viewNow(), x, y) });
export const zoomTable = (by: number, x: number, y: number): void =>
  put({ view: zoomed(viewNow(), by, x, y) });
