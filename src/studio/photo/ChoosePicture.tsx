import { ChooseFile } from "../shell/ChooseFile.tsx";

type Props = {
  readonly text: string;
  readonly className: string;
  readonly onFile: (file: File) => void;
};

/** A button that opens a picture. */
export function ChoosePicture(props: Props) {
  return <ChooseFile {...props} kind="picture" accept="image/jpeg,image/png,image/webp" />;
}
