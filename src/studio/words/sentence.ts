/** A sentence as data: words, and slots to be filled. */
export type Part =
  | { readonly kind: "words"; readonly text: string }
  | { readonly kind: "slot"; readonly name: string };

const SLOT = /\{([^{}]+)\}/gu;

/** Cuts "End the sleeve {endSleeve.aboveWrist} above." at its slots. */
export const partsOf = (sentence: string): readonly Part[] =>
  sentence.split(SLOT).flatMap((text, i): readonly Part[] => {
    if (i % 2 === 1) return [{ kind: "slot", name: text }];
    return text === "" ? [] : [{ kind: "words", text }];
  });

/** A slot with the stop or comma that stands at it, which may not begin a line. */
export type Run = Part & { readonly mark: string };

/** The parts, with a mark right after a slot set to that slot. */
export const runsOf = (sentence: string): readonly Run[] => {
  const parts = partsOf(sentence);
  const markAt = (i: number): string => {
    const next = parts[i];
    return next?.kind === "words" ? (/^[.,;:]/u.exec(next.text)?.[0] ?? "") : "";
  };
  return parts.map((part, i): Run => {
    if (part.kind === "slot") return { ...part, mark: markAt(i + 1) };
    const before = parts[i - 1]?.kind === "slot" ? markAt(i).length : 0;
    return { ...part, text: part.text.slice(before), mark: "" };
  });
};

export const slotsOf = (sentence: string): readonly string[] =>
  partsOf(sentence).flatMap((part) => (part.kind === "slot" ? [part.name] : []));

/** The sentence with each slot replaced by its text; a slot without a text stays as it is. */
export const filled = (
  sentence: string,
  slots: Readonly<Record<string, string | number>>,
): string => sentence.replace(SLOT, (whole, name: string) => String(slots[name] ?? whole));
