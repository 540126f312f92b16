import { type RefObject, useEffect, useState } from "react";
import type { Size } from "./view.ts";

/** The size of an element in px, as it is and as it changes. */
export const useSize = (element: RefObject<Element | null>): Size => {
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  useEffect(() => {
    const found = element.current;
    if (!found) return;
    const watcher = new ResizeObserver(([entry]) => {
      if (!entry) return;
      const { width, height } = entry.contentRect;
      setSize((was) => (was.width === width && was.height === height ? was : { width, height }));
    });
    watcher.observe(found);
    return () => watcher.disconnect();
  }, [element]);
  return size;
};
