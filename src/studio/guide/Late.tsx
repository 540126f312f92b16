import { type ComponentType, lazy, type ReactNode, Suspense } from "react";
import { useSay } from "../words/say.ts";

function NotLoaded() {
  const say = useSay();
  return <p className="refuse">{say("late.failed")}</p>;
}

type Brought<Props> = { readonly default: ComponentType<Props> };

/** A part whose words and drawings load when it is first shown; where they cannot, it says so. */
export const late = <Props extends object>(load: () => Promise<Brought<Props>>) =>
  lazy(() => load().catch((): Brought<Props> => ({ default: NotLoaded })));

/** What stands there while a part loads: nothing at first, then a word. */
export function Late({ children }: { readonly children: ReactNode }) {
  const say = useSay();
  return (
    <Suspense fallback={<p className="note lateNote">{say("late.loads")}</p>}>{children}</Suspense>
  );
}
