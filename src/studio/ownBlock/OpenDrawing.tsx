import { ChooseFile } from "../shell/ChooseFile.tsx";
import { openDrawing } from "./openDrawing.ts";

type Props = { readonly text: string; readonly className: string };

const DRAWINGS = ".svg,.pdf,image/svg+xml,application/pdf";

/** A button that opens an SVG or a PDF. */
export function OpenDrawing(props: Props) {
  return <ChooseFile {...props} kind="drawing" accept={DRAWINGS} onFile={openDrawing} />;
}
