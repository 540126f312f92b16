import { useEffect, useState } from "react";

/** Keeps the screen on while it is used, where the browser allows; true while it does. */
export const useWakeLock = (): boolean => {
  const [awake, setAwake] = useState(false);
  useEffect(() => {
    if (!("wakeLock" in navigator)) return;
    let left = false;
    let lock: WakeLockSentinel | null = null;
    const release = (held: WakeLockSentinel | null) => held?.release().catch(() => undefined);
    const keep = (held: WakeLockSentinel) => {
      if (left) return release(held);
      lock = held;
      setAwake(true);
      held.addEventListener("release", () => setAwake(false));
    };
    // A device that saves its battery may refuse; the page works as well without.
    const take = () => {
      if (document.visibilityState !== "visible") return;
      navigator.wakeLock.request("screen").then(keep, () => setAwake(false));
    };
    take();
    // The browser lets go when the page is hidden: it is asked again when it shows.
    document.addEventListener("visibilitychange", take);
    return () => {
      left = true;
      document.removeEventListener("visibilitychange", take);
      release(lock);
    };
  }, []);
  return awake;
};
