import type { FileRead, FileRefusal } from "../../project/projectFile.ts";
import { faultTeller } from "../words/faultTeller.ts";
import { say } from "../words/say.ts";

/** The schemas come only when something is opened: they are no part of the first load. */
export const read = async (name: string, text: string): Promise<FileRead> => {
  const { readFile } = await import("../../project/projectFile.ts");
  const found = readFile(name, text);
  if (!("refusal" in found) || found.refusal.why !== "field") return found;
  const told = await faultTeller();
  return { refusal: { ...found.refusal, reason: told(found.refusal.reason) } };
};

/** One sentence: the file's name, what was found, what is taken. */
export const refusalSentence = (file: string, refusal: FileRefusal): string => {
  if (refusal.why === "later") {
    const { found, known } = refusal;
    return say("file.cannotRead", { file, why: say("file.later", { found, known }) });
  }
  if (refusal.why === "field") {
    const { field, reason } = refusal;
    return say("file.cannotRead", { file, why: say("file.field", { field, reason }) });
  }
  return say("file.cannotRead", { file, why: say(`file.${refusal.why}`) });
};
