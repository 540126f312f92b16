import { put, type Studio, studio, useStudio } from "../state/store.ts";
import type { Language } from "../units/printLength.ts";
import { UNITS, type Unit } from "../units/unit.ts";
import { loadLanguage } from "./language.ts";

const KEY = "ribwright/looks";
const THEMES = ["system", "light", "dark", "projector"] as const;

type Looks = Pick<Studio, "unit" | "language" | "theme">;

const looksIn = (
  text: string,
): Partial<{ unit: Unit; language: Language; theme: Studio["theme"] }> => {
  const [unit, language, theme] = text.split(" ");
  const knownUnit = UNITS.find((u) => u === unit);
  const knownTheme = THEMES.find((t) => t === theme);
  return {
    ...(knownUnit ? { unit: knownUnit } : {}),
    ...(language === "de" ? { language } : {}),
    ...(knownTheme ? { theme: knownTheme } : {}),
  };
};

/** What this maker reads best: kept on the device, apart from any work. */
export const startPrefs = (): void => {
  let kept = "";
  try {
    kept = localStorage.getItem(KEY) ?? "";
  } catch {
    // Without room for it the page starts in millimetres and English.
  }
  const { language = "en", ...looks } = looksIn(kept);
  put(looks);
  if (language !== "en") loadLanguage(language);
  showLooks(studio());
  useStudio.subscribe((now, before) => {
    if (now.unit === before.unit && now.language === before.language && now.theme === before.theme)
      return;
    showLooks(now);
    try {
      localStorage.setItem(KEY, `${now.unit} ${now.language} ${now.theme}`);
    } catch {
      // The looks last until the page is closed.
    }
  });
};

const showLooks = ({ theme, language }: Looks): void => {
  const root = document.documentElement;
  root.lang = language === "de" ? "de" : "en-GB";
  if (theme === "system") delete root.dataset["theme"];
  else root.dataset["theme"] = theme;
};
