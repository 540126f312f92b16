import { create } from "zustand";

const KEY = "ribwright:bringing";

const wasOpen = (): boolean => {
  try {
    return sessionStorage.getItem(KEY) !== null;
  } catch {
    return false;
  }
};

/**
 * Whether a block is being brought in, in place of the studio; a reload comes back to it. What is
 * brought, and all that shows it, loads only with the door.
 */
export const useBringing = create<{ readonly open: boolean }>()(() => ({ open: false }));

export const isBringing = (): boolean => useBringing.getState().open;

const turn = (open: boolean): void => {
  useBringing.setState({ open });
  try {
    if (open) sessionStorage.setItem(KEY, "open");
    else sessionStorage.removeItem(KEY);
  } catch {
    // Without room for it a reload begins at the work.
  }
};

export const openBringing = (): void => turn(true);
export const leaveBringing = (): void => turn(false);

/** After a reload: where the door stood open, it stands open again. */
export const reopenBringing = (): void => {
  if (wasOpen()) useBringing.setState({ open: true });
};
