import { useRef } from "react";
import { openFile } from "../files/opening.ts";

type Props = { readonly text: string; readonly className?: string };

/** A button that opens the device's file window and takes what is chosen. */
export function OpenFile({ text, className }: Props) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" className={className} onClick={() => input.current?.click()}>
        {text}
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".json,application/json"
        aria-label={text}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file) openFile(file);
        }}
      />
    </>
  );
}
