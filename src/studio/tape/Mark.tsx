import type { Verdict } from "../../checks/check.ts";

export type State = Verdict | "waits";

/** A state by its shape: one upright stitch, an open loop, a filled square, a dotted stitch. */
export function Mark({ state }: { readonly state: State }) {
  return (
    <svg className="mk" viewBox="0 0 14 14" aria-hidden="true">
      {state === "sound" ? <path d="M7 1v12" /> : null}
      {state === "waits" ? <path d="M7 1v12" strokeDasharray="2 2" /> : null}
      {state === "attend" ? <circle cx="7" cy="7" r="5" /> : null}
      {state === "stop" ? <rect className="f" x="1" y="1" width="12" height="12" /> : null}
    </svg>
  );
}
