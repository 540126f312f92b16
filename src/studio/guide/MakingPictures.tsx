import { useEffect, useMemo, useRef } from "react";
import type { Garment } from "../../bands/garment.ts";
import { makingUp } from "../../guide/makingUp.ts";
import type { Picture } from "../../guide/picture.ts";
import type { GuideStep } from "../../guide/step.ts";
import { tell } from "../../guide/words/tell.ts";
import { usePrint } from "../state/print.ts";
import { useStudio } from "../state/store.ts";
import { Ground } from "../table/Ground.tsx";
import { Scroller } from "../table/Scroller.tsx";
import type { Size } from "../table/view.ts";
import { useSay } from "../words/say.ts";
import { PictureView } from "./PictureView.tsx";
import { isSewn } from "./sewn.ts";
import { useVoice } from "./voice.ts";

type Props = { readonly garment: Garment; readonly size: Size };
type Numbered = { readonly step: GuideStep; readonly place: number };

const MARGIN = 24;
const HIGH = 200;
/** Above this width two pictures stand side by side, in px. */
const TWO = 560;

/** Long and low pictures take the whole width. */
const isLong = ({ view }: Picture): boolean =>
  view.right - view.left > 3 * (view.bottom - view.top);

function StepPictures({ step, place, room }: Numbered & { readonly room: number }) {
  const voice = useVoice();
  const half = room > TWO ? room / 2 - MARGIN : room - MARGIN;
  return (
    <li data-pictures={step.id}>
      <p className="guideTitle">
        <b>{place}</b> {tell(voice, step.title)}
      </p>
      <div className="guideRow">
        {step.pictures.map((picture) => (
          <PictureView
            key={picture.title.key}
            picture={picture}
            width={Math.max(120, isLong(picture) ? room - MARGIN : half - MARGIN)}
            height={HIGH}
          />
        ))}
      </div>
    </li>
  );
}

/** The pictures of every step that has some; the first step that is not sewn comes into sight. */
export function MakingPictures({ garment, size }: Props) {
  const say = useSay();
  const { unit } = usePrint();
  const list = useRef<HTMLOListElement>(null);
  const steps = useMemo(() => makingUp(garment), [garment]);
  const inHand = useStudio((s) => steps.find(({ id }) => !isSewn(s.history.present, id))?.id);
  useEffect(() => {
    list.current
      ?.querySelector(`[data-pictures="${inHand}"]`)
      ?.scrollIntoView({ block: "nearest" });
  }, [inHand]);
  const shown = steps
    .map((step, i): Numbered => ({ step, place: i + 1 }))
    .filter(({ step }) => step.pictures.length > 0);
  return (
    <>
      <svg className="draw" aria-hidden="true">
        <Ground scale={0.5} view={null} unit={unit} />
      </svg>
      <Scroller className="board scrolls" label={say("head.making")}>
        <ol ref={list} className="guideSheet">
          {shown.map(({ step, place }) => (
            <StepPictures key={step.id} step={step} place={place} room={size.width - 2 * MARGIN} />
          ))}
        </ol>
      </Scroller>
    </>
  );
}
