import { useMemo } from "react";
import type { Picture } from "../../guide/picture.ts";
import { tell } from "../../guide/words/tell.ts";
import { drawnPicture, PICTURE_LETTERS } from "./pictureShapes.ts";
import { useVoice } from "./voice.ts";

type Props = { readonly picture: Picture; readonly width: number; readonly height: number };

/** One picture of the guide with its caption, drawn from the body's own pieces. */
export function PictureView({ picture, width, height }: Props) {
  const voice = useVoice();
  const drawn = useMemo(
    () => drawnPicture(picture, { width, height }, voice),
    [picture, width, height, voice],
  );
  const title = tell(voice, picture.title);
  return (
    <figure className="guidePicture">
      <svg
        role="img"
        aria-label={[title, ...drawn.words.map(({ text }) => text)].join(", ")}
        width={drawn.width}
        height={drawn.height}
        viewBox={`0 0 ${drawn.width} ${drawn.height}`}
      >
        {drawn.shapes.map(({ kind, d }) => (
          <path key={`${kind} ${d}`} className={`gp-${kind}`} d={d} />
        ))}
        {drawn.words.map(({ x, y, from, text }) => (
          <text
            key={`${text} ${x} ${y}`}
            className="haloP"
            x={x}
            y={y}
            fontSize={PICTURE_LETTERS}
            textAnchor={from}
          >
            {text}
          </text>
        ))}
      </svg>
      <figcaption>{title}</figcaption>
    </figure>
  );
}
