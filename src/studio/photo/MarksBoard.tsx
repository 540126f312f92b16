import { useEffect } from "react";
import type { SeenMark } from "../../trace/photo/mark.ts";
import { studio } from "../state/store.ts";
import { printNumber } from "../units/printLength.ts";
import { Board } from "./Board.tsx";
import { begin } from "./begin.ts";
import { look, useEye } from "./eye.ts";
import { type Fit, toPx } from "./fit.ts";
import { Grip } from "./Grip.tsx";
import { Magnifier } from "./Magnifier.tsx";
import { dropMark, moveMark, photoIn, tapPicture } from "./markActions.ts";
import { nextName } from "./marks.ts";
import { usePhotoSay } from "./photoSay.ts";
import type { Photo } from "./photoWork.ts";
import { open } from "./picking.ts";
import { filesOf } from "./pictureFiles.ts";
import { usePiece } from "./piece.ts";

const STEPS = { plain: 1, shift: 0.1, ctrl: 10 };

const pixels = (value: number): string => printNumber(value, 1, studio().language);

type MarkProps = { readonly photo: Photo; readonly mark: SeenMark; readonly fit: Fit };

function MarkGrip({ photo, mark, fit }: MarkProps) {
  const say = usePhotoSay();
  const { name, at } = mark;
  const id = `mark.${name}`;
  const isHeld = useEye((s) => s.held === id);
  return (
    <Grip
      id={id}
      label={say("photo.mark", { name, x: pixels(at.x), y: pixels(at.y) })}
      at={at}
      fit={fit}
      steps={STEPS}
      isHeld={isHeld}
      onHold={() => look({ held: id })}
      onMove={(to, gesture) => moveMark(photo.id, name, to, gesture)}
      onKey={(key) => {
        if (key !== "Delete" && key !== "Backspace") return false;
        dropMark(photo.id, name);
        return true;
      }}
    >
      <circle className="markHalo" r="9" />
      <circle className="markRing" r="9" />
      <path className="markCross" d="M-4 0h8M0 -4v8" />
      <text className="fig halo" x="13" y="-8">
        {name}
      </text>
    </Grip>
  );
}

/** Straight edges, known lengths, and the first end of the next. */
function Straights({ photo, fit }: { readonly photo: Photo; readonly fit: Fit }) {
  const end = useEye((s) => s.end);
  const lines = [
    ...photo.edges.map(([from, to]) => ({ from, to })),
    ...photo.lengths.map(({ from, to }) => ({ from, to })),
  ];
  return (
    <>
      {lines.map(({ from, to }) => {
        const [a, b] = [toPx(fit, from), toPx(fit, to)];
        return (
          <g key={`${from.x},${from.y},${to.x},${to.y}`}>
            <path className="shownHalo" d={`M${a.x} ${a.y}L${b.x} ${b.y}`} />
            <path className="shownLine" d={`M${a.x} ${a.y}L${b.x} ${b.y}`} />
          </g>
        );
      })}
      {end ? (
        <circle className="shownEnd" cx={toPx(fit, end).x} cy={toPx(fit, end).y} r="5" />
      ) : null}
    </>
  );
}

/** Brings back the pictures of a piece after a reload. */
const useOpened = (photos: readonly Photo[]): void => {
  useEffect(() => {
    const bring = async (): Promise<void> => {
      for (const picture of await filesOf(photos)) await open(picture);
    };
    begin(bring());
  }, [photos]);
};

const useHint = (photo: Photo): string => {
  const say = usePhotoSay();
  const tool = useEye((s) => s.tool);
  const end = useEye((s) => s.end);
  if (end) return say("photo.tool.secondEnd");
  if (tool === "edge") return say("photo.hint.edge");
  if (tool === "length") return say("photo.hint.length");
  if (tool === "look") return say("photo.hint.look");
  return say("photo.hint.mark", { name: nextName(photo) });
};

function Shown({ photo, bitmap }: { readonly photo: Photo; readonly bitmap: ImageBitmap }) {
  const say = usePhotoSay();
  const held = useEye((s) => s.held);
  const hint = useHint(photo);
  const inHand = photo.marks.find(({ name }) => held === `mark.${name}`);
  return (
    <Board
      label={say("photo.board")}
      bitmap={bitmap}
      box={{ left: 0, top: 0, right: photo.width, bottom: photo.height }}
      isFaint={false}
      hint={hint}
      onTap={tapPicture}
      aside={inHand ? <Magnifier photo={photo} name={inHand.name} at={inHand.at} /> : null}
    >
      {(fit) => (
        <>
          <Straights photo={photo} fit={fit} />
          {photo.marks.map((mark) => (
            <MarkGrip key={mark.name} photo={photo} mark={mark} fit={fit} />
          ))}
        </>
      )}
    </Board>
  );
}

/** The picture itself, with its marks. */
export function MarksBoard() {
  const piece = usePiece();
  const photo = useEye((s) => photoIn(piece, s.photo));
  const opened = useEye((s) => (photo ? s.opened[photo.id] : undefined));
  useOpened(piece.photos);
  if (!photo || !opened) return <section className="table photoBoard" aria-hidden="true" />;
  return <Shown photo={photo} bitmap={opened.preview} />;
}
