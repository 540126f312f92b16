import { useMemo, useState } from "react";
import type { Garment } from "../../bands/garment.ts";
import { assumedSentences, clothSentences } from "../../guide/clothWords.ts";
import { tell } from "../../guide/words/tell.ts";
import { clothNeeded, type Needed } from "../../lay/clothNeeded.ts";
import { BODY_WIDTHS, RIB_WIDTHS } from "../../lay/data/clothWidths.ts";
import { Clause } from "../page/Clause.tsx";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { useVoice } from "./voice.ts";

type ChoiceProps = {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  readonly options: readonly { readonly value: string; readonly text: string }[];
  readonly set: (value: string) => void;
};

/** A word of the sentence that is no part of the work: it only rules what is shown. */
function Choice({ name, label, value, options, set }: ChoiceProps) {
  return (
    <span className="w">
      <select
        aria-label={label}
        data-cloth={name}
        value={value}
        onChange={(event) => set(event.target.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </span>
  );
}

/** Most often sold, of the widths that are reckoned with. In mm; common practice, no source. */
const FIRST = { width: "1500", laid: "folded", rib: "1000" } as const;

const LAID = ["opened", "folded"] as const;

/** How much is bought of each, in words. */
const useResult = (body: Needed | undefined, rib: Needed | undefined): string => {
  const say = useSay();
  const p = usePrint();
  const buy = (needed: Needed | undefined) =>
    needed?.kind === "fits" ? p.full(needed.buy) : say("cloth.neededNone");
  return say("cloth.neededBoth", { body: buy(body), rib: buy(rib) });
};

/** How much cloth and rib this garment takes, and what that takes for granted. */
export function ClothNeeded({ garment }: { readonly garment: Garment }) {
  const say = useSay();
  const p = usePrint();
  const voice = useVoice();
  const [{ width, laid, rib }, setChosen] =
    useState<Readonly<Record<keyof typeof FIRST, string>>>(FIRST);
  const needed = useMemo(
    () => clothNeeded(garment, { body: [Number(width)], rib: [Number(rib)] }),
    [garment, width, rib],
  );
  const body = needed.body.find((one) => one.laid === laid) ?? needed.body[0];
  const shown = { ...needed, body: body ? [body] : [] };
  const result = useResult(body, needed.rib[0]);
  const narrow = clothSentences(shown).filter(({ key }) => key === "cloth.narrow");
  const set = (name: keyof typeof FIRST) => (value: string) =>
    setChosen((was) => ({ ...was, [name]: value }));
  const widths = (list: typeof BODY_WIDTHS) =>
    list.map((one) => ({ value: `${one.width}`, text: p.full(one.width) }));
  const laidWords = {
    opened: say("cloth.neededOpened"),
    folded: say("cloth.neededFolded"),
  };
  const ways = LAID.filter((way) => needed.body.some((one) => one.laid === way));
  const choice = (name: keyof typeof FIRST, label: string, value: string) => ({
    name,
    label,
    value,
    set: set(name),
  });
  const given = {
    width: (
      <Choice {...choice("width", say("cloth.neededWidth"), width)} options={widths(BODY_WIDTHS)} />
    ),
    laid: (
      <Choice
        {...choice("laid", say("cloth.neededLaid"), body?.laid ?? laid)}
        options={ways.map((way) => ({ value: way, text: laidWords[way] }))}
      />
    ),
    ribWidth: (
      <Choice {...choice("rib", say("cloth.neededRib"), rib)} options={widths(RIB_WIDTHS)} />
    ),
    result: <b data-cloth-result>{result}</b>,
  };
  return (
    <Clause text={say("cloth.needed")} given={given}>
      {narrow.map((sentence, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: two at most, cloth and rib, in this order
        <p key={i} className="refuse">
          {tell(voice, sentence)}
        </p>
      ))}
      <details className="fold assumed">
        <summary>{say("cloth.neededAssumed")}</summary>
        <ul>
          {assumedSentences(shown).map((sentence) => (
            <li key={tell(voice, sentence)}>{tell(voice, sentence)}</li>
          ))}
        </ul>
      </details>
    </Clause>
  );
}
