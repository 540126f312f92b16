import { studio } from "../state/store.ts";

/** Tells what the core says of a file in the maker's language; the German is read when it is needed. */
export const faultTeller = async (): Promise<(text: string) => string> => {
  if (studio().language === "en") return (text) => text;
  const { inGerman } = await import("./inGerman.ts");
  return inGerman;
};
