/**
 * How a sentence of the core begins in English, and how it is said in German. A number after a dollar
 * stands for what was caught, itself turned where a phrase knows it.
 */
export type Rule = readonly [english: string, german: string];

/** A sentence ends where a new one begins, or the text. */
const END = "(?=\\s|$)";

const compiled = (rules: readonly Rule[], end: string) =>
  rules.map(([english, german]) => ({ pattern: new RegExp(`^${english}${end}`, "u"), german }));

/** Reads what the core says, sentence by sentence. What is not known stays as it is: nothing is lost. */
export const germanReader = (phraseRules: readonly Rule[], sentenceRules: readonly Rule[]) => {
  const phrases = compiled(phraseRules, "$");
  const sentences = compiled(sentenceRules, END);
  const filled = (german: string, caught: readonly string[]): string =>
    german.replace(/\$(\d)/gu, (_, place: string) => phraseInGerman(caught[Number(place)] ?? ""));
  const phraseInGerman = (text: string): string => {
    for (const { pattern, german } of phrases) {
      const caught = pattern.exec(text);
      if (caught) return filled(german, caught);
    }
    return text;
  };
  return (text: string): string => {
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
};
