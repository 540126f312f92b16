/** Work that tells by itself what goes wrong, begun where nobody waits for it. */
export const begin = (work: Promise<unknown>): void => {
  work.catch(() => undefined);
};
