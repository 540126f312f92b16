import { useMemo, useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import { assumedSentences, clothSentences } from "../../guide/clothWords.ts";
import { tell } from "../../guide/words/tell.ts";
import {
  type ClothNeeded as ClothNeededSum,
  clothNeeded,
  type Needed,
} from "../../lay/clothNeeded.ts";
import { BODY_WIDTHS, RIB_WIDTHS } from "../../lay/data/clothWidths.ts";
import { Choice } from "../page/Choice.tsx";
import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { useVoice } from "./voice.ts";

/** Most often sold, of the widths that are reckoned with. In mm; common practice, no source. */
const FIRST = { width: "1500", laid: "folded", rib: "1000" } as const;

/** How much is bought of each, in words. */
const useResult = (body: Needed | undefined, rib: Needed | undefined): string => {
  const say = useSay();
  const p = usePrint();
  const buy = (needed: Needed | undefined) =>
    needed?.kind === "fits" ? p.full(needed.buy) : say("cloth.neededNone");
  return say("cloth.neededBoth", { body: buy(body), rib: buy(rib) });
};

type Chosen = Readonly<Record<keyof typeof FIRST, string>>;
type Choose = (name: keyof typeof FIRST) => (value: string) => void;

/** The sentence's three words: width and lay of the cloth, width of the rib. */
const useChoices = (chosen: Chosen, ways: readonly Needed["laid"][], choose: Choose) => {
  const say = useSay();
  const p = usePrint();
  const widths = (list: typeof BODY_WIDTHS) =>
    list.map(({ width }) => ({ value: `${width}`, text: p.full(width) }));
  const laid = { opened: say("cloth.neededOpened"), folded: say("cloth.neededFolded") };
  const choice = (
    name: keyof typeof FIRST,
    label: string,
    options: readonly { readonly value: string; readonly text: string }[],
  ) => (
    <Choice
      id={`cloth.${name}`}
      label={label}
      value={chosen[name]}
      options={options}
      onChoose={choose(name)}
    />
  );
  return {
    width: choice("width", say("cloth.neededWidth"), widths(BODY_WIDTHS)),
    laid: choice(
      "laid",
      say("cloth.neededLaid"),
      ways.map((way) => ({ value: way, text: laid[way] })),
    ),
    ribWidth: choice("rib", say("cloth.neededRib"), widths(RIB_WIDTHS)),
  };
};

function Assumed({ needed }: { readonly needed: ClothNeededSum }) {
  const say = useSay();
  const voice = useVoice();
  return (
    <details className="fold assumed">
      <summary>{say("cloth.neededAssumed")}</summary>
      <ul>
        {assumedSentences(needed).map((sentence) => (
          <li key={tell(voice, sentence)}>{tell(voice, sentence)}</li>
        ))}
      </ul>
    </details>
  );
}

/** How much cloth and rib this garment takes, and what that takes for granted. */
export function ClothNeeded({ garment }: { readonly garment: Garment }) {
  const say = useSay();
  const voice = useVoice();
  const [chosen, setChosen] = useState<Chosen>(FIRST);
  const needed = useMemo(
    () => clothNeeded(garment, { body: [Number(chosen.width)], rib: [Number(chosen.rib)] }),
    [garment, chosen.width, chosen.rib],
  );
  const body = needed.body.find((one) => one.laid === chosen.laid) ?? needed.body[0];
  const shown = { ...needed, body: body ? [body] : [] };
  const choices = useChoices(
    { ...chosen, laid: body?.laid ?? chosen.laid },
    needed.body.map(({ laid }) => laid),
    (name) => (value) => setChosen((was) => ({ ...was, [name]: value })),
  );
  const result = <b data-cloth-result>{useResult(body, needed.rib[0])}</b>;
  const narrow = clothSentences(shown)
    .filter(({ key }) => key === "cloth.narrow")
    .map((sentence) => tell(voice, sentence));
  return (
    <Clause text={say("cloth.needed")} given={{ ...choices, result }}>
      {narrow.map((sentence) => (
        <p key={sentence} className="refuse">
          {sentence}
        </p>
      ))}
      <Assumed needed={shown} />
    </Clause>
  );
}
