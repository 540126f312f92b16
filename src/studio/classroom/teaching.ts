import { create } from "zustand";

/** Whether the step-through stands in place of the studio. */
export const useTeaching = create<{ readonly open: boolean }>()(() => ({ open: false }));

export const isTeaching = (): boolean => useTeaching.getState().open;
export const showInClass = (): void => useTeaching.setState({ open: true });
export const leaveClass = (): void => useTeaching.setState({ open: false });
