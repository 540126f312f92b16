import { useIsMade } from "../state/made.ts";
import { useSay } from "../words/say.ts";
import { showInClass } from "./teaching.ts";

/** Opens the step-through; without a garment there is nothing to show. */
export function ShowInClass({ className }: { readonly className?: string }) {
  const say = useSay();
  const made = useIsMade();
  return (
    <button
      type="button"
      className={className}
      data-opens-class
      disabled={!made}
      onClick={showInClass}
    >
      {say("class.show")}
    </button>
  );
}
