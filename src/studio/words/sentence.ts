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

export const slotsOf = (sentence: string): readonly string[] =>
  partsOf(sentence).flatMap((part) => (part.kind === "slot" ? [part.name] : []));

/** The sentence with each slot replaced by its text; a slot without a text stays as it is. */
export const filled = (
  sentence: string,
  slots: Readonly<Record<string, string | number>>,
): string => sentence.replace(SLOT, (whole, name: string) => String(slots[name] ?? whole));
