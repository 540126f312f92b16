import { useEffect, useState } from "react";
import { openFile } from "../files/opening.ts";
import { useSay } from "../words/say.ts";

/** A file may be dropped anywhere on the page. */
export function DropFile() {
  const say = useSay();
  const [over, setOver] = useState(false);
  useEffect(() => {
    const onDragOver = (event: DragEvent) => {
      event.preventDefault();
      setOver(true);
    };
    const onDragLeave = (event: DragEvent) => {
      if (event.relatedTarget === null) setOver(false);
    };
    const onDrop = (event: DragEvent) => {
      event.preventDefault();
      setOver(false);
      const file = event.dataTransfer?.files[0];
      if (file) openFile(file);
    };
    addEventListener("dragover", onDragOver);
    addEventListener("dragleave", onDragLeave);
    addEventListener("drop", onDrop);
    return () => {
      removeEventListener("dragover", onDragOver);
      removeEventListener("dragleave", onDragLeave);
      removeEventListener("drop", onDrop);
    };
  }, []);
  return over ? <div className="dropHere">{say("file.dropHere")}</div> : null;
}
