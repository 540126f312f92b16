import { sheetsOf } from "../state/laidOut.ts";
import { useMade } from "../state/made.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { PaperFiles } from "./PaperFiles.tsx";
import { PaperSentences } from "./PaperSentences.tsx";

/** Paper and printer, how the pieces lie on the sheets, and the files. */
export function Paper() {
  const say = useSay();
  const made = useMade();
  const { paper, print } = useStudio((s) => s.history.present);
  if (!made) return <p className="refuse">{say("block.none")}</p>;
  const { pieces } = made.garment;
  const sheets = sheetsOf(pieces, { paper, print });
  return (
    <>
      <PaperSentences pieces={pieces} sheets={sheets} />
      <PaperFiles made={made} sheets={sheets} />
    </>
  );
}
