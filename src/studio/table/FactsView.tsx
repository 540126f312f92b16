import { useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import { PIECE_NAMES, type PieceName } from "../../drafting/piece.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { piecesFor } from "./chapterPieces.ts";
import { edgeWord } from "./edgeWord.ts";
import { type Facts, factsOf } from "./facts.ts";
import { type Place, partnersOf, place } from "./lines.ts";
import { Scroller } from "./Scroller.tsx";

type Named = (edge: Facts["points"][number]["edge"]) => string;
type TableProps = { readonly facts: Facts; readonly named: Named; readonly title: string };

function Points({ facts, named, title }: TableProps) {
  const say = useSay();
  const p = usePrint();
  return (
    <table>
      <caption>{say("facts.points", { piece: title })}</caption>
      <thead>
        <tr>
          <th scope="col">{say("facts.point")}</th>
          <th scope="col" className="num">{`${say("facts.across")}, ${p.unit}`}</th>
          <th scope="col" className="num">{`${say("facts.down")}, ${p.unit}`}</th>
        </tr>
      </thead>
      <tbody>
        {facts.points.map(({ edge, at }) => (
          <tr key={edge}>
            <td>{say("facts.start", { edge: named(edge) })}</td>
            <td className="num">{p.length(at.x)}</td>
            <td className="num">{p.length(at.y)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

type EdgesProps = TableProps & {
  readonly partner: (edge: Facts["points"][number]["edge"]) => string;
};

function Edges({ facts, named, title, partner }: EdgesProps) {
  const say = useSay();
  const p = usePrint();
  return (
    <table>
      <caption>{say("facts.edges", { piece: title })}</caption>
      <thead>
        <tr>
          <th scope="col">{say("facts.edge")}</th>
          <th scope="col" className="num">{`${say("facts.length")}, ${p.unit}`}</th>
          <th scope="col">{say("facts.shape")}</th>
          <th scope="col">{say("facts.partner")}</th>
        </tr>
      </thead>
      <tbody>
        {facts.edges.map(({ edge, length, curved }) => (
          <tr key={edge}>
            <td>{named(edge)}</td>
            <td className="num">{p.length(length)}</td>
            <td>{say(curved ? "facts.curved" : "facts.straight")}</td>
            <td>{partner(edge)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function Corners({ facts, named, title }: TableProps) {
  const say = useSay();
  const p = usePrint();
  return (
    <table>
      <caption>{say("facts.angles", { piece: title })}</caption>
      <thead>
        <tr>
          <th scope="col">{say("facts.corner")}</th>
          <th scope="col" className="num">
            {say("facts.angle")}
          </th>
        </tr>
      </thead>
      <tbody>
        {facts.corners.map(({ from, to, angle }) => (
          <tr key={from}>
            <td>{say("facts.between", { first: named(from), second: named(to) })}</td>
            <td className="num">{`${p.number(angle, 1)}°`}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** The drawing's facts in place of the drawing: points, edges and corners of one piece. */
export function FactsView({ garment }: { readonly garment: Garment }) {
  const say = useSay();
  const held = useStudio((s) => s.heldPiece);
  const chapter = useStudio((s) => s.chapter);
  const [picked, setPicked] = useState<PieceName>(held ?? "front");
  const pieces = piecesFor(chapter, garment);
  const piece = pieces.find(({ name }) => name === picked) ?? pieces[0];
  if (!piece) return null;
  const facts = factsOf(piece);
  const title = say(`piece.${piece.name}`).toLowerCase();
  const named: Named = (edge) => say(`edge.${edge}`);
  const partner = (edge: Facts["points"][number]["edge"]) =>
    partnersOf(garment.seams, place(piece.name, edge))
      .map((at: Place) => edgeWord(at, say))
      .join("; ");
  return (
    <Scroller className="facts" label={say("table.read")}>
      <p className="pick">
        {`${say("facts.piece")}: `}
        <span className="w">
          <select
            aria-label={say("facts.piece")}
            value={piece.name}
            onChange={(event) =>
              setPicked(PIECE_NAMES.find((name) => name === event.target.value) ?? "front")
            }
          >
            {pieces.map(({ name }) => (
              <option key={name} value={name}>
                {say(`piece.${name}`)}
              </option>
            ))}
          </select>
        </span>
      </p>
      <Edges facts={facts} named={named} title={title} partner={partner} />
      <Points facts={facts} named={named} title={title} />
      <Corners facts={facts} named={named} title={title} />
    </Scroller>
  );
}
