import { create } from "zustand";
import type { Fault } from "../../drafting/fault.ts";
import type { Body } from "../../drafting/measures.ts";
import type { Refusal } from "../../project/refusal.ts";
import { faultTeller } from "../words/faultTeller.ts";
import { say } from "../words/say.ts";
import { teachOn, useTeaching } from "./teaching.ts";

/** A class's measures while this page is open. They are pupils': nothing keeps them. */
type ClassFile =
  | { readonly state: "none" }
  | { readonly state: "refused"; readonly fault: Fault }
  | {
      readonly state: "read";
      /** Without its ending: it stands on each sheet. */
      readonly title: string;
      readonly file: string;
      readonly pupils: readonly Body[];
      readonly refused: readonly Refusal[];
      readonly notices: readonly string[];
    };

export const useClassFile = create<ClassFile>()(() => ({ state: "none" }));
const show = (to: ClassFile): void => useClassFile.setState(to, true);

/** Forty rows are a few kB; more than this is another kind of file. In bytes, ours. */
const LARGEST = 1e6;

const read = async (file: File): Promise<ClassFile> => {
  const [told, { readClass }, { faultOfFile, readText }, { ageNotice }] = await Promise.all([
    faultTeller(),
    import("../../project/classFile.ts"),
    import("../../project/textFile.ts"),
    import("../../project/ageNotice.ts"),
  ]);
  const inWords = <F extends Fault>(why: F): F => ({
    ...why,
    reason: told(why.reason),
    do: told(why.do),
  });
  const fault = (why: Fault): ClassFile => ({ state: "refused", fault: inWords(why) });
  if (file.size > LARGEST)
    return fault(faultOfFile(file.name, say("class.tooLarge"), say("class.tooLargeDo")));
  const text = readText(new Uint8Array(await file.arrayBuffer()), file.name);
  if ("fault" in text) return fault(text.fault);
  const found = readClass(text.text, file.name);
  if ("fault" in found) return fault(found.fault);
  const title = file.name.replace(/\.[^.]*$/u, "");
  const notices = [...found.notices, ...ageNotice(found.pupils)].map(told);
  const refused = found.refused.map(inWords);
  return { ...found, refused, state: "read", title, file: file.name, notices };
};

/** A class file from the device, in place of the one before. */
export const openClassFile = (file: File): void => {
  read(file).then(
    (found) => {
      teachOn(null);
      show(found);
    },
    (fault: unknown) => {
      const reason = say("class.unread", { file: file.name });
      show({ state: "refused", fault: { field: "file", value: "", reason, do: String(fault) } });
    },
  );
};

/** A pupil as the class is taught on: the id is all that is told of who it is. */
export const teachOnPupil = (id: string): void => {
  const held = useClassFile.getState();
  const pupils = held.state === "read" ? held.pupils : [];
  const [found] = pupils
    .filter((pupil) => pupil.id === id)
    .map(({ name = "", sex = null, measures }) => ({ id, name, part: "", sex, measures }));
  teachOn(found ?? null);
};

/** Whose measures the handout is made from: a pupil's, or undefined for the body on the table. */
export const taughtPupil = (): Body | undefined => {
  const id = useTeaching.getState().pupil?.id;
  const held = useClassFile.getState();
  return held.state === "read" ? held.pupils.find((pupil) => pupil.id === id) : undefined;
};
