import type { Fault } from "../../drafting/fault.ts";
import { useStudio } from "../state/store.ts";
import { useEye } from "./eye.ts";
import { faultIn } from "./faultWords.ts";

/** What was refused and what to do, in the maker's language. */
export function FaultNote({ fault }: { readonly fault: Fault }) {
  const language = useStudio((s) => s.language);
  const told = faultIn(fault, language);
  return (
    <p className="refuse" role="alert" data-fault>
      <b>{told.reason}</b> {told.do}
    </p>
  );
}

/** The last thing that was refused, until something else is done. */
export function EyeFault() {
  const fault = useEye((s) => s.fault);
  return fault ? <FaultNote fault={fault} /> : null;
}
