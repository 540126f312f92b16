import type { ReactNode } from "react";

type Props = { readonly children: ReactNode; readonly className?: string };

/** Marks of a drawing that a screen reader passes over: the facts stand in words elsewhere. */
export function Unread({ children, className }: Props) {
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of marks takes no focus
    <g aria-hidden="true" className={className} pointerEvents="none">
      {children}
    </g>
  );
}
