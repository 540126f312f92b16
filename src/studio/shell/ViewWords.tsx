import { Fragment } from "react";
import { loadLanguage } from "../prefs/language.ts";
import { put, type Theme, useStudio } from "../state/store.ts";
import { setScreen, showTrueSize, useIsTrueSize } from "../state/trueSize.ts";
import { fitTable } from "../state/viewing.ts";
import { UNITS } from "../units/unit.ts";
import { useSay } from "../words/say.ts";
import { runsOf } from "../words/sentence.ts";

type ListProps = {
  readonly label: string;
  readonly value: string;
  readonly options: readonly (readonly [value: string, text: string])[];
  readonly choose: (value: string) => void;
};

/** A word of the running head that opens a list in place. */
function HeadWord({ label, value, options, choose }: ListProps) {
  return (
    <span className="w">
      <select aria-label={label} value={value} onChange={(event) => choose(event.target.value)}>
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </span>
  );
}

function UnitWord() {
  const say = useSay();
  const unit = useStudio((s) => s.unit);
  return (
    <HeadWord
      label={say("view.unit")}
      value={unit}
      options={UNITS.map((u) => [u, say(`view.${u}`)])}
      choose={(value) => {
        const chosen = UNITS.find((u) => u === value);
        if (chosen) put({ unit: chosen, refused: {} });
      }}
    />
  );
}

const FITS: Readonly<Record<string, () => void>> = {
  fitted: fitTable,
  true: showTrueSize,
  set: setScreen,
};

function FitWord() {
  const say = useSay();
  const zoom = useStudio((s) => s.view?.zoom ?? null);
  const isTrue = useIsTrueSize(zoom);
  const isFree = zoom !== null && !isTrue;
  return (
    <HeadWord
      label={say("view.fit")}
      value={isTrue ? "true" : isFree ? "free" : "fitted"}
      options={[
        ["fitted", say("view.fitted")],
        ["true", say("view.true")],
        ["set", say("view.set")],
        ...(isFree ? [["free", say("view.free")] as const] : []),
      ]}
      choose={(value) => FITS[value]?.()}
    />
  );
}

function OldWord() {
  const say = useSay();
  const shown = useStudio((s) => s.oldLines);
  return (
    <HeadWord
      label={say("view.old")}
      value={shown ? "shown" : "hidden"}
      options={[
        ["shown", say("view.shown")],
        ["hidden", say("view.hidden")],
      ]}
      choose={(value) => put({ oldLines: value === "shown" })}
    />
  );
}

const THEMES: readonly Theme[] = ["system", "light", "dark", "projector"];

function ThemeWord() {
  const say = useSay();
  const theme = useStudio((s) => s.theme);
  return (
    <HeadWord
      label={say("view.theme")}
      value={theme}
      options={THEMES.map((t) => [t, say(`view.${t}`)])}
      choose={(value) => put({ theme: THEMES.find((t) => t === value) ?? "system" })}
    />
  );
}

/** Languages name themselves. */
const LANGUAGES = [
  ["en", "English"],
  ["de", "Deutsch"],
] as const;

function LanguageWord() {
  const say = useSay();
  const language = useStudio((s) => s.language);
  return (
    <HeadWord
      label={say("view.language")}
      value={language}
      options={LANGUAGES}
      choose={(value) => loadLanguage(value === "de" ? "de" : "en")}
    />
  );
}

const WORDS: Readonly<Record<string, () => React.JSX.Element>> = {
  unit: UnitWord,
  fit: FitWord,
  old: OldWord,
  theme: ThemeWord,
  language: LanguageWord,
};

/** A sentence whose slots are the words of the view: unit, size, ground, language. */
export function ViewWords({ sentence }: { readonly sentence: string }) {
  return runsOf(sentence).map((part) => {
    if (part.kind === "words") return <Fragment key={part.text}>{part.text}</Fragment>;
    const Word = WORDS[part.name];
    return Word ? (
      <span key={part.name} className="keep">
        <Word />
        {part.mark}
      </span>
    ) : null;
  });
}

/** "Drawn in millimetres, fitted to the table, old lines shown." */
export function ViewSentence() {
  return <ViewWords sentence={useSay()("head.view")} />;
}

export function LooksSentence() {
  return (
    <span className="looks">
      <ViewWords sentence={useSay()("view.looks")} />
    </span>
  );
}
