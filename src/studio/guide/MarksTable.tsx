import type { MarkTable } from "../../guide/bandMarks.ts";
import { tell } from "../../guide/words/tell.ts";
import { said } from "../../guide/words/told.ts";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { useVoice } from "./voice.ts";

const HEADS = [
  said("table.onBand"),
  said("table.onOpening"),
  said("table.bandNext"),
  said("table.openingNext"),
  said("table.stretch"),
];

/** Where the marks of a band fall, and how far it is stretched from each to the next. */
export function MarksTable({ marks }: { readonly marks: MarkTable }) {
  const say = useSay();
  const p = usePrint();
  const voice = useVoice();
  return (
    <table className="marks">
      <caption>{say("making.marks", { unit: p.unit })}</caption>
      <thead>
        <tr>
          <th scope="col">{tell(voice, said("table.mark"))}</th>
          {HEADS.map((head) => (
            <th key={head.key} scope="col" className="num">
              {tell(voice, head)}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {marks.rows.map(({ n, to, onBand, onOpening, band, opening, stretch }) => (
          <tr key={n}>
            <th scope="row">
              {n} {tell(voice, to)}
            </th>
            <td className="num">{p.length(onBand)}</td>
            <td className="num">{p.length(onOpening)}</td>
            <td className="num">{p.length(band)}</td>
            <td className="num">{p.length(opening)}</td>
            <td className="num">{voice.percent(stretch)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
