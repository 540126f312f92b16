import { PHRASES, type Rule, SENTENCES } from "./de/faults.ts";

/** A sentence ends where a new one begins, or the text. */
const END = "(?=\\s|$)";

const compiled = (rules: readonly Rule[], end: string) =>
  rules.map(([english, german]) => ({ pattern: new RegExp(`^${english}${end}`, "u"), german }));

const phrases = compiled(PHRASES, "$");
const sentences = compiled(SENTENCES, END);

const filled = (german: string, caught: readonly string[]): string =>
  german.replace(/\$(\d)/gu, (_, place: string) => phraseInGerman(caught[Number(place)] ?? ""));

const phraseInGerman = (text: string): string => {
  for (const { pattern, german } of phrases) {
    const caught = pattern.exec(text);
    if (caught) return filled(german, caught);
  }
  return text;
};

/** A fault as the core tells it, in German. What is not known stays as it is: nothing is lost. */
export const inGerman = (text: string): string => {
  const said: string[] = [];
  let rest = text.trim();
  while (rest !== "") {
    const found = sentences.find(({ pattern }) => pattern.test(rest));
    const caught = found?.pattern.exec(rest);
    if (!found || !caught) return [...said, rest].join(" ");
    said.push(filled(found.german, caught));
    rest = rest.slice(caught[0].length).trim();
  }
  return said.join(" ");
};
