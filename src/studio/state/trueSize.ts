import { create } from "zustand";
import { NOMINAL, PER_MM } from "../data/card.ts";
import { FITTED, zoomed } from "../table/view.ts";
import { put, studio } from "./store.ts";

type Screen = {
  /** Pixels of the screen itself to a millimetre, as the maker set them; null: not set yet. */
  readonly perMm: number | null;
  /** The window in which they are set stands open. */
  readonly setting: boolean;
  /** Of the drawing as it is fitted: px to a millimetre, and the middle of the table. */
  readonly fitted: { readonly scale: number; readonly x: number; readonly y: number };
};

const KEY = "ribwright/screen";

const keptPerMm = (): number | null => {
  try {
    const kept = Number(localStorage.getItem(KEY) ?? Number.NaN);
    return kept > 0 && Number.isFinite(kept) ? kept : null;
  } catch {
    return null;
  }
};

export const useScreen = create<Screen>()(() => ({
  perMm: null,
  setting: false,
  fitted: { scale: 1, x: 0, y: 0 },
}));
const screen = (): Screen => useScreen.getState();

export const closeSetting = (): void => useScreen.setState({ setting: false });

/** Zooming the page makes a CSS pixel larger, and the screen no larger. */
const cssPerMm = (perMm: number): number => perMm / devicePixelRatio;

/** What to begin with: as it was set before, or what the standard says of pixels. */
export const firstPerMm = (): number => {
  const kept = screen().perMm ?? keptPerMm();
  return kept === null ? NOMINAL : Math.min(PER_MM.most, Math.max(PER_MM.least, cssPerMm(kept)));
};

const isTrueSize = ({ perMm, fitted }: Screen, zoom: number | null): boolean =>
  perMm !== null && zoom !== null && Math.abs((zoom * fitted.scale) / cssPerMm(perMm) - 1) < HAIR;
/** Two sizes nearer than this are one: no eye sees it. */
const HAIR = 1e-6;

/** The drawing was fitted anew: it stays at true size where it was. */
export const tellFitted = (fitted: Screen["fitted"]): void => {
  const { view } = studio();
  const { perMm } = screen();
  const was = isTrueSize(screen(), view?.zoom ?? null);
  useScreen.setState({ fitted });
  if (!was || !view || perMm === null) return;
  const zoom = cssPerMm(perMm) / fitted.scale;
  if (zoom !== view.zoom) put({ view: zoomed(view, zoom / view.zoom, fitted.x, fitted.y) });
};

const show = (perMm: number): void => {
  const { scale, x, y } = screen().fitted;
  put({ view: zoomed(FITTED, cssPerMm(perMm) / scale, x, y) });
};

/** As large as life; the screen is asked about once. */
export const showTrueSize = (): void => {
  const perMm = screen().perMm ?? keptPerMm();
  if (perMm === null) {
    useScreen.setState({ setting: true });
    return;
  }
  useScreen.setState({ perMm });
  show(perMm);
};

export const setScreen = (): void => useScreen.setState({ setting: true });

export const keepPerMm = (css: number): void => {
  const perMm = css * devicePixelRatio;
  useScreen.setState({ perMm, setting: false });
  try {
    localStorage.setItem(KEY, String(perMm));
  } catch {
    // It is true until the page is closed.
  }
  show(perMm);
};

/** Whether the drawing is as large as life just now. */
export const useIsTrueSize = (zoom: number | null): boolean =>
  useScreen((state) => isTrueSize(state, zoom));
