import { useEffect, useRef } from "react";
import type { Pixel } from "../../trace/photo/picture.ts";
import { begin } from "./begin.ts";
import { askPictures } from "./photoClient.ts";
import { usePhotoSay } from "./photoSay.ts";
import type { Photo } from "./photoWork.ts";
import { filesOf } from "./pictureFiles.ts";

/** So many pixels to every side of the mark, each shown so many px wide. */
const REACH = 12;
const TIMES = 6;
const SIDE = (2 * REACH + 1) * TIMES;

const paint = (canvas: HTMLCanvasElement, patch: ImageBitmap, at: Pixel): void => {
  const context = canvas.getContext("2d");
  if (!context) return;
  context.imageSmoothingEnabled = false;
  context.drawImage(patch, 0, 0, SIDE, SIDE);
  const cross = {
    x: (at.x - Math.floor(at.x) + REACH) * TIMES,
    y: (at.y - Math.floor(at.y) + REACH) * TIMES,
  };
  for (const [colour, width] of [
    ["#ffffff", 3],
    ["#000000", 1],
  ] as const) {
    context.strokeStyle = colour;
    context.lineWidth = width;
    context.beginPath();
    context.moveTo(cross.x - 22, cross.y);
    context.lineTo(cross.x + 22, cross.y);
    context.moveTo(cross.x, cross.y - 22);
    context.lineTo(cross.x, cross.y + 22);
    context.stroke();
  }
};

type Props = { readonly photo: Photo; readonly name: string; readonly at: Pixel };

/** The mark in hand, pixel by pixel, for a nudge of less than one. */
export function Magnifier({ photo, name, at }: Props) {
  const say = usePhotoSay();
  const canvas = useRef<HTMLCanvasElement>(null);
  const { x, y } = at;
  useEffect(() => {
    let isWanted = true;
    const show = async (): Promise<void> => {
      const [picture] = await filesOf([photo]);
      if (!picture || !isWanted) return;
      const told = await askPictures("patch", { picture, at: { x, y }, reach: REACH });
      if ("found" in told && isWanted && canvas.current)
        paint(canvas.current, told.found, { x, y });
    };
    begin(show());
    return () => {
      isWanted = false;
    };
  }, [photo, x, y]);
  return (
    <canvas
      ref={canvas}
      className={x > photo.width / 2 ? "magnifier atLeft" : "magnifier"}
      width={SIDE}
      height={SIDE}
      role="img"
      aria-label={say("photo.magnifier", { name })}
    />
  );
}
