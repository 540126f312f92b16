import { useRef } from "react";

type Props = {
  readonly text: string;
  readonly className?: string;
  /** What it is for; it is known by this to whoever looks for it. */
  readonly kind: "handbook" | "drawing" | "picture" | "class";
  /** Endings and media types that the device's window offers. */
  readonly accept: string;
  readonly onFile: (file: File) => void;
};

/** A button that opens the device's file window and hands on what is chosen. */
export function ChooseFile({ text, className, kind, accept, onFile }: Props) {
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
        accept={accept}
        aria-label={text}
        data-file={kind}
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file) onFile(file);
        }}
      />
    </>
  );
}
