import { useRef } from "react";

type Props = {
  readonly text: string;
  readonly className: string;
  readonly onFile: (file: File) => void;
};

/** A button that opens the device's file window for a picture. */
export function ChooseFile({ text, className, onFile }: Props) {
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
        accept="image/jpeg,image/png,image/webp"
        aria-label={text}
        data-picture
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = "";
          if (file) onFile(file);
        }}
      />
    </>
  );
}
