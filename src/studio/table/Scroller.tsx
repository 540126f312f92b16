import type { ReactNode } from "react";

type Props = {
  readonly label: string;
  readonly className: string;
  readonly children: ReactNode;
};

/** What is taller than the table scrolls, and is reached by keyboard for that. */
export function Scroller({ label, className, children }: Props) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must take the focus
    <section className={className} tabIndex={0} aria-label={label}>
      {children}
    </section>
  );
}
