/** All done; some input was refused, the rest is done; the program itself failed (contract). */
export type ExitStatus = 0 | 1 | 2;
export const DONE = 0;
export const FAILED = 1;
export const REFUSED = 2;
