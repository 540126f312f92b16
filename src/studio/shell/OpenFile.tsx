import { openFile } from "../files/opening.ts";
import { ChooseFile } from "./ChooseFile.tsx";

type Props = { readonly text: string; readonly className?: string };

/** A button that opens a handbook or a block file. */
export function OpenFile(props: Props) {
  return (
    <ChooseFile {...props} kind="handbook" accept=".json,application/json" onFile={openFile} />
  );
}
