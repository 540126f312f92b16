/** How the maker moved the table away from the fitted drawing: px = fitted px × zoom + shift. */
export type View = { readonly zoom: number; readonly x: number; readonly y: number };

export type Size = { readonly width: number; readonly height: number };

export const FITTED: View = { zoom: 1, x: 0, y: 0 };

/** Closer by a quarter, as the keys go (design, section 7). */
export const CLOSER = 1.25;
const MOST_ZOOM = 24;
const LEAST_ZOOM = 0.25;

/** The view zoomed by `by`, with the point under (x, y) kept where it is. */
export const zoomed = (view: View, by: number, x: number, y: number): View => {
  const zoom = Math.min(MOST_ZOOM, Math.max(LEAST_ZOOM, view.zoom * by));
  const grown = zoom / view.zoom;
  return { zoom, x: x - (x - view.x) * grown, y: y - (y - view.y) * grown };
};

export const moved = (view: View, x: number, y: number): View => ({
  ...view,
  x: view.x + x,
  y: view.y + y,
});
