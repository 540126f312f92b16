import { useRef } from "react";
import { openDrawing } from "./openDrawing.ts";

type Props = { readonly text: string; readonly className: string };

/** A button that opens the device's file window for an SVG or a PDF. */
export function OpenDrawing({ text, className }: Props) {
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
        accept=".svg,.pdf,image/svg+xml,application/pdf"
        aria-label={text}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file) openDrawing(file);
        }}
      />
    </>
  );
}
