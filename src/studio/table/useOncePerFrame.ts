import { useRef } from "react";

/** Runs the last thing asked for once a frame: a pointer may tell more often than is drawn. */
export const useOncePerFrame = () => {
  const waits = useRef<{ readonly frame: number; readonly run: () => void } | null>(null);
  const drop = () => {
    if (waits.current) cancelAnimationFrame(waits.current.frame);
    waits.current = null;
  };
  const flush = () => {
    const { run } = waits.current ?? {};
    drop();
    run?.();
  };
  const ask = (run: () => void) => {
    const frame = waits.current?.frame ?? requestAnimationFrame(flush);
    waits.current = { frame, run };
  };
  return { ask, flush, drop };
};
