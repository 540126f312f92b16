import type { ReactNode } from "react";
import type { Fault } from "../../drafting/fault.ts";
import { usePrint } from "../state/print.ts";
import { inWords } from "./inWords.ts";

type Props = { readonly fault: Fault; readonly children?: ReactNode };

/** What is wrong, in one sentence, and what to do; with the cure as a button where there is one. */
export function ToldFault({ fault, children }: Props) {
  const print = usePrint();
  return (
    <div className="refuse" role="alert">
      <b>{inWords(fault.reason, print)}</b> {inWords(fault.do, print)}
      {children}
    </div>
  );
}
