import { useEffect, useState } from "react";

/** A class step takes so long (design, section 16), in ms. */
const STEP = 480;

const isStill = (): boolean => matchMedia("(prefers-reduced-motion: reduce)").matches;

/** Slow, fast, slow. */
const eased = (t: number): number => t * t * (3 - 2 * t);

/** From 0 to 1 while a step's drawing moves, anew for each `run`; with reduced motion 1 at once. */
export const useShare = (run: string): number => {
  const [moved, setMoved] = useState({ run: "", share: 0 });
  useEffect(() => {
    if (isStill()) {
      setMoved({ run, share: 1 });
      return;
    }
    let frame = 0;
    let begun: number | null = null;
    const next = (now: number) => {
      begun ??= now;
      const t = Math.min(1, (now - begun) / STEP);
      setMoved({ run, share: eased(t) });
      if (t < 1) frame = requestAnimationFrame(next);
    };
    frame = requestAnimationFrame(next);
    return () => cancelAnimationFrame(frame);
  }, [run]);
  return moved.run === run ? moved.share : isStill() ? 1 : 0;
};
