const SIGNALS = ["SIGINT", "SIGTERM", "SIGHUP"] as const;

/**
 * What to do when a run is cut off, before the process ends as the signal wants it. Gives back how
 * to say that the run is over.
 */
export const whenCutOff = (clear: () => void | Promise<void>): (() => void) => {
  const isOver = () => {
    for (const signal of SIGNALS) process.off(signal, cutOff);
  };
  const cutOff = async (signal: NodeJS.Signals): Promise<void> => {
    isOver(); // a second signal ends it at once
    try {
      await clear();
    } finally {
      process.kill(process.pid, signal);
    }
  };
  for (const signal of SIGNALS) process.on(signal, cutOff);
  return isOver;
};
