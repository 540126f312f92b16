/** Where a command speaks: results to `out`, everything else to `err`. */
export type Voice = {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** A person watches: a line that is written over may be shown. */
  readonly isWatched: boolean;
};

export type Progress = { readonly at: (done: number) => void; readonly end: () => void };

const BETWEEN = 100; // ms; ours: quick enough to be alive, slow enough to be read
const ERASE_LINE = "\r\u001b[K";

/** One line that counts up and is gone at the end; nothing where nobody watches. */
export const progressOn = ({ err, isWatched }: Voice, total: number, what: string): Progress => {
  if (!isWatched) return { at: () => undefined, end: () => undefined };
  let last = 0;
  return {
    at: (done) => {
      const now = Date.now();
      if (now - last < BETWEEN) return;
      last = now;
      err(`${ERASE_LINE}${done} of ${total} ${what}`);
    },
    end: () => err(ERASE_LINE),
  };
};
